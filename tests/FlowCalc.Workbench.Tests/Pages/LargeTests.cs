using System.Diagnostics;
using System.Text;
using FlowCalc.Workbench.Sheets;
using FlowCalc.Workbench.Tests.Hosting;
using static Microsoft.Playwright.Assertions;

namespace FlowCalc.Workbench.Tests.Pages;

public sealed class LargeTests(Site site, ITestOutputHelper output)
{
    const int Most = Sheet.MostPoints;

    [Fact]
    public async Task As_many_points_as_the_page_takes_are_drawn_solved_changed_and_typed_as_text()
    {
        var page = await site.OpenAsync();
        page.SetDefaultTimeout(4 * Site.Patience);
        var slow = new Microsoft.Playwright.LocatorAssertionsToContainTextOptions { Timeout = 4 * Site.Patience };
        var watch = Stopwatch.StartNew();
        await page.OpenFileAsync("large.json", Encoding.UTF8.GetBytes(Line(Most, "large")));
        await Expect(page.Lead().Locator("h2")).ToContainTextAsync("large", slow);
        output.WriteLine($"{Most} points: answer after {watch.Elapsed.TotalSeconds:0.0} s.");
        await Expect(page.Faults()).ToHaveCountAsync(0);
        foreach (var tab in BenchPage.Parts)
        {
            watch.Restart();
            await page.TurnToAsync(tab);
            output.WriteLine($"Tab {tab} after {watch.Elapsed.TotalSeconds:0.0} s.");
        }
        await page.TurnToAsync("Supply");
        watch.Restart();
        await page.GetByLabel("Title", new() { Exact = true }).FillAsync("changed by field");
        await Expect(page.Lead().Locator("h2")).ToContainTextAsync("changed by field", slow);
        output.WriteLine($"Answer to a changed field after {watch.Elapsed.TotalSeconds:0.0} s.");

        await page.TurnToAsync("Text");
        var text = page.GetByLabel("The document as it is saved");
        await text.FillAsync(Line(Most, "pasted as text"));
        await Expect(page.Lead().Locator("h2")).ToContainTextAsync("pasted as text", slow);
        Assert.Equal(Most, (await page.SheetAsync()).Layout!.Points.Length);
    }

    [Fact]
    public async Task One_point_more_is_told_and_nothing_is_lost()
    {
        var page = await site.OpenAsync();
        var bytes = Encoding.UTF8.GetBytes(Line(Most + 2, "too large"));

        await page.OpenFileAsync("large.json", bytes);

        await Expect(page.Faults()).Not.ToHaveCountAsync(0);
        await Expect(page.Faults().First).ToContainTextAsync($"{Most}");
        Assert.Equal(bytes, (await page.SaveAsync()).Bytes);
        await page.Button("Undo").ClickAsync();
        await page.AnsweredAsync();
    }

    // A main with a nozzle on a branch every metre.
    internal static string Line(int points, string title)
    {
        var (places, runs) = (new StringBuilder("""{ "id": "bottle", "kind": "supply" }"""), new StringBuilder());
        var before = "bottle";
        for (var tee = 1; tee <= points / 2 - 1; tee++)
        {
            places.Append($$""", { "id": "T{{tee}}", "kind": "tee", "fedThrough": "run" }, { "id": "N{{tee}}", "kind": "nozzle", "nozzle": "cone" }""");
            runs.Append($$"""{ "from": "{{before}}", "to": "T{{tee}}", "tube": "main", "length": "1 m"{{(tee > 1 ? ", \"leaves\": \"run\"" : "")}} }, { "from": "T{{tee}}", "to": "N{{tee}}", "tube": "drop", "length": "0.4 m", "leaves": "branch" }, """);
            before = $"T{tee}";
        }
        places.Append(""", { "id": "last", "kind": "nozzle", "nozzle": "cone" }""");
        runs.Append($$"""{ "from": "{{before}}", "to": "last", "tube": "main", "length": "1 m", "leaves": "run" }""");
        return $$"""
            { "format": 1, "title": "{{title}}", "agent": "water", "supply": { "pressure": "12 bar" },
              "tubes": { "main": { "bore": "40 mm" }, "drop": { "bore": "6 mm" } }, "nozzles": { "cone": { "orifice": { "diameter": "1.5 mm", "dischargeCoefficient": 0.8 } } },
              "points": [{{places}}], "runs": [{{runs}}] }
            """;
    }
}
