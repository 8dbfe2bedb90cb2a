namespace FlowCalc.Agents;

/// <summary>Placeholder until the merge.</summary>
public sealed record GasTransport
{
    readonly double one = 1;
    /// <summary>Pa·s.</summary>
    public double Viscosity(double temperature) => one * 1.7e-5 * temperature / 293;

    /// <summary>W/(m·K).</summary>
    public double Conductivity(double temperature) => one * 0.025 * temperature / 293;
}
