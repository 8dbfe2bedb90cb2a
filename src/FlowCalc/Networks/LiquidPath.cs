using FlowCalc.Losses;

namespace FlowCalc.Networks;

/// <summary>A liquid of constant density: its potential is its gauge pressure, so that a nozzle near the end of its pressure keeps its digits.</summary>
/// <param name="density">Density, kg/m³, over 0.</param>
/// <param name="viscosity">Dynamic viscosity, Pa·s, over 0.</param>
/// <param name="ambientPressure">Absolute pressure outside the nozzles, Pa.</param>
internal readonly struct LiquidPath(double density, double viscosity, double ambientPressure) : IExpansionPath
{
    // kg/(s·m²), a nanometre a second of water: below, the tangent keeps this flow's slope, since the square law has none at rest.
    const double LeastFlux = 1e-6;

    /// <inheritdoc/>
    public double ReferenceDensity => density;

    /// <inheritdoc/>
    public double Viscosity => viscosity;

    /// <inheritdoc/>
    public double AmbientPotential => 0;

    /// <inheritdoc/>
    public double Potential(double pressure) => pressure - ambientPressure;

    /// <inheritdoc/>
    public double Pressure(double potential) => potential + ambientPressure;

    /// <inheritdoc/>
    public double Weight(double potential) => density * HydrostaticRise.StandardGravity;

    /// <summary>The square law p − p_a = m|m| / (2ρ(C_d·A)²), which is solved for the pressure: the slope of its root has no bound at rest.</summary>
    /// <inheritdoc/>
    public NozzleTangent Nozzle(int point, double potential, double flow, double area)
    {
        var c = 1 / (2 * density * area * area);
        var size = Math.Abs(flow);
        var slope = 2 * c * Math.Max(size, LeastFlux * area);
        return new(1, slope, (c * size - slope) * flow);
    }
}
