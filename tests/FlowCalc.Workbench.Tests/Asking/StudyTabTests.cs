using System.Text.Json;
using System.Text.RegularExpressions;
using FlowCalc.Workbench.Pages;
using FlowCalc.Workbench.Tests.Hosting;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace FlowCalc.Workbench.Tests.Asking;

public sealed class StudyTabTests(Site site)
{
    [Fact]
    public async Task Discharge_shows_every_case_and_the_nozzles_and_charts_of_the_one_chosen()
    {
        var page = await site.OpenAsync();
        var panel = Panel(page);

        var cases = panel.GetByRole(AriaRole.Region, new() { Name = "Cases" }).Locator("tbody tr");
        await Expect(cases).ToHaveCountAsync(9);
        await cases.Nth(5).GetByRole(AriaRole.Button).ClickAsync();

        await Expect(panel.GetByRole(AriaRole.Region, new() { Name = "Nozzles in this case" }).Locator("tbody tr")).ToHaveCountAsync(7);
        await Expect(panel.Locator("figure svg")).ToHaveCountAsync(2);
        await Site.KeepPictureAsync(page, "discharge");
    }

    [Fact]
    public async Task Comparing_with_the_version_before_a_cure_ranks_the_cured_one_first()
    {
        var page = await site.OpenAsync();
        await page.Locator(".lead").GetByRole(AriaRole.Button, new() { Name = "Set runs R11 tube to feed" }).ClickAsync();
        var panel = await TabAsync(page, "Compare");

        await panel.GetByLabel("Version to compare with").SelectOptionAsync("0");
        await panel.GetByRole(AriaRole.Button, new() { Name = "Compare" }).ClickAsync();

        await Expect(panel.Locator("ol li").First).ToContainTextAsync("now");
        await Expect(panel.Locator("tbody tr")).ToHaveCountAsync(7);
        await Site.KeepPictureAsync(page, "compare");
    }

    [Fact]
    public async Task Whole_job_shows_every_part_with_its_verdict_and_the_day_moves_the_dates()
    {
        var page = await site.OpenAsync();
        var panel = await TabAsync(page, "Whole job");
        await panel.GetByLabel("Day for which dates are judged").FillAsync("2026-11-25");

        await Expect(panel.GetByRole(AriaRole.Region, new() { Name = "Parts of the job" }).Locator("tbody tr")).ToHaveCountAsync(8);
        await Expect(panel.GetByRole(AriaRole.Heading, new() { Name = "Mount of the bottle" })).ToBeVisibleAsync();
        await Expect(panel.GetByRole(AriaRole.Heading, new() { Name = "Firing circuit" })).ToBeVisibleAsync();
        await Expect(panel.GetByText("Judged for 2026-11-25")).ToBeVisibleAsync();
        await Expect(panel.GetByRole(AriaRole.Region, new() { Name = "Findings of the rest of the job" })).Not.ToContainTextAsync("service-overdue");
        await Expect(panel.Locator("p[role=status]")).ToHaveTextAsync("");
        await Site.KeepPictureAsync(page, "whole-job");
        await panel.GetByLabel("Day for which dates are judged").FillAsync("2028-06-01");

        await Expect(panel.GetByRole(AriaRole.Region, new() { Name = "Findings of the rest of the job" })).ToContainTextAsync("service-overdue");
        await panel.GetByLabel("Day for which dates are judged").FillAsync("2020-06-01");
        await Expect(panel.Locator("p[role=status]")).ToContainTextAsync("/service/lastService");
    }

    [Fact]
    public async Task Sizes_found_become_the_document_and_can_be_undone()
    {
        var page = await site.OpenAsync();
        var panel = await TabAsync(page, "Size");

        await panel.GetByLabel("Runs and nozzles that may change").FillAsync("R9, R10, R11, R12, R13");
        await panel.GetByRole(AriaRole.Button, new() { Name = "Find sizes" }).ClickAsync();
        await panel.GetByRole(AriaRole.Button, new() { Name = "Take these sizes" }).ClickAsync();

        await Expect(page.Locator(".lead")).Not.ToContainTextAsync("Fails");
        await Site.KeepPictureAsync(page, "size");
        await page.GetByRole(AriaRole.Button, new() { Name = "Undo" }).ClickAsync();
        await Expect(page.Locator(".lead")).ToContainTextAsync("Fails");
    }

    [Fact]
    public async Task A_wish_that_is_no_number_is_told_in_the_words_of_the_service()
    {
        var page = await site.OpenAsync();
        var panel = await TabAsync(page, "Size");

        await panel.GetByLabel("Largest deviation of a share").FillAsync("a tenth");
        await panel.GetByRole(AriaRole.Button, new() { Name = "Find sizes" }).ClickAsync();

        await Expect(panel.Locator("p[role=status]")).ToContainTextAsync("/wish/deviation");
        await Expect(panel.Locator("p[role=status]")).ToContainTextAsync("a tenth");
    }

    [Fact]
    public async Task A_study_of_tolerances_shows_how_far_it_is_and_ends_when_it_is_cancelled()
    {
        var page = await site.OpenAsync();
        var panel = await TabAsync(page, "Tolerance");
        await panel.GetByLabel("Samples").FillAsync("20000");
        await panel.GetByLabel("Of", new() { Exact = true }).SelectOptionAsync("discharge");
        await panel.GetByRole(AriaRole.Button, new() { Name = "Run" }).ClickAsync();
        await Expect(panel.GetByRole(AriaRole.Progressbar)).ToBeVisibleAsync();
        await Expect(panel.Locator("p[role=status]")).ToContainTextAsync(new Regex("^[1-9][0-9]* of 20000"));

        await panel.GetByRole(AriaRole.Button, new() { Name = "Cancel" }).ClickAsync();

        await Expect(panel.Locator("p[role=status]")).ToHaveTextAsync("It was cancelled.");
        await Expect(panel.GetByRole(AriaRole.Progressbar)).ToHaveCountAsync(0);
    }

    [Fact]
    public async Task A_study_of_tolerances_tells_the_spread_of_every_nozzle_and_what_matters()
    {
        var page = await site.OpenAsync();
        var panel = await TabAsync(page, "Tolerance");

        await panel.GetByRole(AriaRole.Button, new() { Name = "Run" }).ClickAsync();

        await Expect(panel.Locator("tbody tr")).ToHaveCountAsync(7);
        await Expect(panel.Locator("figure svg").First).ToBeVisibleAsync();
        await Site.KeepPictureAsync(page, "tolerance");
    }

    [Fact]
    public async Task Cut_list_names_every_piece_and_saves_the_table_that_the_service_gives()
    {
        var page = await site.OpenAsync();
        var panel = await TabAsync(page, "Cut list");
        await Expect(panel.GetByRole(AriaRole.Region, new() { Name = "Pieces" }).Locator("tbody tr")).ToHaveCountAsync(14);

        var saved = await page.RunAndWaitForDownloadAsync(() => panel.GetByRole(AriaRole.Button, new() { Name = "Save the pieces as CSV" }).ClickAsync());

        Assert.Equal("raid-pickup-pieces.csv", saved.SuggestedFilename);
        Assert.Equal(15, (await File.ReadAllLinesAsync(await saved.PathAsync(), TestContext.Current.CancellationToken)).Length);
        await Site.KeepPictureAsync(page, "cut-list");
    }

    [Theory]
    [InlineData("curl", "layout.sh")]
    [InlineData("Python", "layout.py")]
    public async Task The_request_shown_gives_the_answer_of_the_service_when_it_is_run(string language, string file)
    {
        var program = language == "curl" ? "bash" : "python3";
        if (!Programs.IsThere(program) || (language == "curl" && !Programs.IsThere("curl")))
        {
            Assert.NotEqual("true", Environment.GetEnvironmentVariable("CI"));
            Assert.Skip($"No {program} on the PATH.");
        }
        var page = await site.OpenAsync();
        var panel = await TabAsync(page, "Request");
        await panel.GetByLabel("Language").SelectOptionAsync(language);
        await Expect(panel.Locator("pre")).ToContainTextAsync(language == "curl" ? "curl " : "import ");
        var folder = Directory.CreateTempSubdirectory().FullName;
        try
        {
            await File.WriteAllTextAsync(Path.Combine(folder, file), await panel.Locator("pre").InnerTextAsync(), TestContext.Current.CancellationToken);
            await File.WriteAllTextAsync(Path.Combine(folder, "raid-pickup.json"), Demo.Text, TestContext.Current.CancellationToken);
            var printed = await Programs.RunAsync(program, file, folder);

            using var answer = JsonDocument.Parse(printed);
            Assert.Equal("fail", answer.RootElement.GetProperty("verdict").GetString());
            Assert.Equal(7, answer.RootElement.GetProperty("nozzles").GetArrayLength());
        }
        finally
        {
            Directory.Delete(folder, true);
        }
    }

    static ILocator Panel(IPage page) => page.Locator("#studies-panel");

    static async Task<ILocator> TabAsync(IPage page, string name)
    {
        await page.GetByRole(AriaRole.Tab, new() { Name = name, Exact = true }).ClickAsync();
        await Expect(page.GetByRole(AriaRole.Tab, new() { Name = name, Exact = true })).ToHaveAttributeAsync("aria-selected", "true");
        return Panel(page);
    }
}
