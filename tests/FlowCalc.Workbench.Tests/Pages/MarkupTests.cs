using System.Text;
using FlowCalc.Workbench.Tests.Hosting;
using static Microsoft.Playwright.Assertions;

namespace FlowCalc.Workbench.Tests.Pages;

public sealed class MarkupTests(Site site)
{
    const string Evil = "<img src=x onerror=alert(1)><script>alert(2)</script>&amp;\\\"'";

    [Fact]
    public async Task Names_with_markup_are_shown_as_text_everywhere_and_nothing_of_them_runs()
    {
        var text = Sheets.Documents.Example("cabinet-inert-gas");
        foreach (var name in (string[])["\"first\"", "\"T1\"", "\"jet\"", "\"main\"", "\"left\"", "\"steel\""]) text = text.Replace(name, name[..^1] + Evil + "\"", StringComparison.Ordinal);
        text = text.Replace("\"title\": \"", "\"title\": \"" + Evil, StringComparison.Ordinal);
        var page = await site.OpenAsync();
        var dialogs = new List<string>();
        var errors = new List<string>();
        page.Dialog += (_, dialog) =>
        {
            dialogs.Add(dialog.Message);
            _ = dialog.DismissAsync();
        };
        page.Console += (_, message) =>
        {
            if (message.Type == "error") errors.Add(message.Text);
        };

        await page.OpenFileAsync(Evil.Replace('/', ' ') + ".json", Encoding.UTF8.GetBytes(text));
        await Expect(page.Lead().Locator("h2")).ToContainTextAsync("<img src=x");
        await page.AnsweredAsync();
        await Expect(page.Nozzles().First).ToContainTextAsync("first<img src=x onerror=alert(1)>");
        await Expect(page.Locator(".picture")).ToContainTextAsync("first<img src=x");
        await page.Nozzles().First.Locator("button").ClickAsync();
        foreach (var tab in BenchPage.Parts.Concat(BenchPage.Studies))
        {
            await page.TurnToAsync(tab);
            Assert.Equal(0, await page.Locator("main img, main script, svg script").CountAsync());
        }
        await page.TurnToAsync("Supply");
        await page.GetByLabel("Charge pressure").FillAsync("<b onclick=alert(3)>");
        await Expect(page.Faults()).ToContainTextAsync("<b onclick=alert(3)>");

        Assert.Empty(dialogs);
        Assert.Empty(errors);
        Assert.Equal(0, await page.Locator("main b").CountAsync());
    }
}
