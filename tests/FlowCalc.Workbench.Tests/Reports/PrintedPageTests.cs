using FlowCalc.Workbench.Hosting;
using FlowCalc.Workbench.Reports;
using FlowCalc.Workbench.Reports.Paper;
using FlowCalc.Workbench.Tests.Hosting;
using FlowCalc.Workbench.Tests.Solving;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Logging.Abstractions;

namespace FlowCalc.Workbench.Tests.Reports;

public sealed class PrintedPageTests(Site site)
{
    [Fact]
    public async Task Page_prints_on_as_many_sheets_as_the_file_has_and_nothing_sticks_out()
    {
        var content = ReportContent.Of(new ReportSource(Solved.Check("raid-pickup")), TestContext.Current.CancellationToken);
        var html = await new StaticMarkup(new ServiceCollection().BuildServiceProvider(), NullLoggerFactory.Instance)
            .RenderAsync<Report>(new() { [nameof(Report.Content)] = content, [nameof(Report.Paper)] = PaperSize.A4 }, TestContext.Current.CancellationToken);
        var file = new ReadPdf(ReportPdf.Write(content, PaperSize.A4, TestContext.Current.CancellationToken));
        var page = await site.NewPageAsync();
        await page.SetContentAsync(html);

        foreach (var width in (int[])[1280, 700])
        {
            await page.SetViewportSizeAsync(width, 900);
            Assert.True(await page.EvaluateAsync<bool>("document.documentElement.scrollWidth <= document.documentElement.clientWidth"), $"It is wider than {width}.");
        }
        var printed = new ReadPdf(await page.PdfAsync(new() { PreferCSSPageSize = true }));

        // Two ways of breaking lines and pages: alike, not the same.
        Assert.InRange(printed.Pages.Length, 0.6 * file.Pages.Length, 1.5 * file.Pages.Length);
        Assert.All(printed.Pages, sheet => Assert.Equal(595.28, Math.Min(sheet.Width, sheet.Height), tolerance: 1));
        Assert.Empty(printed.Outside);
        Assert.True(printed.Lines.Count(line => line.StartsWith("equation form", StringComparison.Ordinal)) >= 2, "A heading of a table is not repeated.");
        Assert.Contains(printed.Lines, line => line.EndsWith($"page 1 of {printed.Pages.Length}", StringComparison.Ordinal));
    }
}
