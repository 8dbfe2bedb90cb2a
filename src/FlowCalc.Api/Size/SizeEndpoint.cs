using FlowCalc.Api.Answers;
using FlowCalc.Api.Documentation;
using FlowCalc.Api.Faults;
using FlowCalc.Api.Hosting;
using FlowCalc.Api.Requests;
using FlowCalc.Layouts;
using FlowCalc.Studies.Reading;
using FlowCalc.Studies.Sizing;

namespace FlowCalc.Api.Size;

/// <summary><c>POST /v1/size</c>: bores and orifices from a stock that meet a wish.</summary>
internal static class SizeEndpoint
{
    /// <summary>Puts the call on the service.</summary>
    public static void MapSize(this IEndpointRouteBuilder app) =>
        app.MapPost("/v1/size", AnswerAsync)
            .WithName("Size").WithTags("Studies")
            .WithSummary("Bores and orifices from a stock that meet a wish")
            .DescribeSize();

    static Task AnswerAsync(HttpContext context, ServiceLimits limits, CaseThreads threads)
    {
        return DocumentCall.AnswerAsync<SizeRequest, SizeAnswer>(
            context, limits, limits.SizeTime,
            (utf8, cancel) => SizeReader.Read(utf8, new LayoutReaderOptions { MaximumPoints = limits.SizePoints }, limits.SizeStock, limits.SizeWork, cancel),
            Work(explains: false), static (text, answer) => text.Value(answer, AnswerJson.Default.SizeAnswer),
            new(Work(explains: true), request => request.Problem.Layout.Points.Length, "points"));

        DocumentWork<SizeRequest, SizeAnswer> Work(bool explains) => (SizeRequest request, UnitWriter write, out Problem? fault, CancellationToken cancel) =>
        {
            var result = LayoutSizing.Solve(request.Problem, threads, cancel);
            fault = result.Failure is { } failure ? Problems.NoAnswer(failure) : null;
            return fault is null ? SizeAnswers.Of(request, result, write, explains, cancel) : null;
        };
    }
}
