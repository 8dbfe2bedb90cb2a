using Deque.AxeCore.Playwright;
using FlowCalc.Workbench.Tests.Hosting;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace FlowCalc.Workbench.Tests.Pages;

public sealed class AccessibilityTests(Site site)
{
    [Theory]
    [InlineData(ColorScheme.Light)]
    [InlineData(ColorScheme.Dark)]
    public async Task No_state_of_the_page_has_a_serious_barrier(ColorScheme scheme)
    {
        var page = await site.OpenAsync(new() { ViewportSize = new() { Width = 1280, Height = 900 }, ColorScheme = scheme, ReducedMotion = ReducedMotion.Reduce });
        var found = new List<string>();
        await Site.KeepPictureAsync(page, $"first-{scheme}");
        await CheckAsync(page, "the demo", found);
        await page.PointAtAsync("runs/R11");
        await Expect(page.Locator("h3").First).ToContainTextAsync("run R11");
        await Site.KeepPictureAsync(page, $"chosen-{scheme}");
        await CheckAsync(page, "a chosen run", found);
        await page.PointAtAsync("points/turbo");
        await Expect(page.Locator("h3").First).ToContainTextAsync("nozzle turbo");
        await CheckAsync(page, "a chosen nozzle", found);
        foreach (var tab in BenchPage.Parts.Concat(BenchPage.Studies))
        {
            await page.TurnToAsync(tab);
            await CheckAsync(page, tab, found);
        }
        await page.TurnToAsync("Stock");
        foreach (var entry in await page.Locator("details.entry summary").AllAsync()) await entry.ClickAsync();
        await CheckAsync(page, "stock laid open", found);
        await page.TurnToAsync("Supply");
        await page.GetByLabel("Charge pressure").FillAsync("1,5 bar");
        await Expect(page.Faults()).ToHaveCountAsync(1);
        await Site.KeepPictureAsync(page, $"fault-{scheme}");
        await CheckAsync(page, "a fault", found);
        await page.GetByLabel("View of the drawing").SelectOptionAsync("Tree");
        await page.Button("Undo").ClickAsync();
        await page.AnsweredAsync();
        await CheckAsync(page, "the tree", found);
        await page.BeginAsync("empty");
        await Expect(page.Button("Add the first nozzle")).ToBeVisibleAsync();
        await Site.KeepPictureAsync(page, $"empty-{scheme}");
        await CheckAsync(page, "an empty sheet", found);

        Assert.True(found.Count == 0, string.Join('\n', found.Distinct()));
    }

    static async Task CheckAsync(IPage page, string where, List<string> found)
    {
        var result = await page.RunAxe();
        Assert.NotEmpty(result.Passes);
        foreach (var barrier in result.Violations.Where(violation => violation.Impact is "serious" or "critical"))
            found.Add($"{where}: {barrier.Impact} {barrier.Id}: {string.Join(" | ", barrier.Nodes.Take(3).Select(node => node.Html[..Math.Min(160, node.Html.Length)]))}");
    }
}
