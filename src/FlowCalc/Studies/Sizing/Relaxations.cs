using System.Collections.Immutable;

namespace FlowCalc.Studies.Sizing;

/// <summary>Where nothing meets a wish: leaves each requirement out in turn, and tells how near to it the others let a choice come.</summary>
internal static class Relaxations
{
    // Each is a search of its own, with a part of the work.
    const int PartOfWork = 5;

    /// <summary>One entry a requirement of the wish.</summary>
    /// <param name="problem">The problem that has no answer.</param>
    /// <param name="cancellation">Asked throughout.</param>
    public static ImmutableArray<SizingRelaxation> Of(SizingProblem problem, CancellationToken cancellation)
    {
        var (wish, list) = (problem.Wish, ImmutableArray.CreateBuilder<SizingRelaxation>());
        if (wish.Deviation is not null)
            list.Add(Without(problem, wish with { Deviation = null }, SizingRequirement.Deviation, SizingObjective.BestBalance, choice => choice.Worst, cancellation));
        if (wish.HasTime)
            list.Add(Without(problem, wish with { Earliest = null, Latest = null }, SizingRequirement.Within, SizingObjective.ShortestTime, choice => choice.Times?.Most ?? double.NaN, cancellation));
        if (wish.LeastPressure is not null)
            list.Add(Without(problem, wish with { LeastPressure = null }, SizingRequirement.LeastPressure, SizingObjective.FewestChanges, LeastPressure, cancellation));
        return list.ToImmutable();
    }

    static SizingRelaxation Without(
        SizingProblem problem, SizingWish wish, SizingRequirement requirement, SizingObjective objective, Func<SizedChoice, double> measure, CancellationToken cancellation)
    {
        var search = SizingSearch.Of(problem with { Wish = wish, Objective = objective, Work = Math.Max(1, problem.Work / PartOfWork) }, cancellation);
        search.Run();
        if (search.Finds.Best is not { } best) return new(requirement, null, double.NaN);
        var choice = SizingResults.Of(search, best, isWhole: true, cancellation);
        return new(requirement, choice, measure(choice));
    }

    static double LeastPressure(SizedChoice choice) => choice.Flow.Nozzles.Min(nozzle => nozzle.Pressure.Pascals);
}
