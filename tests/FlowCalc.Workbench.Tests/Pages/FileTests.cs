using System.Text;
using FlowCalc.Workbench.Tests.Hosting;
using FlowCalc.Workbench.Tests.Sheets;
using static Microsoft.Playwright.Assertions;

namespace FlowCalc.Workbench.Tests.Pages;

public sealed class FileTests(Site site)
{
    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public async Task File_of_odd_form_is_saved_as_it_was_opened_to_the_byte(bool hasMark)
    {
        var odd = Documents.Example("cabinet-inert-gas").ReplaceLineEndings("\r\n").Replace("  ", "\t ", StringComparison.Ordinal).Replace("\"format\": 1", "\"format\"   :\r\n1", StringComparison.Ordinal);
        byte[] bytes = [.. hasMark ? Encoding.UTF8.Preamble.ToArray() : [], .. Encoding.UTF8.GetBytes(odd + "\r\n\r\n")];
        var page = await site.OpenAsync();

        await page.OpenFileAsync("odd name é.json", bytes);
        await Expect(page.Lead().Locator("h2")).ToContainTextAsync("three control cabinets");
        await Expect(page.Faults()).ToHaveCountAsync(0);
        var (name, saved) = await page.SaveAsync();

        Assert.Equal("odd name é.json", name);
        Assert.Equal(bytes, saved);
        await page.ReloadAsync();
        await page.AnsweredAsync();
        Assert.Equal(bytes, (await page.SaveAsync()).Bytes);
    }

    [Fact]
    public async Task Opened_file_takes_nothing_away_that_cannot_be_had_again()
    {
        var page = await site.OpenAsync();
        var before = await page.SaveAsync();
        await page.OpenFileAsync("other.json", Encoding.UTF8.GetBytes(Documents.Example("boat-engine-space")));
        await Expect(page.Lead().Locator("h2")).Not.ToContainTextAsync("Desert raid");
        Assert.Equal("other.json", (await page.SaveAsync()).Name);

        await page.Button("Undo").ClickAsync();
        await Expect(page.Lead().Locator("h2")).ToContainTextAsync("Desert raid");

        var after = await page.SaveAsync();
        Assert.Equal(before.Name, after.Name);
        Assert.Equal(before.Bytes, after.Bytes);
    }

    public static TheoryData<string, string> Strangers => new()
    {
        { "words", "is no layout document" },
        { "list", "is no layout document" },
        { "bytes", "is no text in UTF-8" },
        { "huge", "has 3000000 bytes; the page takes 2097152" },
        { "twice", "is no layout document" },
        { "empty", "is no layout document" },
    };

    [Theory]
    [MemberData(nameof(Strangers))]
    public async Task File_that_is_no_layout_is_told_and_what_was_open_stays(string kind, string told)
    {
        byte[] bytes = kind switch
        {
            "words" => "Dear all,"u8.ToArray(),
            "list" => "[1, 2]"u8.ToArray(),
            "bytes" => [0x89, 0x50, 0x4E, 0x47, 0xFF, 0xFE],
            "huge" => [.. Enumerable.Repeat((byte)' ', 3_000_000)],
            "twice" => "{ \"format\": 1, \"format\": 1 }"u8.ToArray(),
            _ => [],
        };
        var page = await site.OpenAsync();
        var before = await page.SaveAsync();

        await page.OpenFileAsync("stranger.json", bytes);

        await Expect(page.Notice()).ToContainTextAsync(told);
        await Expect(page.Notice()).ToContainTextAsync("What was open stays open.");
        var after = await page.SaveAsync();
        Assert.Equal(before.Name, after.Name);
        Assert.Equal(before.Bytes, after.Bytes);
    }

    [Fact]
    public async Task Fields_that_the_format_has_not_are_told_one_by_one_and_stay_in_the_document()
    {
        var text = Documents.Example("cabinet-inert-gas").Replace("\"format\": 1,", "\"format\": 0, \"colour\": \"red\", \"cylinders\": { \"first\": \"20 L\" },", StringComparison.Ordinal);
        var page = await site.OpenAsync();

        await page.OpenFileAsync("older.json", Encoding.UTF8.GetBytes(text));

        await Expect(page.Button("/colour")).ToBeVisibleAsync();
        await Expect(page.Button("/cylinders")).ToBeVisibleAsync();
        await Expect(page.Button("/format")).ToBeVisibleAsync();
        Assert.Equal(Encoding.UTF8.GetBytes(text), (await page.SaveAsync()).Bytes);
        await page.TurnToAsync("Supply");
        await page.GetByLabel("Title", new() { Exact = true }).FillAsync("changed by field");
        Assert.Equal("20 L", (await page.SheetAsync()).TextAt("/cylinders/first"));
    }
}
