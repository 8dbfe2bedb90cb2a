namespace FlowCalc.Networks;

/// <summary>A liquid of constant density.</summary>
/// <param name="density">Density, kg/m³, over 0.</param>
/// <param name="viscosity">Dynamic viscosity, Pa·s, over 0.</param>
/// <param name="ambientPressure">Absolute pressure outside the nozzles, Pa.</param>
internal readonly struct LiquidPath(double density, double viscosity, double ambientPressure) : IExpansionPath
{
    const double StandardGravity = 9.80665;

    /// <inheritdoc/>
    public static bool IsIncompressible => true;

    /// <inheritdoc/>
    public double ReferenceDensity => density;

    /// <inheritdoc/>
    public double Viscosity => viscosity;

    /// <inheritdoc/>
    public double AmbientPressure => ambientPressure;

    /// <inheritdoc/>
    public double Potential(double pressure) => pressure;

    /// <inheritdoc/>
    public double PotentialSlope(double pressure) => 1;

    /// <inheritdoc/>
    public double Weight(double pressure) => density * StandardGravity;

    /// <summary>The square law p − p_a = m|m| / (2ρ(C_d·A)²), kept implicit so that its vanishing slope at rest is never divided by.</summary>
    /// <inheritdoc/>
    public NozzleTangent Nozzle(double pressure, double flow, double area)
    {
        var c = 1 / (2 * density * area * area);
        var half = c * Math.Abs(flow);
        return new(1, 2 * half, ambientPressure - half * flow);
    }
}
