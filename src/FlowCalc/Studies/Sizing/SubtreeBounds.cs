namespace FlowCalc.Studies.Sizing;

/// <summary>
/// The least that the objective can add up to behind each run within a slice of the whole flow, by pressure: from the leaves to the root, every run
/// takes its best choice by itself. Choices that cannot be are never taken, so that an infinite sum proves that there is none.
/// </summary>
internal sealed class SubtreeBounds
{
    const int Bins = 40;

    readonly ChoiceTable table;
    readonly FlowSlice slice;
    readonly double[][] end, start;
    readonly double step;

    /// <summary>Works out the bounds of a slice.</summary>
    /// <param name="table">The choices.</param>
    /// <param name="slice">The slice.</param>
    public SubtreeBounds(ChoiceTable table, FlowSlice slice)
    {
        (this.table, this.slice) = (table, slice);
        var count = table.Network.Count;
        (end, start) = (new double[count][], new double[count][]);
        // The first bin holds all below the surroundings, the last all above the reservoir.
        step = Math.Max(table.Reservoir, 1) / (Bins - 2);
        for (var node = 0; node < count; node++) end[node] = new double[table.Choices[node] * Bins];
        for (var node = count - 1; node > 0; node--)
        {
            if (table.Area[node] is not null) FillNozzle(node);
            FillStart(node);
            var (above, own) = (table.Network.Parent[node], end[table.Network.Parent[node]]);
            for (var at = 0; at < own.Length; at++) own[at] += start[node][at];
        }
        Least = End(0, 0, slice.Supply);
    }

    /// <summary>The least sum of the whole; infinite where no choice has a flow in the slice that meets the wish.</summary>
    public double Least { get; }

    /// <summary>The least sum behind a node and of its nozzle, for a choice of the run to it and a range of its pressure.</summary>
    public double End(int node, int choice, Span pressure) => LeastOf(end[node].AsSpan(choice * Bins, Bins), pressure);

    /// <summary>The least sum of the run to a node and all behind it, for a choice of the run before and a range of the pressure there.</summary>
    public double Start(int node, int inlet, Span pressure) => LeastOf(start[node].AsSpan(inlet * Bins, Bins), pressure);

    void FillNozzle(int node)
    {
        var (spans, sums) = (slice.NozzlePressures[node], table.NozzleSum[node]);
        for (var bin = 0; bin < Bins; bin++)
        {
            var least = double.PositiveInfinity;
            for (var choice = 0; choice < spans.Length; choice++)
                if (!spans[choice].And(Of(bin)).IsEmpty) least = Math.Min(least, sums[choice]);
            for (var run = 0; run < table.Choices[node]; run++) end[node][run * Bins + bin] = least;
        }
    }

    void FillStart(int node)
    {
        var (own, inlets) = (table.Choices[node], table.Choices[table.Network.Parent[node]]);
        start[node] = new double[inlets * Bins];
        for (var inlet = 0; inlet < inlets; inlet++)
            for (var bin = 0; bin < Bins; bin++)
            {
                var least = double.PositiveInfinity;
                for (var choice = 0; choice < own; choice++)
                    least = Math.Min(least, table.Sum[node][choice] + End(node, choice, Of(bin) - slice.Losses[node][inlet * own + choice]));
                start[node][inlet * Bins + bin] = least;
            }
    }

    static double LeastOf(ReadOnlySpan<double> bins, int from, int to)
    {
        var least = double.PositiveInfinity;
        for (var bin = from; bin <= to; bin++) least = Math.Min(least, bins[bin]);
        return least;
    }

    double LeastOf(ReadOnlySpan<double> bins, Span pressure) =>
        pressure.IsEmpty ? double.PositiveInfinity : LeastOf(bins, Bin(pressure.Low), Bin(pressure.High));

    int Bin(double pressure) => pressure <= 0 ? 0 : (int)Math.Min(Bins - 1, 1 + pressure / step);

    Span Of(int bin) => new(bin == 0 ? double.NegativeInfinity : (bin - 1) * step, bin == Bins - 1 ? double.PositiveInfinity : bin * step);
}
