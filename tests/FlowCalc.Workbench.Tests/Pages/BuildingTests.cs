using FlowCalc.Layouts;
using FlowCalc.Workbench.Tests.Hosting;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace FlowCalc.Workbench.Tests.Pages;

public sealed class BuildingTests(Site site)
{
    [Fact]
    public async Task Four_nozzles_are_drawn_from_an_empty_sheet_with_the_mouse_alone()
    {
        var page = await site.OpenAsync();
        await page.BeginAsync("empty");
        await page.Button("Add the first nozzle").ClickAsync();
        await Expect(page.Nozzles()).ToHaveCountAsync(1);
        await page.Button("Add a nozzle").ClickAsync();

        await page.PointAtAsync("runs/R1");
        await Expect(page.Nozzles()).ToHaveCountAsync(2);
        await Expect(page.Locator("g[role=button][data-path='points/N2']")).ToBeVisibleAsync();
        await page.PointAtAsync("points/N1");
        await Expect(page.Nozzles()).ToHaveCountAsync(3);
        await Expect(page.Locator("g[role=button][data-path='points/N3']")).ToBeVisibleAsync();
        await page.PointAtAsync("points/N2");

        await Expect(page.Nozzles()).ToHaveCountAsync(4);
        await Expect(page.Faults()).ToHaveCountAsync(0);
        await Site.KeepPictureAsync(page, "built-by-mouse");
        Assert.Equal(4, (await page.SheetAsync()).Layout!.Points.OfType<Nozzle>().Count());
    }

    [Fact]
    public async Task Four_nozzles_are_drawn_named_and_solved_with_the_keyboard_alone()
    {
        var page = await site.OpenAsync();
        await page.TabToAsync(page.GetByLabel("New from an example or an empty sheet"));
        await page.Keyboard.PressAsync("ArrowDown");
        await Expect(page.Button("Add the first nozzle")).ToBeVisibleAsync();
        await page.TabToAsync(page.Button("Add the first nozzle"));
        await page.Keyboard.PressAsync("Enter");
        await Expect(page.Nozzles()).ToHaveCountAsync(1);
        await page.TabToAsync(page.Button("Add a nozzle"));
        await page.Keyboard.PressAsync("Enter");

        foreach (var (path, nozzles) in ((string, int)[])[("runs/R1", 2), ("points/N1", 3), ("points/N2", 4)]) await Add(page, path, nozzles);

        await page.TabToAsync(page.GetByRole(AriaRole.Tab, new() { Name = "Chosen" }));
        for (var right = 0; right < 3; right++) await page.Keyboard.PressAsync("ArrowRight");
        await Expect(page.GetByRole(AriaRole.Tab, new() { Name = "Supply" })).ToBeFocusedAsync();
        await page.TabToAsync(page.GetByLabel("Title", new() { Exact = true }));
        await page.Keyboard.PressAsync("Control+A");
        await page.Keyboard.TypeAsync("By hand");

        await Expect(page.Lead().Locator("h2")).ToHaveTextAsync("By hand");
        await Expect(page.Faults()).ToHaveCountAsync(0);
        var layout = (await page.SheetAsync()).Layout!;
        Assert.Equal("By hand", layout.Title);
        Assert.Equal(4, layout.Points.OfType<Nozzle>().Count());
    }

    [Fact]
    public async Task Name_is_typed_to_its_end_before_it_is_taken_and_one_that_is_taken_is_told_at_its_field()
    {
        var page = await site.OpenAsync();
        await page.BeginExampleAsync("cabinet-inert-gas", "three control cabinets");
        await page.TurnToAsync("Points");
        await page.GetByRole(AriaRole.Region, new() { Name = "Points" }).GetByRole(AriaRole.Button, new() { Name = "third", Exact = true }).ClickAsync();
        var name = page.GetByLabel("Name", new() { Exact = true });

        await name.FillAsync("");
        await name.PressSequentiallyAsync("first");
        await name.PressAsync("Enter");

        await Expect(name).ToHaveAttributeAsync("aria-invalid", "true");
        await Expect(page.Locator(".fault").First).ToContainTextAsync("There is a \"first\" already.");
        Assert.Equal(["bottle", "T1", "T2", "first", "second", "third"], (await page.SheetAsync()).IdsOf("points"));
        await name.PressAsync("End");
        await name.PressSequentiallyAsync(" floor");
        await Expect(name).ToBeFocusedAsync();
        await name.PressAsync("Enter");
        await Expect(page.Nozzles().Filter(new() { HasText = "first floor" })).ToHaveCountAsync(1);
        await Expect(name).Not.ToHaveAttributeAsync("aria-invalid", "true");
        var sheet = await page.SheetAsync();
        Assert.Empty(sheet.Faults);
        Assert.Equal("first floor", sheet.TextAt("/runs/4/to"));
    }

    [Fact]
    public async Task Part_that_cannot_be_added_or_taken_is_told_and_nothing_changes()
    {
        var page = await site.OpenAsync();
        var before = (await page.SaveAsync()).Bytes;
        await page.Button("Add a nozzle").ClickAsync();
        await page.PointAtAsync("points/T-rear");
        await Expect(page.Notice()).ToContainTextAsync("A nozzle goes on a run");
        await page.Button("Remove").ClickAsync();
        await page.PointAtAsync("points/T-rear");
        await Expect(page.Notice()).ToContainTextAsync("leads on");
        Assert.Equal(before, (await page.SaveAsync()).Bytes);
        await Expect(page.Button("Undo")).ToBeDisabledAsync();
    }

    static async Task Add(IPage page, string path, int nozzles)
    {
        await page.TabToAsync(page.Locator($"g[role=button][data-path='{path}']"));
        await page.Keyboard.PressAsync("Enter");
        await Expect(page.Nozzles()).ToHaveCountAsync(nozzles);
        await Expect(page.Locator($"g[role=button][data-path='points/N{nozzles}']")).ToBeVisibleAsync();
    }
}
