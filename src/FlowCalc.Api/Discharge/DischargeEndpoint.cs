using FlowCalc.Api.Answers;
using FlowCalc.Api.Documentation;
using FlowCalc.Api.Explanations;
using FlowCalc.Api.Faults;
using FlowCalc.Api.Hosting;
using FlowCalc.Api.Requests;
using FlowCalc.Discharge;
using FlowCalc.Explanations;
using FlowCalc.Findings;
using FlowCalc.Layouts;

namespace FlowCalc.Api.Discharge;

/// <summary><c>POST /v1/discharge</c>: a layout's discharge through time, in every case.</summary>
internal static class DischargeEndpoint
{
    /// <summary>Puts the call on the service.</summary>
    public static void MapDischarge(this IEndpointRouteBuilder app) =>
        app.MapPost("/v1/discharge", AnswerAsync)
            .WithName("Discharge").WithTags("Flow")
            .WithSummary("Discharge of a layout through time")
            .DescribeDischarge();

    static Task AnswerAsync(HttpContext context, ServiceLimits limits, CaseThreads threads) =>
        LayoutCall.AnswerAsync<DischargeAnswer>(
            context, limits, new LayoutReaderOptions { MaximumPoints = limits.DischargePoints, NeedsBottle = true }, limits.DischargeTime,
            (Layout layout, UnitWriter write, out Problem? fault, CancellationToken cancel) =>
            {
                fault = null;
                return Answer(layout, write, threads, out _, cancel);
            },
            static (text, answer) => text.Value(answer, AnswerJson.Default.DischargeAnswer),
            new(
                (Layout layout, UnitWriter write, out Problem? fault, CancellationToken cancel) =>
                {
                    fault = null;
                    var answer = Answer(layout, write, threads, out var discharge, cancel);
                    return answer with { Explanation = ExplanationAnswers.Of(DischargeExplainer.Of(layout, discharge, cancel), write) };
                },
                DischargeExplainer.Points, "points (those of the layout in every case)"));

    static DischargeAnswer Answer(Layout layout, UnitWriter write, CaseThreads threads, out DischargeResult discharge, CancellationToken cancel)
    {
        discharge = LayoutDischarge.Solve(layout, threads, cancel);
        return DischargeAnswers.Of(layout, discharge, DischargeFindings.JudgeWithCures(layout, discharge, write.System, threads, cancel), write);
    }
}
