using FlowCalc.Quantities;
using FlowCalc.Studies.Comparing;

namespace FlowCalc.Explanations;

/// <summary>Explains a comparison: the flow of each layout, each nozzle's differences from the base, and the ranking.</summary>
public static class CompareExplainer
{
    const string Discharges = "The discharge of each layout: POST /v1/discharge?explain=true explains it. Masses and times that stand in differences here are those of the answer's discharges.";
    const string Places = "How many places fail or are warned of: they are counted in the findings of the answer.";

    static readonly SymbolUnit Mass = SymbolUnit.Of(QuantityKind.Mass), Flow = SymbolUnit.Of(QuantityKind.MassFlow), Time = SymbolUnit.Of(QuantityKind.Time);

    /// <summary>How many points there are to explain: those of all layouts together.</summary>
    /// <param name="request">The layouts.</param>
    public static long Points(CompareRequest request)
    {
        ArgumentNullException.ThrowIfNull(request);
        return request.Base.Layout.Points.Length + request.Variants.Sum(variant => (long)variant.Layout.Points.Length);
    }

    /// <summary>The explanation of a comparison.</summary>
    /// <param name="result">The comparison.</param>
    /// <param name="cancellationToken">Asked at every run of every layout.</param>
    /// <exception cref="OperationCanceledException">The token was cancelled.</exception>
    public static StudyExplanation Of(ComparisonResult result, CancellationToken cancellationToken = default)
    {
        ArgumentNullException.ThrowIfNull(result);
        var study = new StudyExplainer();
        foreach (var one in result.Results) study.Add(one.Variant.Name, one.Variant.Layout, one.Flow, cancellationToken);
        foreach (var nozzle in result.Nozzles)
        {
            if (nozzle.Places[0] is not { } before) continue;
            study.Log.At(ExplainedPlace.Point, nozzle.Id);
            for (var at = 1; at < result.Results.Length; at++)
                if (nozzle.Places[at] is { } place) Differences(study.Log, result.Results[at].Variant.Name, place, before);
        }
        Ranking(study.Log, result);
        return study.Whole(Discharges, Places);
    }

    static void Differences(StepLog log, string name, NozzlePlace one, NozzlePlace before)
    {
        var difference = NozzleDifference.Of(one, before);
        log.Add(CompareEquations.PressureDifference, $"{name}: pressure", difference.Pressure.Pascals, one.Flow.Pressure.Pascals, before.Flow.Pressure.Pascals);
        Told(log, CompareEquations.Ratio, $"{name}: massFlow", Flow, difference.MassFlow, one.Flow.MassFlow.KilogramsPerSecond, before.Flow.MassFlow.KilogramsPerSecond);
        Told(log, CompareEquations.Difference, $"{name}: share", SymbolUnit.Plain, difference.Share, one.Flow.Share, before.Flow.Share);
        if (one.Discharge is not { } mine || before.Discharge is not { } others) return;
        Told(log, CompareEquations.Ratio, $"{name}: leastMass", Mass, difference.LeastMass, mine.LeastMass.Kilograms, others.LeastMass.Kilograms);
        Told(log, CompareEquations.Difference, $"{name}: latestArrival", Time, difference.LatestArrival?.Seconds, mine.LatestArrival?.Seconds, others.LatestArrival?.Seconds);
        Told(log, CompareEquations.Difference, $"{name}: latestTime95", Time, difference.LatestTime95?.Seconds, mine.LatestTime95?.Seconds, others.LatestTime95?.Seconds);
    }

    // What the answer leaves open has no step.
    static void Told(StepLog log, Equation equation, string part, SymbolUnit unit, double? result, double? one, double? before)
    {
        if (result is not { } known) return;
        log.FigureUnit = unit;
        log.Add(equation, part, known, one!.Value, before!.Value);
    }

    static void Ranking(StepLog log, ComparisonResult result)
    {
        Standing? last = null;
        foreach (var ranked in result.Ranking)
        {
            var one = result.Results[ranked.Result];
            log.At(ExplainedPlace.Layout, one.Variant.Name);
            var measures = Standings.Measures(one.Standing);
            if (one.Standing.WorstDeviation is > -1 and { } deviation)
                log.Add(deviation >= 0 ? CompareEquations.BadnessOver : CompareEquations.BadnessUnder, "worst nozzle", measures.First(measure => measure.By == StandingReason.Deviation).Value, deviation);
            foreach (var measure in measures.Where(measure => measure.Same > 0 && double.IsFinite(measure.Value)))
            {
                log.FigureUnit = measure.By == StandingReason.Time ? Time : SymbolUnit.Plain;
                log.Add(CompareEquations.RankSteps, measure.By == StandingReason.Time ? "slowest case" : "badness", measure.Steps, measure.Value, measure.Same);
            }
            if (last is not null && Standings.Deciding(last, one.Standing) is var (before, mine) && double.IsFinite(mine.Steps) && double.IsFinite(before.Steps))
                log.Add(CompareEquations.Behind, ranked.Reason, mine.Steps - before.Steps, mine.Steps, before.Steps);
            last = one.Standing;
        }
    }
}
