using System.Text;
using FlowCalc.Workbench.Tests.Hosting;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace FlowCalc.Workbench.Tests.Pages;

public sealed class KeepingTests(Site site)
{
    [Fact]
    public async Task Reload_keeps_document_history_file_name_and_units()
    {
        var page = await site.OpenAsync();
        await page.OpenFileAsync("mine.json", Encoding.UTF8.GetBytes(Sheets.Documents.Example("cabinet-inert-gas")));
        await TitleAsync(page, "one");
        await page.GetByLabel("Units of answers").SelectOptionAsync("Us");
        await Expect(page.Nozzles().First).ToContainTextAsync("psi");

        await page.ReloadAsync();

        await Expect(page.Lead().Locator("h2")).ToHaveTextAsync("one");
        await Expect(page.Nozzles().First).ToContainTextAsync("psi");
        Assert.Equal("mine.json", (await page.SaveAsync()).Name);
        await page.Button("Undo").ClickAsync();
        await Expect(page.Lead().Locator("h2")).ToContainTextAsync("three control cabinets");
        await page.Button("Undo").ClickAsync();
        await Expect(page.Lead().Locator("h2")).ToContainTextAsync("Desert raid");
        await page.Button("Redo").ClickAsync();
        await page.Button("Redo").ClickAsync();
        await Expect(page.Lead().Locator("h2")).ToHaveTextAsync("one");
    }

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public async Task Second_tab_begins_where_the_last_left_off_and_each_keeps_its_own(bool isDuplicate)
    {
        var first = await site.OpenAsync();
        await TitleAsync(first, "first");

        // A window that a page opens takes the session's store along, as a duplicated tab does.
        var second = isDuplicate
            ? await first.RunAndWaitForPopupAsync(() => first.EvaluateAsync("() => { window.open(location.href); }"))
            : await first.Context.NewPageAsync();
        if (!isDuplicate) await second.GotoAsync(site.Address.ToString());
        await Expect(second.Lead().Locator("h2")).ToHaveTextAsync("first");
        await TitleAsync(second, "second");
        await second.ReloadAsync();
        await first.ReloadAsync();

        await Expect(second.Lead().Locator("h2")).ToHaveTextAsync("second");
        await Expect(first.Lead().Locator("h2")).ToHaveTextAsync("first");
    }

    [Fact]
    public async Task More_tabs_than_are_kept_lose_nothing_while_they_are_open()
    {
        var first = await site.OpenAsync();
        await TitleAsync(first, "first");
        for (var number = 2; number <= 7; number++)
        {
            var other = await first.Context.NewPageAsync();
            await other.GotoAsync(site.Address.ToString());
            await other.AnsweredAsync();
            await TitleAsync(other, $"number {number}");
        }

        await first.ReloadAsync();

        await Expect(first.Lead().Locator("h2")).ToHaveTextAsync("first");
    }

    [Fact]
    public async Task Service_that_ends_and_comes_back_takes_nothing_along()
    {
        var service = OwnService.Start();
        try
        {
            var page = await site.NewPageAsync();
            await page.GotoAsync(service.Address.ToString());
            await page.AnsweredAsync();
            await TitleAsync(page, "before the restart");
            var before = (await page.SaveAsync()).Bytes;

            await service.DisposeAsync();
            await Expect(page.Locator("dialog[open]")).ToContainTextAsync("Your work is safe in this browser");
            service = OwnService.Start(service.Address.Port);

            await Expect(page.Locator("dialog[open]")).ToHaveCountAsync(0);
            await Expect(page.Lead().Locator("h2")).ToHaveTextAsync("before the restart");
            await page.AnsweredAsync();
            Assert.Equal(before, (await page.SaveAsync()).Bytes);
            await page.Button("Undo").ClickAsync();
            await Expect(page.Lead().Locator("h2")).ToContainTextAsync("Desert raid");
            await page.Button("Redo").ClickAsync();
            await Expect(page.Lead().Locator("h2")).ToHaveTextAsync("before the restart");
        }
        finally
        {
            await service.DisposeAsync();
        }
    }

    [Fact]
    public async Task Browser_that_refuses_its_store_is_told_and_the_page_works_all_the_same()
    {
        var page = await site.NewPageAsync();
        await page.AddInitScriptAsync("for (const store of ['localStorage', 'sessionStorage']) Object.defineProperty(window, store, { get() { throw new DOMException('refused', 'SecurityError'); } });");

        await page.GotoAsync(site.Address.ToString());

        await page.AnsweredAsync();
        await Expect(page.Notice()).ToContainTextAsync("save the document as a file");
        await TitleAsync(page, "unkept");
    }

    [Fact]
    public async Task Store_that_is_full_keeps_the_document_and_drops_history_before_it()
    {
        var page = await site.OpenAsync();
        await page.EvaluateAsync(
            """
            () => {
              // To within 40 000 characters of what the browser gives.
              let part = "x".repeat(1 << 20);
              for (let number = 0; part.length > 8; ) {
                try { localStorage.setItem("other:" + number, part); number++; } catch { part = part.slice(part.length / 2); }
              }
              localStorage.removeItem("other:0");
              localStorage.setItem("other:0", "x".repeat((1 << 20) - 40_000));
            }
            """);
        for (var number = 1; number <= 8; number++) await StepAsync(page, number);

        await page.ReloadAsync();

        await Expect(page.Locator("g[role=button][data-path='points/N8']")).ToBeVisibleAsync();
        await page.AnsweredAsync();
        await Expect(page.Notice()).ToBeEmptyAsync();
    }

    static async Task StepAsync(IPage page, int number)
    {
        if (number == 1) await page.Button("Add a nozzle").ClickAsync();
        await page.PointAtAsync(number == 1 ? "points/turbo" : $"points/N{number - 1}");
        await Expect(page.Locator($"g[role=button][data-path='points/N{number}']")).ToBeVisibleAsync();
    }

    static async Task TitleAsync(IPage page, string title)
    {
        await page.TurnToAsync("Supply");
        await page.GetByLabel("Title", new() { Exact = true }).FillAsync(title);
        await Expect(page.Lead().Locator("h2")).ToHaveTextAsync(title);
        await page.AnsweredAsync();
    }
}
