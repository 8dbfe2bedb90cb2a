using System.Collections.Immutable;
using FlowCalc.Discharge;
using FlowCalc.Findings;
using FlowCalc.Findings.Cures;
using FlowCalc.Flows;
using FlowCalc.Layouts;
using UnitsNet;
using UnitSystem = FlowCalc.Quantities.UnitSystem;

namespace FlowCalc.Studies.Comparing;

/// <summary>Answers several layouts and holds them against each other.</summary>
public static class Comparison
{
    /// <summary>Compares layouts.</summary>
    /// <param name="request">The layouts.</param>
    /// <param name="units">The system of units that messages are written in.</param>
    /// <param name="scheduler">Where cases of a discharge run beside the caller's thread.</param>
    /// <param name="cancellationToken">Asked throughout.</param>
    /// <returns>All answers, the nozzles side by side, and a ranking. A layout without a flow is the last of it and does not keep the others from theirs.</returns>
    /// <exception cref="OperationCanceledException">The token was cancelled.</exception>
    public static ComparisonResult Of(CompareRequest request, UnitSystem units, TaskScheduler scheduler, CancellationToken cancellationToken)
    {
        ArgumentNullException.ThrowIfNull(request);
        ImmutableArray<VariantResult> results = [.. request.Variants.Prepend(request.Base).Select(variant => Answer(variant, units, scheduler, cancellationToken))];
        return new ComparisonResult(results, Ranked(results, units), Nozzles(results));
    }

    static VariantResult Answer(Variant variant, UnitSystem units, TaskScheduler scheduler, CancellationToken cancel)
    {
        var layout = variant.Layout;
        var flow = SteadyFlow.Solve(layout, cancel);
        var flowJudgement = flow.Report.Converged ? FlowFindings.Judge(layout, flow, units, cancel) : null;
        var discharge = layout.Supply is BottleSupply ? LayoutDischarge.Solve(layout, scheduler, cancel) : null;
        var dischargeJudgement = discharge is null ? null : DischargeFindings.JudgeWithCures(layout, discharge, units, scheduler, cancel);
        return new VariantResult(variant, flow, flowJudgement, discharge, dischargeJudgement, Standings.Of(flow, flowJudgement, discharge, dischargeJudgement));
    }

    static ImmutableArray<RankedVariant> Ranked(ImmutableArray<VariantResult> results, UnitSystem units)
    {
        var order = Enumerable.Range(0, results.Length).ToArray();
        Array.Sort(order, (one, other) => Standings.Compare(results[one].Standing, results[other].Standing).Order is not 0 and var by ? by : one.CompareTo(other));
        return [.. order.Select((result, place) =>
        {
            if (place == 0) return new RankedVariant(result, StandingReason.Order, StandingWords.OfFirst(results[result], units));
            var before = results[order[place - 1]];
            var by = Standings.Compare(before.Standing, results[result].Standing).By;
            return new RankedVariant(result, by, StandingWords.Behind(results[result], before, by, units));
        })];
    }

    static ImmutableArray<ComparedNozzle> Nozzles(ImmutableArray<VariantResult> results)
    {
        var places = results.Select(PlacesById).ToArray();
        return [.. places.SelectMany(one => one.Ids).Distinct(StringComparer.Ordinal)
            .Select(id => new ComparedNozzle(id, [.. places.Select(one => one.Of.GetValueOrDefault(id))]))];
    }

    static (List<string> Ids, Dictionary<string, NozzlePlace> Of) PlacesById(VariantResult result)
    {
        List<string> ids = [];
        Dictionary<string, NozzlePlace> places = new(StringComparer.Ordinal);
        foreach (var nozzle in result.Flow.Nozzles)
        {
            var id = result.Variant.Layout.Points[nozzle.Point].Id;
            ids.Add(id);
            places.Add(id, new NozzlePlace(nozzle, result.Discharge is { } discharge ? Extremes(discharge, nozzle.Point) : null));
        }
        return (ids, places);
    }

    static NozzleExtremes? Extremes(DischargeResult discharge, int point)
    {
        var all = discharge.Cases.Where(one => one.Failure is null).Select(one => one.Nozzles.First(nozzle => nozzle.Point == point)).ToArray();
        return all.Length == 0 ? null : new NozzleExtremes(
            all.Select(nozzle => nozzle.Mass).MinBy(mass => mass.Kilograms),
            all.Select(nozzle => NozzleShares.Telling(nozzle.Deviation)).MaxBy(deviation => deviation is { } known ? Imbalance.Badness(known) : -1),
            Latest(all.Select(nozzle => nozzle.Arrival)),
            Latest(all.Select(nozzle => nozzle.Time95)));
    }

    // What never happens in one case has no latest time.
    static Duration? Latest(IEnumerable<Duration?> times)
    {
        Duration? latest = null;
        foreach (var time in times)
        {
            if (time is not { } known) return null;
            if (latest is not { } before || known > before) latest = known;
        }
        return latest;
    }
}
