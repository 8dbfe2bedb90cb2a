using FlowCalc.Networks;

namespace FlowCalc.Layouts;

/// <summary>A layout compiled for the solver, with the way back from the solver's order to the document's.</summary>
/// <param name="Network">The tree in solve order. Its run 0 is the outlet of the supply.</param>
/// <param name="Points">Index in <see cref="Layout.Points"/> of each point in solve order.</param>
/// <param name="Runs">Index in <see cref="Layout.Runs"/> of the run that feeds each point in solve order; −1 for the outlet.</param>
/// <param name="FittingConstants">Part of <see cref="Network.Constant"/> that is fittings and extra coefficients, 1/m⁴, in solve order.</param>
/// <param name="BoreChangeConstants">Part of <see cref="Network.Constant"/> that is steps in bore, 1/m⁴, in solve order.</param>
internal sealed record LayoutNetwork(Network Network, int[] Points, int[] Runs, double[] FittingConstants, double[] BoreChangeConstants)
{
    /// <summary>Area of each run's bore, m², in solve order; of all outlets together.</summary>
    /// <param name="layout">The layout.</param>
    /// <param name="outlet">The outlet of the supply.</param>
    public double[] Areas(Layout layout, in RunGeometry outlet)
    {
        var areas = new double[Network.Count];
        areas[0] = outlet.Parallel * Disc(outlet.Bore);
        for (var j = 1; j < areas.Length; j++) areas[j] = Disc(layout.Runs[Runs[j]].Tube.Bore.Meters);
        return areas;
    }

    static double Disc(double diameter) => Math.PI / 4 * diameter * diameter;
}
