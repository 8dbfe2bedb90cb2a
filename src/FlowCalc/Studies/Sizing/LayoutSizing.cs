using FlowCalc.Layouts;

namespace FlowCalc.Studies.Sizing;

/// <summary>Chooses tubes of runs and sizes of nozzles from a stock, so that a wish is met and an objective is best.</summary>
public static class LayoutSizing
{
    /// <summary>Searches.</summary>
    /// <param name="problem">What may be chosen, and what is wished.</param>
    /// <param name="cancellationToken">Asked throughout.</param>
    /// <returns>The best choice found, and what is proven of it.</returns>
    /// <exception cref="ArgumentException">The objective needs a price that a tube has not, a time is asked of a supply that is no bottle, or a group holds nothing, both kinds, or what another group holds.</exception>
    /// <exception cref="OperationCanceledException">The token was cancelled.</exception>
    public static SizingResult Solve(SizingProblem problem, CancellationToken cancellationToken = default) => Solve(problem, TaskScheduler.Default, cancellationToken);

    /// <summary>Searches, with the cases of discharges side by side as far as a scheduler has places.</summary>
    /// <param name="problem">What may be chosen, and what is wished.</param>
    /// <param name="scheduler">Where cases run beside the caller's thread; the answer is the same wherever they do.</param>
    /// <param name="cancellationToken">Asked throughout.</param>
    /// <returns>As without a scheduler.</returns>
    /// <exception cref="ArgumentException">The objective needs a price that a tube has not, a time is asked of a supply that is no bottle, or a group holds nothing, both kinds, or what another group holds.</exception>
    /// <exception cref="OperationCanceledException">The token was cancelled.</exception>
    public static SizingResult Solve(SizingProblem problem, TaskScheduler scheduler, CancellationToken cancellationToken)
    {
        ArgumentNullException.ThrowIfNull(problem);
        ArgumentOutOfRangeException.ThrowIfLessThan(problem.Work, 1);
        if ((problem.Wish.HasTime || problem.Objective == SizingObjective.ShortestTime) && problem.Layout.Supply is not BottleSupply)
            throw new ArgumentException("A time needs a bottle; a supply held at a pressure has no end.", nameof(problem));
        var isPriced = problem.Tubes.All(tube => problem.Objective switch
        {
            SizingObjective.LeastCost => tube.CostPerMetre is not null,
            SizingObjective.LeastMass => tube.MassPerMetre is not null,
            _ => true,
        });
        if (!isPriced) throw new ArgumentException("The objective counts every tube of the stock, and one has no cost or mass.", nameof(problem));

        if (problem.Groups.Any(group => group.Runs.IsEmpty == group.Nozzles.IsEmpty)
            || HasTwice(problem.Groups.SelectMany(group => group.Runs)) || HasTwice(problem.Groups.SelectMany(group => group.Nozzles)))
            throw new ArgumentException("A group holds runs or nozzles, and no two groups the same.", nameof(problem));

        var search = SizingSearch.Of(problem, scheduler, cancellationToken);
        search.Run();
        return SizingResults.Of(problem, search, scheduler, cancellationToken);
    }

    static bool HasTwice(IEnumerable<int> places)
    {
        var seen = new HashSet<int>();
        return !places.All(seen.Add);
    }
}
