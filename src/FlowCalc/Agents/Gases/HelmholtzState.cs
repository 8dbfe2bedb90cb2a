using System.Runtime.CompilerServices;

namespace FlowCalc.Agents;

/// <summary>Properties of a state of one phase.</summary>
/// <param name="Pressure">Absolute pressure, Pa.</param>
/// <param name="PressurePerKelvin">(∂p/∂T) at constant density, Pa/K.</param>
/// <param name="PressurePerDensity">(∂p/∂ρ) at constant temperature, Pa·m³/kg.</param>
/// <param name="Energy">Internal energy, J/kg, from the equation's own zero.</param>
/// <param name="Enthalpy">Enthalpy, J/kg, from the equation's own zero.</param>
/// <param name="Entropy">Entropy, J/(kg·K), from the equation's own zero.</param>
/// <param name="IsochoricHeatCapacity">cv, J/(kg·K).</param>
/// <param name="IsobaricHeatCapacity">cp, J/(kg·K).</param>
/// <param name="SpeedOfSound">Speed of sound, m/s.</param>
internal readonly record struct HelmholtzState(
    double Pressure, double PressurePerKelvin, double PressurePerDensity, double Energy, double Enthalpy, double Entropy,
    double IsochoricHeatCapacity, double IsobaricHeatCapacity, double SpeedOfSound)
{
    /// <summary>The state that the derivatives of α° + αʳ give, ln δ left out of them.</summary>
    /// <param name="gasConstant">Specific gas constant R, J/(kg·K).</param>
    /// <param name="temperature">Temperature, K.</param>
    /// <param name="density">Density, kg/m³.</param>
    /// <param name="delta">δ.</param>
    /// <param name="tau">τ.</param>
    /// <param name="alpha">Sum of both parts.</param>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static HelmholtzState Of(double gasConstant, double temperature, double density, double delta, double tau, in HelmholtzDerivatives alpha)
    {
        var r = gasConstant;
        var pressure = 1 + delta * alpha.ByDensity;
        var perKelvin = pressure - delta * tau * alpha.ByBoth;
        var perDensity = 1 + 2 * delta * alpha.ByDensity + delta * delta * alpha.ByDensityTwice;
        var cv = -tau * tau * alpha.ByTemperatureTwice;
        var energy = tau * alpha.ByTemperature;
        return new(
            density * r * temperature * pressure, density * r * perKelvin, r * temperature * perDensity,
            r * temperature * energy, r * temperature * (energy + pressure), r * (energy - alpha.Value - Math.Log(delta)),
            r * cv, r * (cv + perKelvin * perKelvin / perDensity), Math.Sqrt(r * temperature * (perDensity + perKelvin * perKelvin / cv)));
    }
}
