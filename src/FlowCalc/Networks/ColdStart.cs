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
        ReadOnlySpan<int> parent = network.Parent;
        Span<double> resistance = state.Loss, conductance = state.Slope, below = state.Flow;
        Resistances(network, resistance);
        below.Clear();
        for (var i = 0; i < network.Nozzles.Length; i++)
            if (!state.IsClosed[i])
                below[network.Nozzles[i]] = Math.Sqrt(2) * network.NozzleArea[i];
        for (var j = network.Count - 1; j >= 0; j--)
        {
            // kg/s for each √(ρ·Pa): of the subtree below the point, then of the run that feeds it as well.
            var own = below[j];
            var total = own / Math.Sqrt(1 + own * own * resistance[j]);
            conductance[j] = total;
            if (j > 0) below[parent[j]] += total;
        }
        Spread(state, density, reservoir, ambient);
    }

    // Flows divide at a point as the conductances do.
    static void Spread(SteadyState state, double density, double reservoir, double ambient)
    {
        ReadOnlySpan<int> parent = state.Network.Parent;
        ReadOnlySpan<double> resistance = state.Loss;
        Span<double> perConductance = state.Slope, flows = state.Flow;
        var potentials = state.Potential;
        var perDensity = 1 / density;
        for (var j = 0; j < potentials.Length; j++)
        {
            var above = j == 0 ? reservoir : potentials[parent[j]];
            var flow = perConductance[j] * (j == 0 ? Math.Sqrt(density * Math.Max(reservoir - ambient, 0)) : perConductance[parent[j]]);
            var below = flows[j];
            flows[j] = flow;
            perConductance[j] = below > 0 ? flow / below : 0;
            potentials[j] = above - resistance[j] * perDensity * flow * flow;
        }
    }

    static void Resistances(Network network, Span<double> resistance)
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
