using System.Text;
using FlowCalc.Workbench.Tests.Hosting;
using static Microsoft.Playwright.Assertions;

namespace FlowCalc.Workbench.Tests.Pages;

public sealed class FaultTests(Site site)
{
    [Fact]
    public async Task Comma_in_a_length_is_told_at_its_field_and_in_the_list_and_mending_it_brings_the_answer_back()
    {
        var page = await site.OpenAsync();
        await page.BeginExampleAsync("cabinet-inert-gas", "three control cabinets");
        await page.TurnToAsync("Runs");
        await page.Button("T1-T2").ClickAsync();
        var length = page.GetByLabel("Length", new() { Exact = true });
        // The table has such a field a row; the chosen run has one.
        await Expect(length).ToHaveCountAsync(1);
        await length.FillAsync("1,5 mm");

        await Expect(length).ToHaveAttributeAsync("aria-invalid", "true");
        await Expect(page.Locator("#at-runs-2-length-fault")).ToContainTextAsync("comma");
        await Expect(length).ToHaveAttributeAsync("aria-describedby", "at-runs-2-length-fault");
        await Expect(page.Faults()).ToHaveCountAsync(1);
        await Expect(page.Faults()).ToContainTextAsync("/runs/2/length");
        await Expect(page.Faults()).ToContainTextAsync("1,5 mm");
        await Expect(page.Lead()).ToContainTextAsync("the last document without faults");
        await Site.KeepPictureAsync(page, "fault");

        await page.TurnToAsync("Supply");
        await page.Button("/runs/2/length").ClickAsync();
        await Expect(length).ToBeFocusedAsync();
        await length.FillAsync("0.9 m");
        await Expect(page.Faults()).ToHaveCountAsync(0);
        await page.AnsweredAsync();
        await Expect(length).Not.ToHaveAttributeAsync("aria-invalid", "true");
        Assert.Equal("0.9 m", (await page.SheetAsync()).TextAt("/runs/2/length"));
    }

    [Theory]
    [InlineData("\"wall\": \"1 mm\", \"roughness\": \"1.5 µm\", \"material\": \"steel\", \"workingPressure\": \"250 bar\", \"minimumBendRadius\": \"36 mm\"", "\"wall\": \"thin\"", "/tubes/main/wall", "Wall")]
    [InlineData("\"volume\": \"20 L\"", "\"volume\": 20", "/supply/bottle/volume", "Volume")]
    [InlineData("\"nozzle\": \"jet\", \"zone\": \"middle\"", "\"nozzle\": \"yet\", \"zone\": \"middle\"", "/points/4/nozzle", "Nozzle from stock")]
    public async Task List_of_faults_leads_to_the_field_wherever_it_is(string good, string bad, string pointer, string label)
    {
        var text = Text("cabinet-inert-gas");
        Assert.Contains(good, text, StringComparison.Ordinal);
        var page = await site.OpenAsync();
        await page.OpenFileAsync("bad.json", Encoding.UTF8.GetBytes(text.Replace(good, bad, StringComparison.Ordinal)));

        await page.Button(pointer).ClickAsync();

        var field = page.GetByLabel(label, new() { Exact = true }).And(page.Locator("[aria-invalid=true]"));
        await Expect(field).ToBeFocusedAsync();
        await Expect(field).ToBeInViewportAsync();
    }

    [Fact]
    public async Task Fault_that_has_no_field_of_its_own_leads_to_the_part_that_it_is_about()
    {
        var page = await site.OpenAsync();
        await page.OpenFileAsync("bad.json", Encoding.UTF8.GetBytes(Text("cabinet-inert-gas").Replace("\"length\": \"0.8 m\"", "\"len\": \"0.8 m\"", StringComparison.Ordinal)));

        await page.Button("/runs/2/len").ClickAsync();

        await Expect(page.Locator("h3")).ToContainTextAsync("T1-T2");
        await Expect(page.Locator("#parts-panel :focus")).ToHaveCountAsync(1);
    }

    [Fact]
    public async Task Field_whose_way_leads_through_something_else_is_told_and_the_page_goes_on()
    {
        var page = await site.OpenAsync();
        await page.OpenFileAsync("bad.json", Encoding.UTF8.GetBytes(Text("cabinet-inert-gas").Replace("\"outlet\": { \"valveKv\": \"1.6 m3/h\", \"regulator\": { \"setPressure\": \"40 bar\" } }", "\"outlet\": \"wide\"", StringComparison.Ordinal)));
        await Expect(page.Faults()).Not.ToHaveCountAsync(0);
        await page.TurnToAsync("Supply");

        await page.GetByLabel("Kv of the valve").FillAsync("2 m3/h");

        await Expect(page.Notice()).ToContainTextAsync("mend it under Text");
        await page.GetByLabel("Title", new() { Exact = true }).FillAsync("still here");
        Assert.Equal("still here", (await page.SheetAsync()).TextAt("/title"));
    }

    [Fact]
    public async Task Text_that_is_no_json_is_told_where_it_stops_and_every_tab_still_opens()
    {
        var page = await site.OpenAsync();
        await page.TurnToAsync("Text");
        var text = page.GetByLabel("The document as it is saved");
        await text.FillAsync("{ \"format\": 1, ");
        await Expect(page.Faults()).ToContainTextAsync("This is no JSON");
        foreach (var tab in BenchPage.Parts) await page.TurnToAsync(tab);

        await page.Button("Undo").ClickAsync();

        await Expect(page.Faults()).ToHaveCountAsync(0);
        await page.AnsweredAsync();
    }

    static string Text(string example) => Sheets.Documents.Example(example);
}
