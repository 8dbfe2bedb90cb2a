namespace FlowCalc.Routes;

/// <summary>What no packing can cost less than.</summary>
/// <remarks>
/// By content: every unit of cost holds at most the capacity over the cost of the smallest bin. By large sizes: sizes over half the largest capacity have a bin each, as do others that
/// do not go with them (S. Martello and P. Toth, Knapsack Problems, Wiley 1990, section 8.3, bound L2; from memory). Costs are multiples of what divides every bin's.
/// </remarks>
static class PackingBound
{
    /// <summary>The bound.</summary>
    /// <param name="problem">The sizes.</param>
    /// <param name="cancellation">Ends it early.</param>
    public static long Of(PackingProblem problem, CancellationToken cancellation) => Terms(problem, cancellation).Least;

    /// <summary>The bound and what it is the largest of.</summary>
    /// <param name="problem">The sizes.</param>
    /// <param name="cancellation">Ends it early.</param>
    public static PackingBoundTerms Terms(PackingProblem problem, CancellationToken cancellation)
    {
        if (problem.Sizes.Length == 0) return default;
        long content = 0;
        foreach (var size in problem.Sizes) content += size;
        var smallest = problem.Capacities[0];
        var byContent = CostOf(problem, content);
        var bins = LeastBins(problem, cancellation);
        // Sizes over half have a bin each, and none of them a cheaper one than it would have alone.
        long large = 0;
        foreach (var size in problem.Sizes.TakeWhile(size => size > problem.Largest / 2.0)) large += problem.Cost(size);
        return new(content, byContent, large, bins.Bins, bins.Half, bins.Shorter, bins.Room, Math.Max(Math.Max(byContent, large), bins.Bins * (smallest - problem.Kerf)));
    }

    /// <summary>Least cost of a content, whatever its sizes, to the next multiple that bins can cost.</summary>
    public static long CostOf(PackingProblem problem, long content)
    {
        var smallest = problem.Capacities[0];
        // The smallest bin holds the most for its cost, as every bin has one kerf besides.
        var cost = (long)(((Int128)content * (smallest - problem.Kerf) + smallest - 1) / smallest);
        return (cost + problem.Grain - 1) / problem.Grain * problem.Grain;
    }

    // Least number of bins of the largest capacity; with one capacity the cost follows from it.
    static (long Bins, long Half, long Shorter, long Room) LeastBins(PackingProblem problem, CancellationToken cancellation)
    {
        var sizes = problem.Sizes;
        var capacity = problem.Largest;
        var sums = new long[sizes.Length + 1];
        for (var item = 0; item < sizes.Length; item++) sums[item + 1] = sums[item] + sizes[item];
        var half = CountOver(sizes, capacity / 2.0);
        var best = Ceiling(sums[^1], capacity) > half ? (Bins: Ceiling(sums[^1], capacity), Half: 0L, Shorter: sums[^1], Room: 0L) : (half, half, 0, 0);
        // For each small size k: sizes over capacity − k stand alone; those between half and that have room for what is k or more and at most half.
        for (var item = sizes.Length - 1; item >= half; item--)
        {
            if ((item & 0xFFF) == 0) cancellation.ThrowIfCancellationRequested();
            var small = sizes[item];
            var alone = CountOver(sizes, capacity - small);
            var rest = sums[item + 1] - sums[half];
            var room = (long)(half - alone) * capacity - (sums[half] - sums[alone]);
            if (half + Math.Max(0, Ceiling(rest - room, capacity)) is var bins && bins > best.Bins) best = (bins, half, rest, room);
        }
        return best;
    }

    // Sizes fall, so those over a bound come first.
    static int CountOver(long[] sizes, double bound)
    {
        var (low, high) = (0, sizes.Length);
        while (low < high)
        {
            var middle = (low + high) / 2;
            if (sizes[middle] > bound) low = middle + 1;
            else high = middle;
        }
        return low;
    }

    static long Ceiling(long value, long by) => value <= 0 ? 0 : (value + by - 1) / by;
}
