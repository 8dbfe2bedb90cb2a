namespace FlowCalc.Networks;

/// <summary>First flows: the exact answer for a level tree of a liquid with one constant friction factor and no tees' split.</summary>
/// <remarks>Then every subtree is an orifice: 1/C² adds along a run and C adds at a point, so two sweeps give it.</remarks>
internal static class ColdStart
{
    const double FrictionFactor = 0.03;
    const double BendCoefficient = 0.3;

    /// <summary>Fills in flows and potentials.</summary>
    /// <param name="state">The state to start.</param>
    /// <param name="density">Reference density, kg/m³.</param>
    /// <param name="reservoir">Potential of the reservoir, Pa.</param>
    /// <param name="ambient">Potential outside the nozzles, Pa.</param>
    public static void Fill(SteadyState state, double density, double reservoir, double ambient)
    {
        var network = state.Network;
        var parent = network.Parent;
        double[] resistance = state.Loss, conductance = state.Slope;
        Resistances(network, resistance);
        Array.Clear(conductance);
        for (var i = 0; i < network.Nozzles.Length; i++)
            if (!state.IsClosed[i])
                conductance[network.Nozzles[i]] = Math.Sqrt(2) * network.NozzleArea[i];
        for (var j = network.Count - 1; j >= 0; j--)
        {
            // kg/s for each √(ρ·Pa): of the subtree below the point, then of the run that feeds it as well.
            var below = conductance[j];
            var total = below / Math.Sqrt(1 + below * below * resistance[j]);
            conductance[j] = total;
            if (j > 0) conductance[parent[j]] += total;
        }

        for (var j = 0; j < network.Count; j++)
        {
            var above = j == 0 ? reservoir : state.Potential[parent[j]];
            var flow = conductance[j] * Math.Sqrt(density * Math.Max(above - ambient, 0));
            state.Flow[j] = flow;
            state.Potential[j] = above - resistance[j] * flow * flow / density;
        }
    }

    static void Resistances(Network network, double[] resistance)
    {
        var (perFlow, weight, constant) = (network.Tubes.ReynoldsPerFlow, network.Tubes.Weight, network.Constant);
        for (var j = 0; j < network.Count; j++)
            resistance[j] = constant[j] + FrictionFactor * weight[j] * perFlow[j] * perFlow[j];
        var bends = network.Bends;
        for (var i = 0; i < bends.Count; i++)
            resistance[bends.Run[i]] += BendCoefficient * bends.Weight[i] * bends.ReynoldsPerFlow[i] * bends.ReynoldsPerFlow[i];
        var throats = network.Throats;
        for (var i = 0; i < throats.Count; i++)
            resistance[throats.Run![i]] += FrictionFactor * throats.Weight[i] * throats.ReynoldsPerFlow[i] * throats.ReynoldsPerFlow[i];
    }
}
