using System.Net;
using FlowCalc.Workbench.Tests.Hosting;
using Microsoft.AspNetCore.Hosting;
using Microsoft.AspNetCore.Hosting.Server;
using Microsoft.AspNetCore.Hosting.Server.Features;
using Microsoft.AspNetCore.Mvc.Testing;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Playwright;

[assembly: AssemblyFixture(typeof(Site))]

namespace FlowCalc.Workbench.Tests.Hosting;

/// <summary>The real service on a port of this machine, and a real browser: one of each for all tests.</summary>
public sealed class Site : WebApplicationFactory<Program>, IAsyncLifetime
{
    /// <summary>Milliseconds; a browser on a busy machine takes its time.</summary>
    public const float Patience = 30_000;

    IPlaywright? playwright;
    IBrowser? browser;

    /// <summary>Where the service listens.</summary>
    public Uri Address { get; private set; } = null!;

    public async ValueTask InitializeAsync()
    {
        UseKestrel(kestrel => kestrel.Listen(IPAddress.Loopback, 0));
        StartServer();
        Address = new Uri(Services.GetRequiredService<IServer>().Features.Get<IServerAddressesFeature>()!.Addresses.First());
        if (Chromium() is not { } chromium) return;
        Assertions.SetDefaultExpectTimeout(Patience);
        playwright = await Playwright.CreateAsync();
        browser = await playwright.Chromium.LaunchAsync(new() { ExecutablePath = chromium, Args = ["--no-sandbox"], Timeout = Patience });
    }

    /// <summary>A page of a browser that has never been here: no store, no cookies. A test is skipped without a browser, but not in CI.</summary>
    public async Task<IPage> NewPageAsync(BrowserNewContextOptions? options = null)
    {
        if (browser is null && Environment.GetEnvironmentVariable("CI") != "true")
            Assert.Skip("No chromium on the PATH; install Debian's package chromium.");
        Assert.NotNull(browser);
        var context = await browser.NewContextAsync(options ?? new() { ViewportSize = new() { Width = 1280, Height = 900 } });
        context.SetDefaultTimeout(Patience);
        return await context.NewPageAsync();
    }

    /// <summary>A new page with the workbench open and its first answer there.</summary>
    public async Task<IPage> OpenAsync(BrowserNewContextOptions? options = null)
    {
        var page = await NewPageAsync(options);
        await page.GotoAsync(Address.ToString());
        await page.Locator(".lead .badge").WaitForAsync();
        return page;
    }

    /// <summary>Keeps a picture of the whole page for somebody to look at, where the environment names a folder for it.</summary>
    public static async Task KeepPictureAsync(IPage page, string name)
    {
        if (Environment.GetEnvironmentVariable("FLOWCALC_PICTURES") is { Length: > 0 } folder)
            await page.ScreenshotAsync(new() { Path = Path.Combine(folder, name + ".png"), FullPage = true });
    }

    public override async ValueTask DisposeAsync()
    {
        if (browser is not null) await browser.CloseAsync();
        playwright?.Dispose();
        await base.DisposeAsync();
    }

    protected override void ConfigureWebHost(IWebHostBuilder builder)
    {
        builder.UseSetting("Startup:Demo", "false");
        builder.UseSetting("Logging:LogLevel:Default", "Warning");
    }

    static string? Chromium() => (Environment.GetEnvironmentVariable("PATH") ?? "").Split(Path.PathSeparator)
        .Select(folder => Path.Combine(folder, "chromium")).FirstOrDefault(File.Exists);
}
