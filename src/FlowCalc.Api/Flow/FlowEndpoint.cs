using FlowCalc.Api.Answers;
using FlowCalc.Api.Documentation;
using FlowCalc.Api.Faults;
using FlowCalc.Api.Hosting;
using FlowCalc.Api.Requests;
using FlowCalc.Findings;
using FlowCalc.Flows;

namespace FlowCalc.Api.Flow;

/// <summary><c>POST /v1/flow</c>: one instant of a layout.</summary>
internal static class FlowEndpoint
{
    /// <summary>Puts the call on the service.</summary>
    public static void MapFlow(this IEndpointRouteBuilder app) =>
        app.MapPost("/v1/flow", AnswerAsync)
            .RequireRateLimiting(LimitSetup.Work)
            .WithName("Flow").WithTags("Flow")
            .WithSummary("Steady flow of a layout")
            .DescribeFlow();

    static async Task AnswerAsync(HttpContext context, ServiceLimits limits)
    {
        var write = QueryUnits.Read(context.Request, out var fault);
        fault ??= JsonContentType.Fault(context.Request);
        if (fault is null)
        {
            using var body = await PooledBody.ReadAsync(context.Request, limits.BodyBytes, context.RequestAborted);
            fault = body is null ? Problems.TooLarge(limits) : null;
            if (body is not null && Answer(body.Bytes, limits, write, out fault, context.RequestAborted) is { } answer)
            {
                await AnswerWriter.WriteAsync(context, answer, FlowAnswerWriter.Write);
                return;
            }
        }
        await ProblemWriter.WriteAsync(context, fault!);
    }

    static FlowAnswer? Answer(ReadOnlyMemory<byte> body, ServiceLimits limits, UnitWriter write, out Problem? fault, CancellationToken gone)
    {
        using var time = CancellationTokenSource.CreateLinkedTokenSource(gone);
        time.CancelAfter(limits.FlowTime);
        try
        {
            var layout = LayoutBody.Read(body, limits, out fault, time.Token);
            if (layout is null)
                return null;
            var flow = SteadyFlow.Solve(layout, time.Token);
            if (flow.Report.Converged)
                return FlowAnswers.Of(layout, flow, FlowFindings.Judge(layout, flow, write.System, time.Token), write);
            fault = Problems.NoAnswer(flow.Report.Failure ?? "The solve did not converge.");
        }
        catch (OperationCanceledException) when (!gone.IsCancellationRequested)
        {
            fault = Problems.TooSlow(limits.FlowTime);
        }
        catch (NotFiniteException notFinite)
        {
            fault = Problems.NoAnswer(notFinite.Message);
        }
        return null;
    }
}
