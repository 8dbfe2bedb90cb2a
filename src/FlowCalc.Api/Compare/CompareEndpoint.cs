using FlowCalc.Api.Answers;
using FlowCalc.Api.Documentation;
using FlowCalc.Api.Explanations;
using FlowCalc.Api.Faults;
using FlowCalc.Api.Hosting;
using FlowCalc.Api.Requests;
using FlowCalc.Explanations;
using FlowCalc.Layouts;
using FlowCalc.Studies.Comparing;
using FlowCalc.Studies.Reading;

namespace FlowCalc.Api.Compare;

/// <summary><c>POST /v1/compare</c>: a layout and variants of it, side by side.</summary>
internal static class CompareEndpoint
{
    /// <summary>Puts the call on the service.</summary>
    public static void MapCompare(this IEndpointRouteBuilder app) =>
        app.MapPost("/v1/compare", AnswerAsync)
            .WithName("Compare").WithTags("Studies")
            .WithSummary("A layout and variants of it, side by side")
            .DescribeCompare();

    static Task AnswerAsync(HttpContext context, ServiceLimits limits, CaseThreads threads) =>
        DocumentCall.AnswerAsync<CompareRequest, CompareAnswer>(
            context, limits, limits.CompareTime,
            (utf8, cancel) => CompareReader.Read(utf8, new LayoutReaderOptions { MaximumPoints = limits.DischargePoints }, limits.Variants, cancel),
            (CompareRequest request, UnitWriter write, out Problem? fault, CancellationToken cancel) =>
            {
                fault = null;
                return CompareAnswers.Of(Comparison.Of(request, write.System, threads, cancel), write);
            },
            static (text, answer) => text.Value(answer, AnswerJson.Default.CompareAnswer),
            new(
                (CompareRequest request, UnitWriter write, out Problem? fault, CancellationToken cancel) =>
                {
                    fault = null;
                    var result = Comparison.Of(request, write.System, threads, cancel);
                    return CompareAnswers.Of(result, write) with { Explanation = ExplanationAnswers.Of(CompareExplainer.Of(result, cancel), write) };
                },
                CompareExplainer.Points, "points (those of the base and of every variant)"));
}
