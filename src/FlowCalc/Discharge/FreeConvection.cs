using FlowCalc.Agents;

namespace FlowCalc.Discharge;

/// <summary>Heat by turbulent free convection in a closed vessel, Nu = 0.13 Ra^(1/3), whatever its size.</summary>
/// <param name="transport">Viscosity and conductivity of the gas.</param>
/// <param name="gravity">Effective gravity, m/s², 0 or more.</param>
/// <param name="liquidTemperature">Temperature of the liquid, K.</param>
/// <param name="factor">Multiplies the coefficient: the law is uncertain by 1.5 either way.</param>
/// <remarks>McAdams 1954 (from memory): h = 0.13 k (g β ΔT ρ² Pr / μ²)^(1/3), with β = 1/T of an ideal gas.</remarks>
internal readonly struct FreeConvection(GasTransport transport, double gravity, double liquidTemperature, double factor)
{
    const double Nusselt = 0.13;

    /// <summary>The same with another factor.</summary>
    /// <param name="other">Multiplies the coefficient.</param>
    public FreeConvection Times(double other) => new(transport, gravity, liquidTemperature, other);

    /// <summary>Conductance from the dry wall and from the liquid's surface, W/K.</summary>
    /// <param name="state">The gas.</param>
    /// <param name="point">Its state.</param>
    public (double Wall, double Liquid) Conductances(in CushionState state, in GasPoint point)
    {
        var viscosity = transport.Viscosity(state.Temperature);
        var conductivity = transport.Conductivity(state.Temperature);
        // cp of the dilute gas is near enough under a cube root.
        var prandtl = (point.HeatCapacity + point.PressurePerKelvin / state.Density) * viscosity / conductivity;
        var perKelvin = gravity / state.Temperature * state.Density * state.Density * prandtl / (viscosity * viscosity);
        var coefficient = factor * Nusselt * conductivity * Math.Cbrt(perKelvin);
        return (coefficient * state.DryArea * Math.Cbrt(Math.Abs(state.WallTemperature - state.Temperature)),
            coefficient * state.SurfaceArea * Math.Cbrt(Math.Abs(liquidTemperature - state.Temperature)));
    }
}
