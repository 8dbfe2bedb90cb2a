using FlowCalc.Flows;
using FlowCalc.Layouts;
using FlowCalc.Quantities;
using FlowCalc.Studies.Sizing;

namespace FlowCalc.Explanations;

/// <summary>Explains chosen sizes: the flow with them, each nozzle's deviation, and what the objective comes to.</summary>
public static class SizeExplainer
{
    /// <summary>Name of the layout with the sizes in an explanation.</summary>
    public const string Sized = "sized";

    const string Search = "The search, and how the bound was proven: search in the answer says what it took. Any choice can be held against this one with POST /v1/compare.";
    const string NoSizes = "No sizes meet the wish, so that there is no flow with them to explain.";
    const string Times = "The time of the slowest case: POST /v1/discharge?explain=true explains it from the layout of the answer.";

    /// <summary>The explanation of chosen sizes.</summary>
    /// <param name="problem">The problem.</param>
    /// <param name="result">What came of the search.</param>
    /// <param name="layout">The layout with the sizes, as the answer's document reads; null where none meet the wish.</param>
    /// <param name="flow">Its steady flow; null for none.</param>
    /// <param name="cancellationToken">Asked at every run.</param>
    /// <exception cref="OperationCanceledException">The token was cancelled.</exception>
    public static StudyExplanation Of(SizingProblem problem, SizingResult result, Layout? layout, FlowResult? flow, CancellationToken cancellationToken = default)
    {
        ArgumentNullException.ThrowIfNull(problem);
        ArgumentNullException.ThrowIfNull(result);
        var study = new StudyExplainer();
        Objective(study.Log, problem, result.Before, "before");
        if (layout is null || flow is null || result.Best is not { } best) return study.Whole(NoSizes, Search);
        study.Add(Sized, layout, flow, cancellationToken);
        if (flow.Report.Converged) Deviations(study.Log, problem.Objective, layout, flow);
        Objective(study.Log, problem, best, "after");
        study.Log.At(ExplainedPlace.Layout, Sized);
        if (result.Gap is { } gap && double.IsFinite(result.Bound))
            study.Log.Add(SizeEquations.Gap, "objective", gap, best.Value!.Value, result.Bound);
        return problem.Wish.HasTime || problem.Objective == SizingObjective.ShortestTime ? study.Whole(Search, Times) : study.Whole(Search);
    }

    static void Deviations(StepLog log, SizingObjective objective, Layout layout, FlowResult flow)
    {
        var (worst, at) = (0.0, "");
        foreach (var nozzle in flow.Nozzles)
        {
            if (nozzle.Deviation is not { } deviation) continue;
            var id = layout.Points[nozzle.Point].Id;
            log.At(ExplainedPlace.Point, id);
            log.Add(SizeEquations.NozzleDeviation, "share", deviation, nozzle.Share, nozzle.WantedShare);
            if (at.Length == 0 || Math.Abs(deviation) > Math.Abs(worst)) (worst, at) = (deviation, id);
        }
        if (objective != SizingObjective.BestBalance || at.Length == 0) return;
        log.At(ExplainedPlace.Point, at);
        log.Add(SizeEquations.Largest, "objective, after", Math.Abs(worst), worst);
    }

    static void Objective(StepLog log, SizingProblem problem, SizedChoice choice, string when)
    {
        log.FigureUnit = problem.Objective switch
        {
            SizingObjective.LeastMass => SymbolUnit.Of(QuantityKind.Mass),
            SizingObjective.ShortestTime => SymbolUnit.Of(QuantityKind.Time),
            _ => SymbolUnit.Plain,
        };
        if (choice.Terms.IsEmpty || choice.Value is not { } value) return;
        var part = $"objective, {when}";
        foreach (var term in choice.Terms)
            if (term.PerMetre is { } perMetre) OfRun(log, problem, choice.Layout.Runs[term.Index], perMetre, term.Value, part);
        log.At(ExplainedPlace.Layout, when == "after" ? Sized : when);
        var isCounted = problem.Objective == SizingObjective.FewestChanges;
        log.Sum(isCounted ? SizeEquations.Exchanged : SizeEquations.Sum, part, value, choice.Terms.Where(term => isCounted || term.IsRun).Select(term => term.Value));
    }

    static void OfRun(StepLog log, SizingProblem problem, Run run, double perMetre, double value, string part)
    {
        log.At(ExplainedPlace.Run, run.Id);
        if (problem.Objective == SizingObjective.LeastCost)
        {
            log.Add(SizeEquations.Cost, part, value, perMetre, run.Length.Meters);
            return;
        }
        // One that the request states has no sum of its own.
        if (run.Tube.OutsideDiameter is { } outside && TubeMass.DensityOf(run.Tube) is { } density && TubeMass.PerMetre(run.Tube) == perMetre)
            log.Add(SizeEquations.MetreMass, part, perMetre, density, outside.Meters, run.Tube.Bore.Meters);
        log.Add(SizeEquations.RunMass, part, value, perMetre, run.Length.Meters);
    }
}
