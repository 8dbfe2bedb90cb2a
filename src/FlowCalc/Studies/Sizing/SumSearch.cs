namespace FlowCalc.Studies.Sizing;

/// <summary>
/// The exact search for the least sum of changes, cost or mass. Every slice of the whole flow has a sum below which it holds nothing; the limit rises from the lowest of these step by
/// step, and all below it is gone through, until a choice that meets the wish is found below the limit or nothing is left.
/// </summary>
/// <param name="model">The choices.</param>
/// <param name="table">The same in solve order.</param>
/// <param name="finds">Where what meets the wish is kept.</param>
/// <param name="cancellation">Stops the search.</param>
internal sealed class SumSearch(SizingModel model, ChoiceTable table, Finds finds, CancellationToken cancellation)
{
    const double Step = 0.04;
    const double Rounding = 1e-9;

    // Part of the work for the first bounds; slices are the wider for it where each takes long.
    const int PartForBounds = 5, LeastSlices = 12;

    double limit;

    /// <summary>Searches.</summary>
    /// <returns>A sum that no choice that meets the wish is below, and whether the best found is proven to be the least, or that there is none.</returns>
    public (double Bound, bool IsProven) Run()
    {
        if (ShareBoxes.Of(table.Network, table.Wanted, model.Wish.Deviation) is not { } shares) return (double.PositiveInfinity, true);
        var slices = Bounded(shares);
        if (finds.IsSpent) return (0, false);
        if (slices.Count == 0) return (double.PositiveInfinity, true);
        var search = new SliceSearch(model, table, () => Math.Min(limit, finds.Limit), finds, cancellation);
        var floor = slices[0].Least;
        while (floor <= finds.Limit)
        {
            limit = floor + Math.Max(Rounding * Math.Max(1, floor), model.Objective == SizingObjective.FewestChanges ? 0 : Step * floor);
            var next = double.PositiveInfinity;
            foreach (var (total, least) in slices)
            {
                if (least > Math.Min(limit, finds.Limit))
                {
                    next = Math.Min(next, least);
                    continue;
                }
                if (!finds.Times.MayBeWithin(total))
                {
                    finds.LeaveUntimed(least);
                    continue;
                }
                finds.Flows.Work += table.WorkOfSlice;
                var slice = FlowSlice.Of(table, total, shares, cancellation);
                if (!search.Run(slice, new(table, slice))) return (floor, false);
                next = Math.Min(next, search.LeftAside);
            }
            floor = next;
        }
        return (finds.Best?.Sum ?? double.PositiveInfinity, true);
    }

    List<(Span Total, double Least)> Bounded(Span[] shares)
    {
        var ratio = SliceList.Ratio(1 + Math.Clamp((model.Wish.Deviation ?? 1) / 2, 0.01, 0.05), Math.Max(LeastSlices, finds.RoomFor(table.WorkOfSlice, PartForBounds)));
        var bounded = new List<(Span, double)>();
        foreach (var total in SliceList.Of(table, ratio))
        {
            cancellation.ThrowIfCancellationRequested();
            finds.Flows.Work += table.WorkOfSlice;
            if (finds.IsSpent) break;
            var slice = FlowSlice.Of(table, total, shares, cancellation);
            var least = new SubtreeBounds(table, slice).Least;
            if (double.IsFinite(least)) bounded.Add((total, least));
        }
        // The most promising first, and of those the greatest flow.
        return [.. bounded.OrderBy(slice => slice.Item2)];
    }
}
