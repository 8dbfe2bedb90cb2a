using System.Net;
using FlowCalc.Api.Tests.Hosting;
using FlowCalc.Api.Tests.Requests;
using Microsoft.AspNetCore.Hosting.Server;
using Microsoft.AspNetCore.Hosting.Server.Features;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Playwright;

namespace FlowCalc.Api.Tests.Documentation;

public sealed class DocsPageTests(Service shared)
{
    [Fact]
    public async Task Page_carries_a_policy_that_keeps_the_browser_on_this_host()
    {
        using var caller = shared.Caller();
        using var page = await caller.Get("/docs/");

        var policy = Assert.Single(page.Headers.GetValues("Content-Security-Policy"));

        Assert.StartsWith("default-src 'self';", policy, StringComparison.Ordinal);
        Assert.Contains("connect-src 'self'", policy, StringComparison.Ordinal);
        Assert.DoesNotContain("http", policy, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Page_shows_the_calls_in_a_real_browser_and_asks_no_other_host_for_anything()
    {
        var chromium = Chromium();
        if (chromium is null && Environment.GetEnvironmentVariable("CI") != "true")
            Assert.Skip("No chromium on the PATH; install Debian's package chromium.");
        Assert.NotNull(chromium);
        await using var service = new Service();
        service.UseKestrel(kestrel => kestrel.Listen(IPAddress.Loopback, 0));
        service.StartServer();
        var address = new Uri(service.Services.GetRequiredService<IServer>().Features.Get<IServerAddressesFeature>()!.Addresses.First());
        using var playwright = await Playwright.CreateAsync();
        await using var browser = await playwright.Chromium.LaunchAsync(new() { ExecutablePath = chromium, Args = ["--no-sandbox"], Timeout = Patience });
        var page = await browser.NewPageAsync();
        var (foreign, refused) = (new List<string>(), new List<string>());
        await page.RouteAsync("**/*", route =>
        {
            var asked = new Uri(route.Request.Url);
            if (asked.Scheme is "http" or "https" or "ws" or "wss" && asked.Authority != address.Authority)
                foreign.Add(route.Request.Url);
            return route.ContinueAsync();
        });
        page.Console += (_, message) =>
        {
            if (message.Type == "error")
                refused.Add(message.Text);
        };

        await page.GotoAsync(new Uri(address, "/docs").ToString(), new() { Timeout = Patience });
        await page.GetByText("Steady flow of a layout").First.WaitForAsync(new() { Timeout = Patience });
        await page.GetByText("Flow, balance and findings of plumbed-in").First.WaitForAsync(new() { Timeout = Patience });
        await page.WaitForLoadStateAsync(LoadState.NetworkIdle, new() { Timeout = Patience });

        Assert.Empty(foreign);
        Assert.Empty(refused);
    }

    // Milliseconds; a browser on a busy machine takes its time.
    const float Patience = 120_000;

    static string? Chromium() => (Environment.GetEnvironmentVariable("PATH") ?? "").Split(Path.PathSeparator)
        .Select(folder => Path.Combine(folder, "chromium")).FirstOrDefault(File.Exists);
}
