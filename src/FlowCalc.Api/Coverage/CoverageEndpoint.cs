using FlowCalc.Api.Answers;
using FlowCalc.Api.Documentation;
using FlowCalc.Api.Faults;
using FlowCalc.Api.Hosting;
using FlowCalc.Api.Requests;
using FlowCalc.Coverage;
using FlowCalc.Discharge;
using FlowCalc.Findings;
using FlowCalc.Flows;
using FlowCalc.Layouts;

namespace FlowCalc.Api.Coverage;

/// <summary><c>POST /v1/coverage</c>: where the sprays of a layout land, and what its zones get.</summary>
internal static class CoverageEndpoint
{
    /// <summary>What a document without zones and coverage is told.</summary>
    public const string Missing = "missing: this call answers from coverage (surfaces, targets, persons, bodies) and from zones, of which the document has neither";

    /// <summary>Puts the call on the service.</summary>
    public static void MapCoverage(this IEndpointRouteBuilder app) =>
        app.MapPost("/v1/coverage", AnswerAsync)
            .WithName("Coverage").WithTags("Flow")
            .WithSummary("Where sprays land and what zones get")
            .DescribeCoverage();

    /// <summary>What a document is told whose sprays and things are too many together.</summary>
    public static Problem TooMany(long pairs, ServiceLimits limits) =>
        Problems.TooMuch($"Its surfaces, targets and persons times its nozzles are {pairs} together; this call takes {limits.CoveragePairs}.");

    static Task AnswerAsync(HttpContext context, ServiceLimits limits, CaseThreads threads) =>
        LayoutCall.AnswerAsync<CoverageAnswer>(
            context, limits, new LayoutReaderOptions { MaximumPoints = limits.CoveragePoints }, limits.CoverageTime,
            (Layout layout, UnitWriter write, out Problem? fault, CancellationToken cancel) =>
            {
                var pairs = LayoutCoverage.Pairs(layout);
                fault = layout.Coverage is null && layout.Zones.IsEmpty ? Problems.Unread([new LayoutFault("/coverage", Missing)]) : pairs > limits.CoveragePairs ? TooMany(pairs, limits) : null;
                if (fault is not null) return null;
                var discharge = layout.Supply is BottleSupply ? LayoutDischarge.Solve(layout, threads, cancel) : null;
                var flow = discharge is null ? SteadyFlow.Solve(layout, cancellationToken: cancel) : null;
                var result = LayoutCoverage.Solve(layout, discharge, flow, cancel);
                return CoverageAnswers.Of(layout, result, discharge, CoverageFindings.JudgeWithCures(layout, result, discharge, flow, write.System, threads, cancel), write);
            },
            static (text, answer) => text.Value(answer, AnswerJson.Default.CoverageAnswer));
}
