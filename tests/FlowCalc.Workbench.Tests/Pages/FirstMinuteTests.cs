using FlowCalc.Workbench.Tests.Hosting;
using static Microsoft.Playwright.Assertions;

namespace FlowCalc.Workbench.Tests.Pages;

public sealed class FirstMinuteTests(Site site)
{
    [Fact]
    public async Task Newcomer_sees_the_demo_solved_the_shortfall_of_the_far_nozzle_and_a_button_that_cures_it()
    {
        var page = await site.OpenAsync();

        await Expect(page.Locator(".bar .name p")).ToContainTextAsync("whether every nozzle");
        var lead = page.Locator(".lead");
        await Expect(lead).ToContainTextAsync("Fails");
        await Expect(lead).ToContainTextAsync("exhaust");
        await Expect(page.Locator(".findings li").First).ToContainTextAsync("Fails");
        await Expect(page.Locator(".findings details li").First).Not.ToBeVisibleAsync();
        await page.Locator(".findings summary").ClickAsync();
        await Expect(page.Locator(".findings details li").First).ToBeVisibleAsync();
        await Site.KeepPictureAsync(page, "first-minute");

        await lead.GetByRole(Microsoft.Playwright.AriaRole.Button, new() { Name = "Set runs R11 tube to feed" }).ClickAsync();

        await Expect(lead).Not.ToContainTextAsync("Fails");
        await Expect(page.Locator(".sheet table tbody tr", new() { HasText = "exhaust" })).Not.ToContainTextAsync("✕");
        await Site.KeepPictureAsync(page, "first-minute-cured");
    }
}
