using FlowCalc.Workbench.Tests.Hosting;
using static Microsoft.Playwright.Assertions;

namespace FlowCalc.Workbench.Tests.Pages;

public sealed class UndoTests(Site site)
{
    [Fact]
    public async Task Typing_in_one_field_is_one_step_by_button_and_by_keys()
    {
        var page = await site.OpenAsync();
        var before = (await page.SaveAsync()).Bytes;
        await page.TurnToAsync("Supply");
        var title = page.GetByLabel("Title", new() { Exact = true });
        await title.FillAsync("");
        // As a quick typist does: faster keys than any hand has are lost where the page's own process gets no time.
        await title.PressSequentiallyAsync("typed letter by letter", new() { Delay = 60 });
        var heading = page.Lead().Locator("h2");
        await Expect(heading).ToHaveTextAsync("typed letter by letter");

        await page.Button("Undo").ClickAsync();
        await Expect(heading).ToContainTextAsync("Desert raid");
        Assert.Equal(before, (await page.SaveAsync()).Bytes);
        await Expect(page.Button("Undo")).ToBeDisabledAsync();
        await page.Button("Redo").ClickAsync();
        await Expect(heading).ToHaveTextAsync("typed letter by letter");

        await page.GetByRole(Microsoft.Playwright.AriaRole.Tab, new() { Name = "Supply" }).FocusAsync();
        await page.Keyboard.PressAsync("Control+z");
        await Expect(heading).ToContainTextAsync("Desert raid");
        await page.Keyboard.PressAsync("Control+y");
        await Expect(heading).ToHaveTextAsync("typed letter by letter");
        await page.Keyboard.PressAsync("Control+z");
        await Expect(heading).ToContainTextAsync("Desert raid");
        await page.Keyboard.PressAsync("Control+Shift+z");
        await Expect(heading).ToHaveTextAsync("typed letter by letter");
    }

    [Fact]
    public async Task Looking_through_the_examples_by_arrow_keys_is_one_step()
    {
        var page = await site.OpenAsync();
        var list = page.GetByLabel("New from an example or an empty sheet");
        await list.FocusAsync();
        await page.Keyboard.PressAsync("ArrowDown");
        await Expect(page.Button("Add the first nozzle")).ToBeVisibleAsync();
        await page.Keyboard.PressAsync("ArrowDown");
        await page.Keyboard.PressAsync("ArrowDown");
        await Expect(page.Lead().Locator("h2")).ToContainTextAsync("three control cabinets");

        await page.Button("Undo").ClickAsync();

        await Expect(page.Lead().Locator("h2")).ToContainTextAsync("Desert raid");
        await page.BeginAsync("empty");
        await Expect(page.Button("Add the first nozzle")).ToBeVisibleAsync();
    }
}
