using FlowCalc.Api.Answers;
using FlowCalc.Api.Documentation;
using FlowCalc.Api.Faults;
using FlowCalc.Api.Hosting;
using FlowCalc.Api.Requests;
using FlowCalc.Findings;
using FlowCalc.Layouts;
using FlowCalc.Mounts;

namespace FlowCalc.Api.Mounts;

/// <summary><c>POST /v1/mount</c>: whether the bottle stays where it is bolted.</summary>
internal static class MountEndpoint
{
    /// <summary>Puts the call on the service.</summary>
    public static void MapMount(this IEndpointRouteBuilder app) =>
        app.MapPost("/v1/mount", AnswerAsync)
            .WithName("Mount").WithTags("Mount")
            .WithSummary("Loads of a bottle's mount")
            .DescribeMount();

    static Task AnswerAsync(HttpContext context, ServiceLimits limits) =>
        LayoutCall.AnswerAsync<MountAnswer>(
            context, limits, new LayoutReaderOptions { MaximumPoints = limits.MountPoints, NeedsMount = true }, limits.MountTime,
            (Layout layout, UnitWriter write, out Problem? fault, CancellationToken cancel) =>
            {
                fault = null;
                var result = LayoutMount.Solve(layout, cancel);
                return MountAnswers.Of(layout, result, MountFindings.JudgeWithCures(layout, result, write.System, cancel), write);
            },
            static (text, answer) => text.Value(answer, AnswerJson.Default.MountAnswer));
}
