namespace FlowCalc.Networks;

/// <summary>Brings an answer into exact balance along runs and at points, and measures what is left at the nozzles.</summary>
internal static class Balance
{
    /// <summary>
    /// Sums the flows from the leaves up and takes the losses from the root down, so that all that is left over shows at the nozzles.
    /// </summary>
    /// <typeparam name="TPath">Kind of fluid.</typeparam>
    /// <param name="state">State after a step; flows, losses and potentials are overwritten.</param>
    /// <param name="path">The fluid.</param>
    /// <param name="reservoir">Potential of the reservoir, Pa.</param>
    /// <returns>Largest mismatch of a nozzle's flow with the tangent of its law, relative to the total flow; and that of its pressure, Pa.</returns>
    public static (double Mass, double Pressure) Settle<TPath>(SteadyState state, TPath path, double reservoir) where TPath : struct, IExpansionPath
    {
        SumFlows(state);
        LossSweep.Fill(state, path.Viscosity, path.ReferenceDensity);
        var network = state.Network;
        var (parent, rise, loss, potential) = (network.Parent, network.Rise, state.Loss, state.Potential);
        for (var j = 0; j < potential.Length; j++)
        {
            var above = j == 0 ? reservoir : potential[parent[j]];
            var weight = rise[j] == 0 ? 0 : rise[j] * path.Weight(0.5 * (above + potential[j]));
            potential[j] = above - loss[j] - weight;
        }
        return Mismatch(state, path);
    }

    static void SumFlows(SteadyState state)
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

    static (double Mass, double Pressure) Mismatch<TPath>(SteadyState state, TPath path) where TPath : struct, IExpansionPath
    {
        var network = state.Network;
        double mass = 0, pressure = 0;
        for (var i = 0; i < network.Nozzles.Length; i++)
        {
            if (state.IsClosed[i]) continue;
            var point = network.Nozzles[i];
            var (potential, flow) = (state.Potential[point], state.Flow[point]);
            var tangent = path.Nozzle(potential, flow, network.NozzleArea[i]);
            var rest = Math.Abs(tangent.G * potential - tangent.R - tangent.T * flow);
            pressure = Larger(pressure, rest / tangent.G);
            mass = Larger(mass, rest / tangent.T);
        }
        var total = Math.Abs(state.Flow[0]);
        return (mass == 0 ? 0 : mass / total, pressure);
    }

    // Unlike Math.Max in a chain of comparisons, a NaN stays.
    static double Larger(double most, double next) => next <= most ? most : next;
}
