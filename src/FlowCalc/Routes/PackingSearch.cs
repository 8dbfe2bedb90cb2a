using System.Collections.Immutable;

namespace FlowCalc.Routes;

/// <summary>Looks for the cheapest packing by trying every bin for every size, largest first, as far as a bound does not rule it out.</summary>
/// <remarks>Branch and bound. Bins with the same content are tried once, and equal sizes go into bins in rising order, so that no packing is looked at twice for its order alone.</remarks>
sealed class PackingSearch
{
    // The search goes as deep as there are sizes, and far fewer than this decide whether it can end.
    const int MostSizes = 200, MostForFullest = 2_000, StepsATube = 200_000;

    readonly PackingProblem problem;
    readonly CancellationToken cancellation;
    readonly long[] contents, behind;
    readonly int[] bins;
    readonly long least;
    int[]? best;
    int left;
    long bestCost;
    bool isOver;

    PackingSearch(PackingProblem problem, Packing known, long least, SearchEffort effort, CancellationToken cancellation)
    {
        (this.problem, this.cancellation, this.least, bestCost) = (problem, cancellation, least, known.Cost);
        (contents, bins, behind) = (new long[problem.Sizes.Length], new int[problem.Sizes.Length], new long[problem.Sizes.Length + 1]);
        left = Math.Min(effort.Left, StepsATube);
        for (var item = problem.Sizes.Length - 1; item >= 0; item--) behind[item] = behind[item + 1] + problem.Sizes[item];
    }

    /// <summary>The cheapest packing that was found, and what none can cost less than.</summary>
    /// <param name="problem">The sizes.</param>
    /// <param name="effort">What is left of the search's effort.</param>
    /// <param name="cancellation">Ends the search early.</param>
    public static (Packing Packing, long Least) Best(PackingProblem problem, SearchEffort effort, CancellationToken cancellation)
    {
        if (problem.Sizes.Length == 0) return (problem.Of([]), 0);
        var least = PackingBound.Of(problem, cancellation);
        Packing? best = null;
        foreach (var capacity in problem.Capacities.Reverse())
            if (problem.Sizes[0] <= capacity) Keep(ref best, FirstFit.Pack(problem, capacity));
        if (best!.Cost > least && effort.Left > 0 && problem.Sizes.Length <= MostForFullest) Keep(ref best, FullestBins.Pack(problem, effort, cancellation));
        if (best!.Cost == least || problem.Sizes.Length > MostSizes || effort.Left <= 0) return (best, least);

        var search = new PackingSearch(problem, best, least, effort, cancellation);
        var before = search.left;
        search.Place(0, 0, 0, 0);
        effort.Left -= before - search.left;
        if (search.best is { } bins) best = problem.Of(bins.Index().GroupBy(one => one.Item, one => one.Index).OrderBy(bin => bin.Key).Select(bin => bin.ToImmutableArray()));
        // A search that went to its end has proved that nothing is cheaper.
        return (best, search.isOver && best.Cost > least ? least : best.Cost);
    }

    static void Keep(ref Packing? best, Packing other)
    {
        if (best is null || other.Cost < best.Cost) best = other;
    }

    // Open bins hold what has been placed so far and cost the least that holds it.
    void Place(int item, int open, long cost, long room)
    {
        if (isOver) return;
        if (item == problem.Sizes.Length)
        {
            if (cost >= bestCost) return;
            (bestCost, best) = (cost, [.. bins]);
            isOver = bestCost <= least;
            return;
        }
        if (cost + Further(item, room) >= bestCost) return;

        var size = problem.Sizes[item];
        var first = item > 0 && problem.Sizes[item - 1] == size ? bins[item - 1] : 0;
        for (var bin = first; bin <= open && !isOver; bin++)
        {
            isOver = --left <= 0;
            if ((left & 0xFFFF) == 0) cancellation.ThrowIfCancellationRequested();
            var before = bin < open ? contents[bin] : 0;
            if (before + size > problem.Largest || IsTwin(bin, first, before, open)) continue;
            var (now, then) = (problem.Cost(before), problem.Cost(before + size));
            contents[bin] = before + size;
            bins[item] = bin;
            Place(item + 1, Math.Max(open, bin + 1), cost + then - now, room - Room(before) + Room(before + size));
            contents[bin] = before;
        }
    }

    long Room(long content) => content == 0 ? 0 : problem.Capacity(content) - content;

    // What is left over the room of the open bins costs at least its content; a longer bin costs as much more as it holds.
    long Further(int item, long room) => behind[item] <= room ? 0 : PackingBound.CostOf(problem, behind[item] - room);

    bool IsTwin(int bin, int first, long content, int open)
    {
        if (bin == open) return false;
        for (var other = first; other < bin; other++)
            if (contents[other] == content) return true;
        return false;
    }
}
