namespace FlowCalc.Studies.Sizing;

/// <summary>
/// The exact search for the smallest deviation. A deviation, first a small one, is taken as the limit: then every flow is known within narrow bounds, and all choices within
/// it are gone through. The limit doubles until one is found, or until it reaches what is wished or has been found already.
/// </summary>
/// <param name="model">The choices.</param>
/// <param name="table">The same in solve order.</param>
/// <param name="finds">Where what meets the wish is kept.</param>
/// <param name="cancellation">Stops the search.</param>
internal sealed class BalanceLadder(SizingModel model, ChoiceTable table, Finds finds, CancellationToken cancellation)
{
    const double First = 0.004;

    // A narrow slice leaves fewer choices to solve, by a power that grows with the number of nozzles, but each takes work of its own: of few choices wide ones are quicker.
    const double NarrowSlice = 0.003, WideSlice = 0.012, FewChoices = 1e5;
    const double FirstSlice = 1.1;

    readonly double narrowest = model.Choices < FewChoices ? WideSlice : NarrowSlice;

    /// <summary>Searches.</summary>
    /// <returns>A deviation that no choice that meets the wish is below, and whether the best found is proven to be the least, or that there is none.</returns>
    public (double Bound, bool IsProven) Run()
    {
        var wanted = table.Network.Nozzles.Select(node => table.Wanted[node]).Where(share => share > 0).ToArray();
        // Where every share is within its box whatever it is, there is no larger deviation.
        var most = model.Wish.Deviation ?? (wanted.Length == 0 ? 0 : Math.Max(1, 1 / wanted.Min() - 1));
        var search = new SliceSearch(model, table, () => double.MaxValue, finds, cancellation);
        var floor = 0.0;
        for (var limit = First; ; limit *= 2)
        {
            var step = Math.Min(limit, Math.Min(most, finds.Best?.Worst ?? double.PositiveInfinity));
            foreach (var total in SliceList.Of(table, FirstSlice))
                if (!Search(search, total, step)) return (floor, false);
            if (finds.Best is { } best && best.Worst <= step * (1 + 1e-9)) return (best.Worst, true);
            if (step >= most) return (finds.Best?.Worst ?? double.PositiveInfinity, true);
            floor = step;
        }
    }

    // A slice in which something may be is halved until it is narrow enough to be gone through.
    bool Search(SliceSearch search, Span total, double step)
    {
        cancellation.ThrowIfCancellationRequested();
        if (!finds.Times.MayBeWithin(total))
        {
            finds.LeaveUntimed(0);
            return true;
        }
        var deviation = Math.Min(step, finds.Best?.Worst ?? double.PositiveInfinity);
        if (ShareBoxes.Of(table.Network, table.Wanted, deviation) is not { } shares) return true;
        finds.Flows.Work += table.WorkOfSlice;
        if (finds.IsSpent) return false;
        var slice = FlowSlice.Of(table, total, shares, cancellation);
        var bounds = new SubtreeBounds(table, slice);
        if (!double.IsFinite(bounds.Least)) return true;
        // The slice that goes down to nothing has no narrower ones that would be of use.
        if (total.Low <= 0 || total.High / total.Low <= 1 + Math.Clamp(step, narrowest, FirstSlice - 1)) return search.Run(slice, bounds);
        var middle = Math.Sqrt(total.Low * total.High);
        return Search(search, new(middle, total.High), step) && Search(search, new(total.Low, middle), step);
    }
}
