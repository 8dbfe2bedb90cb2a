using System.Text;
using FlowCalc.Api.Faults;
using FlowCalc.Api.Requests;
using FlowCalc.Checks;
using FlowCalc.Findings;
using FlowCalc.Workbench.Hosting;
using FlowCalc.Workbench.Reports;
using FlowCalc.Workbench.Reports.Paper;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Logging.Abstractions;

namespace FlowCalc.Cli.Jobs;

/// <summary>The report of a layout as a file.</summary>
/// <param name="IsPdf">Whether it is a PDF; else a page of HTML.</param>
/// <param name="Paper">The paper that it is for.</param>
/// <param name="Date">The date that it bears; null for a blank.</param>
/// <param name="By">Who prepared it; null for a blank.</param>
/// <param name="Today">The day for which dates are judged; null for none.</param>
sealed record ReportJob(bool IsPdf, PaperSize Paper, string? Date, string? By, DateOnly? Today)
{
    /// <summary>Reads a layout and writes its report.</summary>
    /// <param name="utf8">The document.</param>
    /// <param name="asked">What is asked beside it.</param>
    /// <param name="cancel">Ends it.</param>
    /// <returns>The file and the verdict, or why there is none.</returns>
    public async Task<(byte[]? File, Severity Verdict, Problem? Fault)> DoAsync(ReadOnlyMemory<byte> utf8, Asked asked, CancellationToken cancel)
    {
        if (JsonBody.Read(utf8, LayoutCall.Reader(new() { Today = Today }), out var fault, cancel) is not { } layout) return (null, Severity.Fail, fault);
        var check = LayoutCheck.Of(layout, new(asked.Units, Today), TaskScheduler.Default, cancel);
        if (check.Flow is null) return (null, Severity.Fail, Problems.NoAnswer(check.Parts[(int)JobPart.Flow].Why!));

        var content = ReportContent.Of(new ReportSource(check) { Date = Date, By = By }, cancel);
        return (IsPdf ? ReportPdf.Write(content, Paper, cancel) : await HtmlAsync(content), check.Verdict, null);
    }

    async Task<byte[]> HtmlAsync(ReportContent content)
    {
        await using var services = new ServiceCollection().BuildServiceProvider();
        var markup = new StaticMarkup(services, NullLoggerFactory.Instance);
        return Encoding.UTF8.GetBytes(await markup.RenderAsync<Report>(new() { [nameof(Report.Content)] = content, [nameof(Report.Paper)] = Paper }));
    }
}
