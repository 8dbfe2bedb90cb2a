namespace FlowCalc.Networks;

/// <summary>What a solve of a compressible fluid holds besides <see cref="SteadyState"/>, reusable.</summary>
/// <param name="network">The network.</param>
/// <param name="area">Area of each run's bore, m², of equal runs side by side together.</param>
internal sealed class CompressibleState(Network network, double[] area)
{
    /// <summary>Flows, potentials and losses.</summary>
    public SteadyState Steady { get; } = new(network);

    /// <summary>The network.</summary>
    public Network Network => Steady.Network;

    /// <summary>Area of each run's bore, m².</summary>
    public double[] Area { get; } = area;

    /// <summary>Logarithm of the absolute total pressure in Pa at each point.</summary>
    public double[] Log { get; } = new double[network.Count];

    /// <summary>State on the path at each point's total pressure, as the runs were last filled in.</summary>
    internal PathPoint[] Points { get; } = new PathPoint[network.Count];

    /// <summary>Logarithm of the static pressure in Pa just inside the end of each run; that of choking where it is choked.</summary>
    public double[] EndLog { get; } = new double[network.Count];

    /// <summary>Logarithm of the static pressure in Pa just inside the start of each run.</summary>
    public double[] StartLog { get; } = new double[network.Count];

    /// <summary>Whether the end of each run is choked.</summary>
    public bool[] IsChoked { get; } = new bool[network.Count];

    /// <summary>Logarithm of the absolute total pressure in Pa before the network's first run.</summary>
    public double ReservoirLog { get; set; }

    /// <summary>Dynamic viscosity in each run, Pa·s, padded.</summary>
    internal double[] Viscosity { get; } = new double[network.Tubes.ReynoldsPerFlow.Length];

    internal double[] LastFlow { get; } = new double[network.Count];

    internal double[] LastPotential { get; } = new double[network.Count];

    internal double[] Above { get; } = new double[network.Count];

    internal double[] Below { get; } = new double[network.Count];

    /// <summary>Ψ1 − Ψ2 just inside the ends less acceleration and weight, Pa.</summary>
    internal double[] Drive { get; } = new double[network.Count];
}
