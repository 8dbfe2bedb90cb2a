using System.Text;
using FlowCalc.Api.Answers;
using FlowCalc.Api.Checks;
using FlowCalc.Api.Coverage;
using FlowCalc.Api.Documentation;
using FlowCalc.Api.Faults;
using FlowCalc.Api.Hosting;
using FlowCalc.Api.Requests;
using FlowCalc.Api.Upkeep;
using FlowCalc.Checks;
using FlowCalc.Coverage;
using FlowCalc.Explanations;
using FlowCalc.Layouts;
using FlowCalc.Workbench.Hosting;
using FlowCalc.Workbench.Reports;
using FlowCalc.Workbench.Reports.Paper;

namespace FlowCalc.Api.Reports;

/// <summary><c>POST /v1/report</c>: what a layout does and what it takes to build it, to print and to keep.</summary>
internal static class ReportEndpoint
{
    /// <summary>Names of the query.</summary>
    public const string Format = "format", Paper = "paper", Date = "date", By = "by";

    /// <summary>What is answered.</summary>
    public const string Html = "text/html", Pdf = "application/pdf";

    // The page runs nothing and fetches nothing; its styles and drawings are in it.
    const string Policy = "default-src 'none'; style-src 'unsafe-inline'; img-src data:; base-uri 'none'; form-action 'none'";

    /// <summary>The words that each may have; the first is taken where it is left out.</summary>
    public static readonly string[] Formats = ["html", "pdf"], Papers = ["a4", "letter"];

    /// <summary>Puts the call on the service.</summary>
    public static void MapReport(this IEndpointRouteBuilder app) =>
        app.MapPost("/v1/report", AnswerAsync)
            .WithName("Report").WithTags("Flow")
            .WithSummary("Report of a layout, to print and to keep")
            .DescribeReport();

    static Task AnswerAsync(HttpContext context, ServiceLimits limits, CaseThreads threads, StaticMarkup markup)
    {
        Problem? fault = null;
        var isPdf = QueryChoice.Read(context.Request, Format, Formats, ref fault) == 1;
        var paper = QueryChoice.Read(context.Request, Paper, Papers, ref fault) == 1 ? PaperSize.Letter : PaperSize.A4;
        var date = QueryText.Read(context.Request, Date, ref fault);
        var by = QueryText.Read(context.Request, By, ref fault);
        var today = UpkeepQuery.Day(context.Request, isRequired: false, ref fault);
        if (fault is not null) return ProblemWriter.WriteAsync(context, fault);

        var options = new LayoutReaderOptions { MaximumPoints = limits.ReportPoints, Today = today };
        return LayoutCall.AnswerAsync<WrittenReport>(context, limits, options, limits.ReportTime, Work, (report, cancel) => MakeAsync(context, report, paper, markup, cancel), Format, Paper, Date, By, UpkeepQuery.TodayName);

        WrittenReport? Work(Layout layout, UnitWriter write, out Problem? why, CancellationToken cancel)
        {
            why = TooMuch(layout, limits);
            if (why is not null) return null;
            var check = LayoutCheck.Of(layout, new(write.System, today), threads, cancel);
            if (check.Flow is null)
            {
                why = Problems.NoAnswer(check.Parts[(int)JobPart.Flow].Why!);
                return null;
            }
            // What the other calls would not answer is no result here either: they throw at a number that is not finite.
            CheckAnswers.Of(check, write);
            var source = new ReportSource(check) { Date = date, By = by };
            var content = ReportContent.Of(source, cancel);
            return new(content, isPdf ? ReportPdf.Write(content, paper, cancel) : null);
        }
    }

    static Problem? TooMuch(Layout layout, ServiceLimits limits)
    {
        if (LayoutCoverage.Pairs(layout) is var pairs && pairs > limits.CoveragePairs) return CoverageEndpoint.TooMany(pairs, limits);
        var parts = layout.Zones.Length + CutListExplainer.Parts(layout);
        return parts > limits.ReportParts ? Problems.TooMuch($"Its runs, bends, fittings, clips, hot places and zones are {parts} together; this call takes {limits.ReportParts}.") : null;
    }

    static async ValueTask<AnswerText> MakeAsync(HttpContext context, WrittenReport report, PaperSize paper, StaticMarkup markup, CancellationToken cancel)
    {
        if (report.Pdf is { } pdf)
        {
            context.Response.Headers.ContentDisposition = $"inline; filename=\"{FileName.Of(report.Content.Title)}.pdf\"";
            return AnswerWriter.Bytes(context, pdf, Pdf);
        }
        var page = Encoding.UTF8.GetBytes(await markup.RenderAsync<Report>(new() { [nameof(Report.Content)] = report.Content, [nameof(Report.Paper)] = paper }, cancel));
        context.Response.Headers.ContentSecurityPolicy = Policy;
        return AnswerWriter.Bytes(context, page, $"{Html}; charset=utf-8");
    }
}
