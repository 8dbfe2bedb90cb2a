using FlowCalc.Api.Answers;
using FlowCalc.Api.Documentation;
using FlowCalc.Api.Explanations;
using FlowCalc.Api.Faults;
using FlowCalc.Api.Hosting;
using FlowCalc.Api.Operations;
using FlowCalc.Api.Requests;
using FlowCalc.Explanations;
using FlowCalc.Findings;
using FlowCalc.Flows;
using FlowCalc.Layouts;

namespace FlowCalc.Api.Flow;

/// <summary><c>POST /v1/flow</c>: one instant of a layout.</summary>
internal static class FlowEndpoint
{
    /// <summary>Puts the call on the service.</summary>
    public static void MapFlow(this IEndpointRouteBuilder app) =>
        app.MapPost("/v1/flow", AnswerAsync)
            .WithName("Flow").WithTags("Flow")
            .WithSummary("Steady flow of a layout")
            .DescribeFlow();

    static readonly ExplainedWork<Layout, FlowAnswer> Explained = new(Explain, layout => layout.Points.Length, "points");

    static Task AnswerAsync(HttpContext context, ServiceLimits limits, ServiceMeter meter)
    {
        return LayoutCall.AnswerAsync<FlowAnswer>(context, limits, new LayoutReaderOptions { MaximumPoints = limits.Points }, limits.FlowTime, Counted, FlowAnswerWriter.Write, Explained);

        FlowAnswer? Counted(Layout layout, UnitWriter write, out Problem? fault, CancellationToken cancel)
        {
            var answer = Answer(layout, write, out fault, cancel);
            if (answer is not null) meter.Solved(answer.Solver.Iterations);
            return answer;
        }
    }

    static FlowAnswer? Answer(Layout layout, UnitWriter write, out Problem? fault, CancellationToken cancel) => Answer(layout, write, out _, out fault, cancel);

    static FlowAnswer? Explain(Layout layout, UnitWriter write, out Problem? fault, CancellationToken cancel) =>
        Answer(layout, write, out var flow, out fault, cancel) is { } answer
            ? answer with { Explanation = ExplanationAnswers.Of(FlowExplainer.Of(layout, flow, cancel), write) }
            : null;

    static FlowAnswer? Answer(Layout layout, UnitWriter write, out FlowResult flow, out Problem? fault, CancellationToken cancel)
    {
        flow = SteadyFlow.Solve(layout, cancel);
        fault = flow.Report.Converged ? null : Problems.NoAnswer(flow.Report.Failure ?? "The solve did not converge.");
        return fault is null ? FlowAnswers.Of(layout, flow, FlowFindings.Judge(layout, flow, write.System, cancel), write) : null;
    }
}
