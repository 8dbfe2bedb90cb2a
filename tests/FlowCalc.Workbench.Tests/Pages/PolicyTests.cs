using System.Net;
using FlowCalc.Workbench.Tests.Hosting;
using Microsoft.AspNetCore.Mvc.Testing;
using static Microsoft.Playwright.Assertions;

namespace FlowCalc.Workbench.Tests.Pages;

public sealed class PolicyTests(Site site)
{
    [Fact]
    public async Task Page_asks_no_other_host_for_anything_and_its_own_policy_refuses_nothing_of_it()
    {
        var page = await site.NewPageAsync();
        var (foreign, refused) = (new List<string>(), new List<string>());
        await page.RouteAsync("**/*", route =>
        {
            var asked = new Uri(route.Request.Url);
            if (asked.Scheme is "http" or "https" && asked.Authority != site.Address.Authority) foreign.Add(route.Request.Url);
            return route.ContinueAsync();
        });
        page.Console += (_, message) =>
        {
            if (message.Type == "error") refused.Add(message.Text);
        };
        page.PageError += (_, error) => refused.Add(error);

        var answer = await page.GotoAsync(site.Address.ToString());
        await page.AnsweredAsync();
        await WorkAsync(page);

        Assert.NotNull(answer);
        var policy = await answer.HeaderValueAsync("content-security-policy");
        Assert.DoesNotContain("unsafe", policy, StringComparison.Ordinal);
        Assert.StartsWith("default-src 'self'; script-src 'self'; style-src 'self';", policy, StringComparison.Ordinal);
        Assert.Empty(foreign);
        Assert.Empty(refused);
    }

    // A session of work: what may ask for something, or run something, is used.
    static async Task WorkAsync(Microsoft.Playwright.IPage page)
    {
        await page.Lead().Locator(".cure").ClickAsync();
        await page.AnsweredAsync();
        await page.Button("Dark").ClickAsync();
        await page.GetByLabel("View of the drawing").SelectOptionAsync("Tree");
        await page.GetByLabel("What the colours tell").SelectOptionAsync("Pressure");
        await page.Button("Add a nozzle").ClickAsync();
        await page.PointAtAsync("runs/R1");
        await Expect(page.Locator("g[role=button][data-path='points/N1']")).ToBeVisibleAsync();
        foreach (var tab in BenchPage.Parts.Concat(BenchPage.Studies)) await page.TurnToAsync(tab);
        await page.OpenFileAsync("other.json", System.Text.Encoding.UTF8.GetBytes(Sheets.Documents.Example("boat-engine-space")));
        await page.SaveAsync();
        await page.Button("Link").ClickAsync();
        await Expect(page.Notice()).ToContainTextAsync("link");
        await page.Button("Undo").ClickAsync();
        await page.ReloadAsync();
        await page.AnsweredAsync();
    }

    [Fact]
    public async Task Files_of_the_page_are_served()
    {
        using var caller = site.CreateClient(new WebApplicationFactoryClientOptions { BaseAddress = site.Address });
        foreach (var file in (string[])["/_framework/blazor.web.js", "/_content/FlowCalc.Workbench/workbench.css"])
        {
            using var answer = await caller.GetAsync(new Uri(site.Address, file), TestContext.Current.CancellationToken);
            Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
        }
    }
}
