using System.Collections.Immutable;
using FlowCalc.Api.Answers;
using FlowCalc.Api.Explanations;
using FlowCalc.Api.Flow;
using FlowCalc.Explanations;
using FlowCalc.Findings;
using FlowCalc.Flows;
using FlowCalc.Layouts;
using FlowCalc.Quantities;
using FlowCalc.Studies.Reading;
using FlowCalc.Studies.Sizing;
using UnitsNet;
using Quantity = FlowCalc.Api.Answers.Quantity;

namespace FlowCalc.Api.Size;

/// <summary>Writes sizes that the engine chose as an answer.</summary>
internal static class SizeAnswers
{
    /// <summary>The answer.</summary>
    /// <param name="request">The request.</param>
    /// <param name="result">What came of it.</param>
    /// <param name="write">The units of the answer.</param>
    /// <param name="explains">Whether it is to be explained.</param>
    /// <param name="cancel">Asked throughout.</param>
    /// <exception cref="NotFiniteException">A number of the result is not finite.</exception>
    public static SizeAnswer Of(SizeRequest request, SizingResult result, UnitWriter write, bool explains, CancellationToken cancel)
    {
        var (problem, layout) = (request.Problem, request.Problem.Layout);
        var document = result.Best is { } best ? SizedDocument.Of(request, best, cancel) : null;
        // The flow of the document as it is posted again.
        var flow = document is null ? null : SteadyFlow.Solve(document.Layout, cancel);
        var judged = flow is { Report.Converged: true } ? FlowFindings.Judge(document!.Layout, flow, write.System, cancel) : null;
        return new(
            judged is null ? SeverityWord.Of(Severity.Fail) : SeverityWord.Of(judged.Verdict),
            result.IsPossible,
            result.IsProven ? "exact" : "gap",
            Objective(problem.Objective, result, write),
            document?.Document ?? SizeChanges.Nothing,
            document is null ? [] : SizeChanges.Of(problem, result.Best!, document, write, cancel),
            flow?.Supply is { } supply ? new SupplyAnswer(write.Gauge(supply.Pressure, layout.AmbientPressure), write.Of(supply.MassFlow), write.Of(supply.VolumeFlow)) : null,
            flow is null ? [] : Nozzles(document!.Layout, flow, result, write),
            result.Best?.Times is { } times ? new SizeTimeAnswer(Time(times.Least, write), Time(times.Most, write), result.Before.Times is { } before ? Time(before.Most, write) : null) : null,
            result.Second is { } second ? RunnerUp(request, second, write, cancel) : null,
            [.. result.Relaxations.Select(relaxation => SizeRelaxations.Of(problem, relaxation, write))],
            result.LeftOut,
            new(result.Choices, result.Solves, result.Discharges, problem.Work),
            judged is null ? [] : [.. judged.Findings.Select(finding => FindingAnswer.Of(finding, write))],
            [.. (flow?.Assumptions ?? layout.Assumptions).Concat(request.Assumptions).Concat(SizingAssumptions.Of(request, result)).Distinct()],
            judged is null ? [] : LimitAnswers.Of(judged.Limits, write),
            Cautions.For(layout),
            Engine.Answer)
        {
            Explanation = explains ? ExplanationAnswers.Of(SizeExplainer.Of(problem, result, document?.Layout, flow, cancel), write) : null,
        };
    }

    /// <summary>A number in an objective's measure; null for none.</summary>
    public static Quantity? Measure(SizingObjective objective, double? value, UnitWriter write) => value is not { } known || !double.IsFinite(known) ? null
        : objective switch
        {
            SizingObjective.LeastMass => write.Of(Mass.FromKilograms(known)),
            SizingObjective.ShortestTime => write.Of(Duration.FromSeconds(known)),
            _ => write.Of(new Measure(known, null)),
        };

    static ObjectiveAnswer Objective(SizingObjective objective, SizingResult result, UnitWriter write) => new(
        SizeReader.WordOf(objective),
        Measure(objective, result.Before.Value, write),
        Measure(objective, result.Best?.Value, write),
        Measure(objective, result.Bound, write),
        Measure(objective, result.Gap, write));

    static ImmutableArray<SizedNozzleAnswer> Nozzles(Layout layout, FlowResult flow, SizingResult result, UnitWriter write) =>
    [
        .. flow.Nozzles.Select((nozzle, at) => new SizedNozzleAnswer(
            layout.Points[nozzle.Point].Id, write.Gauge(nozzle.Pressure, layout.AmbientPressure), write.Of(nozzle.MassFlow), UnitWriter.Plain(nozzle.Share),
            UnitWriter.Plain(nozzle.WantedShare), UnitWriter.Plain(nozzle.Deviation),
            result.Before.Deviations.Length > at ? UnitWriter.Plain(result.Before.Deviations[at]) : null)),
    ];

    static RunnerUpAnswer RunnerUp(SizeRequest request, SizedChoice second, UnitWriter write, CancellationToken cancel) => new(
        Measure(request.Problem.Objective, second.Value, write), UnitWriter.Plain(second.Worst),
        [.. SizedDocument.Of(request, second, cancel).Changes.Select(change => SizeChanges.Of(change, null))]);

    static Quantity? Time(double seconds, UnitWriter write) => double.IsFinite(seconds) ? write.Of(Duration.FromSeconds(seconds)) : null;
}
