using FlowCalc.Losses;

namespace FlowCalc.Studies.Sizing;

/// <summary>Cuts all flows that a layout can have in any choice into narrow ranges.</summary>
internal static class SliceList
{
    // The last range goes from this part of the greatest flow down to nothing.
    const double Least = 1e-3;

    // A leg of a tee may gain a little over 2 % of the velocity head that comes in, and no more than the pressure there.
    const double GainOfTee = 1.03;

    /// <summary>How much wider than wished the ranges have to be for so many of them.</summary>
    /// <param name="ratio">High over low end that is wished.</param>
    /// <param name="most">Most ranges, 1 or more.</param>
    public static double Ratio(double ratio, int most) => Math.Max(ratio, Math.Pow(1 / Least, 1.0 / most));

    /// <summary>The ranges, from the greatest flow downwards.</summary>
    /// <param name="table">The choices.</param>
    /// <param name="ratio">High over low end of each, over 1.</param>
    public static List<Span> Of(ChoiceTable table, double ratio)
    {
        var most = Most(table);
        var list = new List<Span>();
        var high = most;
        for (; high > most * Least; high /= ratio) list.Add(new(high / ratio, high));
        list.Add(new(0, high));
        return list;
    }

    /// <summary>A flow that no choice exceeds, kg/s.</summary>
    public static double Most(ChoiceTable table) => Most(table, table.Reservoir, table.Density);

    /// <summary>The same at another pressure and density.</summary>
    /// <param name="table">The choices.</param>
    /// <param name="reservoir">Gauge pressure of the reservoir, Pa.</param>
    /// <param name="density">Density, kg/m³.</param>
    public static double Most(ChoiceTable table, double reservoir, double density)
    {
        var network = table.Network;
        var pressures = new double[network.Count];
        pressures[0] = Math.Max(reservoir, 0);
        var flow = 0.0;
        for (var node = 1; node < pressures.Length; node++)
        {
            var above = pressures[network.Parent[node]] * (table.Leg[node] is null ? 1 : GainOfTee);
            pressures[node] = above + Math.Max(0, -network.Rise[node] * density * HydrostaticRise.StandardGravity);
        }
        foreach (var node in network.Nozzles) flow += table.Area[node].Max() * Math.Sqrt(2 * density * pressures[node]);
        return flow;
    }
}
