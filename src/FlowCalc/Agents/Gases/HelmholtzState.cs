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
    double IsochoricHeatCapacity, double IsobaricHeatCapacity, double SpeedOfSound);
