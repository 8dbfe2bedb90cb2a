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
            context, limits, limits.DischargePoints, limits.DischargeTime,
            (Layout layout, UnitWriter write, out Problem? fault, CancellationToken cancel) => Answer(layout, threads, write, out fault, cancel), static (text, answer) => text.Value(answer, AnswerJson.Default.DischargeAnswer));

    static DischargeAnswer? Answer(Layout layout, CaseThreads threads, UnitWriter write, out Problem? fault, CancellationToken cancel)
    {
        fault = layout.Supply is BottleSupply ? null : Problems.NoBottle();
        if (fault is not null)
            return null;
        var discharge = LayoutDischarge.Solve(layout, threads, cancel);
        return DischargeAnswers.Of(layout, discharge, DischargeFindings.Judge(layout, discharge, write.System, cancel), write);
    }
}
