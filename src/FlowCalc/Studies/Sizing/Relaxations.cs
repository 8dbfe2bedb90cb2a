using System.Collections.Immutable;

namespace FlowCalc.Studies.Sizing;

/// <summary>Where nothing meets a wish: leaves each requirement out in turn, and tells how near to it the others let a choice come.</summary>
internal static class Relaxations
{
    // Each is a search of its own, with a part of the work.
    const int PartOfWork = 5;

    /// <summary>One entry a requirement of the wish.</summary>
    /// <param name="problem">The problem that has no answer.</param>
    /// <param name="scheduler">Where cases of a discharge run beside the caller's thread.</param>
    /// <param name="cancellation">Asked throughout.</param>
    public static ImmutableArray<SizingRelaxation> Of(SizingProblem problem, TaskScheduler scheduler, CancellationToken cancellation)
    {
        var (wish, list) = (problem.Wish, ImmutableArray.CreateBuilder<SizingRelaxation>());
        if (wish.Deviation is not null)
            list.Add(Without(problem, wish with { Deviation = null }, SizingRequirement.Deviation, SizingObjective.BestBalance, choice => choice.Worst, scheduler, cancellation));
        if (wish.HasTime)
            list.Add(Without(problem, wish with { Earliest = null, Latest = null }, SizingRequirement.Within, SizingObjective.ShortestTime, choice => choice.Times?.Most ?? double.NaN, scheduler, cancellation));
        if (wish.LeastPressure is not null) list.Add(WithLess(problem, scheduler, cancellation));
        return list.ToImmutable();
    }

    static SizingRelaxation Without(
        SizingProblem problem, SizingWish wish, SizingRequirement requirement, SizingObjective objective, Func<SizedChoice, double> measure, TaskScheduler scheduler, CancellationToken cancellation)
    {
        var search = SizingSearch.Of(problem with { Wish = wish, Objective = objective, Work = Math.Max(1, problem.Work / PartOfWork) }, scheduler, cancellation);
        search.Run();
        if (search.Finds.Best is not { } best) return new(requirement, null, double.NaN);
        var choice = SizingResults.Of(search, best, isWhole: true, cancellation);
        return new(requirement, choice, measure(choice));
    }

    // The pressure is lowered a tenth at a time.
    static SizingRelaxation WithLess(SizingProblem problem, TaskScheduler scheduler, CancellationToken cancellation)
    {
        var (ambient, most) = (problem.Layout.AmbientPressure, problem.Wish.LeastPressure!.Value);
        // Where nothing is found without it there is no use in lowering it.
        var found = At(0);
        for (var tenths = 9; tenths > 0 && found.Choice is not null; tenths--)
            if (At(tenths) is { Choice: not null } better) return better;
        return found;

        SizingRelaxation At(int tenths) => Without(
            problem, problem.Wish with { LeastPressure = tenths == 0 ? null : ambient + tenths / 10.0 * (most - ambient) }, SizingRequirement.LeastPressure, SizingObjective.FewestChanges,
            choice => choice.Flow.Nozzles.Min(nozzle => nozzle.Pressure.Pascals), scheduler, cancellation);
    }
}
