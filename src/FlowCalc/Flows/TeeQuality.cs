using System.Collections.Immutable;
using FlowCalc.Agents;
using FlowCalc.Layouts;

namespace FlowCalc.Flows;

/// <summary>What tees may do to the shares of an agent that boils: the side branch may take less vapour than its part, or more.</summary>
/// <remarks>
/// The answer itself divides liquid and vapour alike. Measured splits of air and water differ by side and geometry and reach far in both directions; a part of 0.7 and of 1.4 of the even one at every
/// tee is a common assumption for dispersed flow, no source. A leg's flow then changes as the square root of its density.
/// </remarks>
internal static class TeeQuality
{
    const double Least = 0.7;
    const double Most = 1.4;

    /// <summary>What is varied, in words.</summary>
    public const string Words = "side branches of tees that take 0.7 and 1.4 times their part of the vapour";

    /// <summary>Factors by which the share of each nozzle may change, in the document's order; empty where no tee divides liquid and vapour.</summary>
    /// <param name="layout">The layout.</param>
    /// <param name="solved">Its flow.</param>
    public static ImmutableArray<ShareBand> Of(Layout layout, SolvedExpanding solved)
    {
        if (layout.Agent is not ExpandingAgent { Kind: not AgentKind.InertGas } agent || solved.Table.ReferenceDensity < agent.Fluid.CriticalDensity) return [];
        var (dry, wet) = (Factors(layout, solved, Least), Factors(layout, solved, Most));
        if (dry is null || wet is null) return [];
        var network = solved.Line.Network;
        return [.. network.Nozzles.OrderBy(run => solved.Line.Points[run]).Select(run =>
            new ShareBand(Math.Min(1, Math.Min(dry[run], wet[run])), Math.Max(1, Math.Max(dry[run], wet[run]))))];
    }

    // By run the product of what every tee before it does; null where there is no such tee.
    static double[]? Factors(Layout layout, SolvedExpanding solved, double part)
    {
        var (line, state, table) = solved;
        var (network, flow) = (line.Network, state.Steady.Flow);
        var factors = new double[network.Count];
        Array.Fill(factors, 1);
        var isAny = false;
        var legs = new int[network.Count];
        Array.Fill(legs, -1);
        for (var j = 1; j < network.Count; j++)
        {
            var parent = network.Parent[j];
            if (layout.Points[line.Points[parent]] is not Tee tee) continue;
            if (legs[parent] < 0)
            {
                legs[parent] = j;
                continue;
            }
            var isSideFirst = tee.FedThrough == TeePort.Branch || layout.Runs[line.Runs[legs[parent]]].Leaves == TeePort.Branch;
            var (side, other) = isSideFirst ? (legs[parent], j) : (j, legs[parent]);
            if (!(flow[side] > 0 && flow[other] > 0)) continue;
            (factors[side], factors[other]) = Split(1 / table.ReferenceDensity, 1 / table.At(state.Log[parent]).Density, flow[side] / (flow[side] + flow[other]), part);
            isAny |= factors[side] != 1;
        }
        if (!isAny) return null;
        // A leg's own factor, then with all before it.
        for (var j = 1; j < network.Count; j++) factors[j] *= factors[network.Parent[j]];
        return factors;
    }

    // Specific volumes of the liquid and of what comes to the tee, the side's part of the mass, and its part of the even quality.
    static (double Side, double Other) Split(double liquid, double mixed, double side, double part)
    {
        var gas = mixed - liquid;
        if (!(gas > 1e-3 * liquid)) return (1, 1);
        var own = Math.Min(part, 1 / side);
        var left = (1 - side * own) / (1 - side);
        var (a, b) = (Math.Sqrt(mixed / (liquid + own * gas)), Math.Sqrt(mixed / (liquid + left * gas)));
        var whole = side * a + (1 - side) * b;
        return (a / whole, b / whole);
    }
}
