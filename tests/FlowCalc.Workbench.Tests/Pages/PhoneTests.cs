using FlowCalc.Workbench.Tests.Hosting;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace FlowCalc.Workbench.Tests.Pages;

public sealed class PhoneTests(Site site)
{
    [Fact]
    public async Task Nothing_runs_over_the_side_of_a_phone_on_any_tab()
    {
        var page = await site.OpenAsync(new() { ViewportSize = new() { Width = 390, Height = 844 }, HasTouch = true, IsMobile = true, DeviceScaleFactor = 2 });
        await Site.KeepPictureAsync(page, "phone");
        await FitsAsync(page, "the first view");
        await page.Nozzles().First.Locator("button").ClickAsync();
        foreach (var tab in BenchPage.Parts.Concat(BenchPage.Studies))
        {
            await page.TurnToAsync(tab);
            await FitsAsync(page, tab);
            if (tab == "Runs") await WordsHaveRoomAsync(page);
            if (tab == "Whole job")
            {
                await Expect(page.GetByRole(AriaRole.Heading, new() { Name = "Mount of the bottle" })).ToBeVisibleAsync();
                await FitsAsync(page, "the whole job, answered");
                await Site.KeepPictureAsync(page, "phone-" + tab);
            }
            if (tab is "Chosen" or "Runs" or "Stock" or "Text") await Site.KeepPictureAsync(page, "phone-" + tab);
        }
        await page.TurnToAsync("Stock");
        foreach (var entry in await page.Locator("details.entry summary").AllAsync()) await entry.ClickAsync();
        await FitsAsync(page, "stock laid open");
        await page.TurnToAsync("Supply");
        await page.GetByLabel("Charge pressure").FillAsync("one-very-long-word-that-is-no-pressure-" + new string('x', 120));
        await Expect(page.Faults()).ToHaveCountAsync(1);
        await FitsAsync(page, "a fault with a long word");
        await page.BeginAsync("empty");
        await Expect(page.Button("Add the first nozzle")).ToBeVisibleAsync();
        await FitsAsync(page, "an empty sheet");
    }

    static async Task WordsHaveRoomAsync(IPage page)
    {
        var narrowest = await page.EvaluateAsync<double>("Math.min(...[...document.querySelectorAll('table.entry select, table.entry input')].map(one => one.getBoundingClientRect().width))");
        Assert.True(narrowest >= 100, $"A field of the table of runs is {narrowest} pixels wide.");
    }

    static async Task FitsAsync(IPage page, string where)
    {
        var (scrolled, seen) = (await page.EvaluateAsync<int>("document.documentElement.scrollWidth"), await page.EvaluateAsync<int>("window.innerWidth"));
        Assert.True(scrolled <= seen && seen <= 390, $"{where}: {scrolled} pixels wide in a window of {seen}.");
    }
}
