using FlowCalc.Networks;

namespace FlowCalc.Studies.Sizing;

/// <summary>The share of the whole flow that passes each run where no nozzle is further off its wanted share than a deviation.</summary>
internal static class ShareBoxes
{
    // What arithmetic may have moved.
    const double Slack = 1e-9;

    /// <summary>The shares of each run in solve order; null where they cannot add up to one.</summary>
    /// <param name="network">The tree.</param>
    /// <param name="wanted">Wanted share of the nozzle at each point in solve order; 0 where none is wanted of it, NaN where there is no nozzle.</param>
    /// <param name="deviation">Largest deviation as a part of the wanted share; null for any.</param>
    public static Span[]? Of(Network network, double[] wanted, double? deviation)
    {
        var boxes = new Span[network.Count];
        double low = 0, high = 0;
        foreach (var node in network.Nozzles)
        {
            var box = Nozzle(wanted[node], deviation);
            (low, high) = (low + box.Low, high + box.High);
        }
        if (low > 1 + Slack || high < 1 - Slack) return null;
        // All shares together are one, so that what the others leave is a bound as well.
        foreach (var node in network.Nozzles)
        {
            var box = Nozzle(wanted[node], deviation);
            boxes[node] = new(Math.Max(box.Low, 1 - (high - box.High) - Slack), Math.Min(box.High, 1 - (low - box.Low) + Slack));
        }
        var (sumLow, sumHigh) = (0.0, 0.0);
        foreach (var node in network.Nozzles) (sumLow, sumHigh) = (sumLow + boxes[node].Low, sumHigh + boxes[node].High);
        for (var node = network.Count - 1; node > 0; node--) boxes[network.Parent[node]] += boxes[node];
        for (var node = 0; node < boxes.Length; node++)
            boxes[node] = new(
                Math.Max(0, Math.Max(boxes[node].Low, 1 - (sumHigh - boxes[node].High) - Slack)),
                Math.Min(1, Math.Min(boxes[node].High, 1 - (sumLow - boxes[node].Low) + Slack)));
        return boxes;
    }

    static Span Nozzle(double wanted, double? deviation) =>
        deviation is { } most && wanted > 0 ? new(Math.Max(0, wanted * (1 - most) - Slack), Math.Min(1, wanted * (1 + most) + Slack)) : new(0, 1);
}
