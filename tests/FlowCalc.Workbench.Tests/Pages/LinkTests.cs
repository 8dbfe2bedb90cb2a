using System.Text;
using FlowCalc.Workbench.Tests.Hosting;
using static Microsoft.Playwright.Assertions;

namespace FlowCalc.Workbench.Tests.Pages;

public sealed class LinkTests(Site site)
{
    [Fact]
    public async Task Link_opens_the_same_document_in_a_browser_that_has_never_been_here()
    {
        var page = await site.OpenAsync(new() { Permissions = ["clipboard-read", "clipboard-write"] });
        await page.BeginExampleAsync("cabinet-inert-gas", "three control cabinets");
        var sent = (await page.SaveAsync()).Bytes;
        await page.Button("Link").ClickAsync();
        await Expect(page.Notice()).ToContainTextAsync("no server keeps it");
        var link = await page.EvaluateAsync<string>("navigator.clipboard.readText()");

        var other = await site.NewPageAsync();
        var asked = new List<string>();
        other.Request += (_, request) => asked.Add(request.Url);
        await other.GotoAsync(link);
        await Expect(other.Lead().Locator("h2")).ToContainTextAsync("three control cabinets");

        Assert.Equal(sent, (await other.SaveAsync()).Bytes);
        Assert.DoesNotContain(asked, url => url.Contains("layout=", StringComparison.Ordinal) && !url.Contains("#layout=", StringComparison.Ordinal));
        Assert.DoesNotContain("#", other.Url, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Link_opened_where_work_is_going_on_is_a_step_that_can_be_undone()
    {
        var page = await site.OpenAsync();
        await page.TurnToAsync("Supply");
        await page.GetByLabel("Title", new() { Exact = true }).FillAsync("my work");
        await Expect(page.Lead().Locator("h2")).ToHaveTextAsync("my work");

        await page.GotoAsync(site.Address + Workbench.Sheets.LinkText.Write(Sheets.Documents.Example("cabinet-inert-gas")));
        await Expect(page.Lead().Locator("h2")).ToContainTextAsync("three control cabinets");
        await page.Button("Undo").ClickAsync();

        await Expect(page.Lead().Locator("h2")).ToHaveTextAsync("my work");
    }

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public async Task Broken_link_is_told_and_the_work_stays(bool isOpenAlready)
    {
        var page = await site.OpenAsync();
        await page.TurnToAsync("Supply");
        await page.GetByLabel("Title", new() { Exact = true }).FillAsync("my work");
        await Expect(page.Lead().Locator("h2")).ToHaveTextAsync("my work");
        var before = (await page.SaveAsync()).Bytes;
        var link = site.Address + Workbench.Sheets.LinkText.Write(Encoding.UTF8.GetString(before))[..200];
        if (!isOpenAlready)
        {
            var context = page.Context;
            await page.CloseAsync();
            page = await context.NewPageAsync();
        }

        await page.GotoAsync(link);

        await Expect(page.Notice()).ToContainTextAsync("The link is broken");
        await Expect(page.Lead().Locator("h2")).ToHaveTextAsync("my work");
        Assert.Equal(before, (await page.SaveAsync()).Bytes);
    }
}
