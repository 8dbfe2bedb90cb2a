using FlowCalc.Api.Answers;
using FlowCalc.Api.Documentation;
using FlowCalc.Api.Faults;
using FlowCalc.Api.Hosting;
using FlowCalc.Api.Requests;
using FlowCalc.Discharge;
using FlowCalc.Findings;
using FlowCalc.Layouts;

namespace FlowCalc.Api.Discharge;

/// <summary><c>POST /v1/discharge</c>: a layout's discharge through time, in every case.</summary>
internal static class DischargeEndpoint
{
    /// <summary>Puts the call on the service.</summary>
    public static void MapDischarge(this IEndpointRouteBuilder app) =>
        app.MapPost("/v1/discharge", AnswerAsync)
            .RequireRateLimiting(LimitSetup.Work)
            .WithName("Discharge").WithTags("Flow")
            .WithSummary("Discharge of a layout through time")
            .DescribeDischarge();

    static Task AnswerAsync(HttpContext context, ServiceLimits limits, CaseThreads threads) =>
        LayoutCall.AnswerAsync<DischargeAnswer>(
            context, limits, new LayoutReaderOptions { MaximumPoints = limits.DischargePoints, NeedsBottle = true }, limits.DischargeTime,
            (Layout layout, UnitWriter write, out Problem? fault, CancellationToken cancel) =>
            {
                fault = null;
                var discharge = LayoutDischarge.Solve(layout, threads, cancel);
                return DischargeAnswers.Of(layout, discharge, DischargeFindings.JudgeWithCures(layout, discharge, write.System, threads, cancel), write);
            },
            static (text, answer) => text.Value(answer, AnswerJson.Default.DischargeAnswer));
}
