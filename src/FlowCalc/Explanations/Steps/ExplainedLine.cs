using FlowCalc.Layouts;
using FlowCalc.Networks;

namespace FlowCalc.Explanations;

/// <summary>A solved line as its losses are explained.</summary>
/// <param name="Layout">The layout.</param>
/// <param name="Compiled">The line as it was solved.</param>
/// <param name="Flow">Mass flow of each run, kg/s, in solve order.</param>
/// <param name="Density">Density of a liquid, or the reference density of a gas, kg/m³.</param>
/// <param name="Viscosity">Dynamic viscosity in a run, Pa·s.</param>
/// <param name="IsThrottled">Whether a regulator throttles, so that the outlet has no other loss.</param>
internal sealed record ExplainedLine(Layout Layout, LayoutNetwork Compiled, double[] Flow, double Density, Func<int, double> Viscosity, bool IsThrottled)
{
    /// <summary>The network.</summary>
    public Network Network => Compiled.Network;

    /// <summary>The run of the layout that feeds a point.</summary>
    /// <param name="node">The point in solve order, over 0.</param>
    public Run Run(int node) => Layout.Runs[Compiled.Runs[node]];

    /// <summary>The point of the layout.</summary>
    /// <param name="node">The point in solve order.</param>
    public LayoutPoint Point(int node) => Layout.Points[Compiled.Points[node]];

    /// <summary>Bore of the tube that feeds a point; of the supply point that of the first run, m.</summary>
    /// <param name="node">The point in solve order.</param>
    /// <param name="first">Bore of the run that leaves it, m.</param>
    public double FeedBore(int node, double first) => node == 0 ? first : Run(node).Tube.Bore.Meters;
}
