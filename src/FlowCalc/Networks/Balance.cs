namespace FlowCalc.Networks;

/// <summary>Brings the flows of an answer into exact balance at every point, and measures what is left along runs and at nozzles.</summary>
internal static class Balance
{
    /// <summary>Sums the flows from the leaves up and holds every run and nozzle against its own law.</summary>
    /// <typeparam name="TPath">Kind of fluid.</typeparam>
    /// <param name="state">State after a step; flows and losses are overwritten, and the potentials of points where nothing flows.</param>
    /// <param name="path">The fluid.</param>
    /// <param name="reservoir">Potential of the reservoir, Pa.</param>
    /// <returns>What is left.</returns>
    public static Mismatch Settle<TPath>(SteadyState state, TPath path, double reservoir) where TPath : struct, IExpansionPath
    {
        SumFlows(state);
        LossSweep.Fill(state, path.Viscosity, path.ReferenceDensity);
        var (pressure, relative) = RunMismatch(state, path, reservoir);
        return new(NozzleMismatch(state, path), pressure, relative);
    }

    /// <summary>Sums the flows of the nozzles from the leaves up, so that they balance at every point.</summary>
    /// <param name="state">State after a step; flows are overwritten.</param>
    public static void SumFlows(SteadyState state)
    {
        var (network, flow) = (state.Network, state.Flow);
        var parent = network.Parent;
        // The accumulators of the sweeps are free now; G serves as the sum of what leaves a point.
        var sums = state.Sums;
        for (var i = 0; i < network.Nozzles.Length; i++)
            sums[network.Nozzles[i]].G = state.IsClosed[i] ? 0 : flow[network.Nozzles[i]];
        for (var j = network.Count - 1; j >= 0; j--)
        {
            flow[j] = sums[j].G;
            sums[j].G = 0;
            if (j > 0) sums[parent[j]].G += flow[j];
        }
    }

    static (double Pressure, double Relative) RunMismatch<TPath>(SteadyState state, TPath path, double reservoir) where TPath : struct, IExpansionPath
    {
        var network = state.Network;
        var (parent, rise, loss, flow, potential) = (network.Parent, network.Rise, state.Loss, state.Flow, state.Potential);
        double most = 0, highest = Math.Abs(reservoir);
        for (var j = 0; j < potential.Length; j++)
        {
            var above = j == 0 ? reservoir : potential[parent[j]];
            // Where nothing flows no line gave a potential.
            var isStill = flow[j] == 0;
            if (isStill) potential[j] = above - rise[j] * path.Weight(above);
            var expected = above - loss[j] - rise[j] * path.Weight(0.5 * (above + potential[j]));
            if (isStill) potential[j] = expected;
            else most = Math.Max(most, Math.Abs(expected - potential[j]));
            highest = Math.Max(highest, Math.Abs(potential[j]));
        }
        return (most, most == 0 ? 0 : most / highest);
    }

    static double NozzleMismatch<TPath>(SteadyState state, TPath path) where TPath : struct, IExpansionPath
    {
        var network = state.Network;
        double most = 0;
        for (var i = 0; i < network.Nozzles.Length; i++)
        {
            if (state.IsClosed[i]) continue;
            var point = network.Nozzles[i];
            var tangent = path.Nozzle(point, state.Potential[point], state.Flow[point], network.NozzleArea[i]);
            most = Math.Max(most, Math.Abs(tangent.G * state.Potential[point] - tangent.R - tangent.T * state.Flow[point]) / tangent.T);
        }
        return most == 0 ? 0 : most / Math.Abs(state.Flow[0]);
    }
}
