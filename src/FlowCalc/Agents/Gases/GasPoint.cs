namespace FlowCalc.Agents;

/// <summary>State of a gas.</summary>
/// <param name="Pressure">Absolute pressure, Pa.</param>
/// <param name="PressurePerKelvin">(∂p/∂T) at constant density, Pa/K.</param>
/// <param name="HeatCapacity">cv, J/(kg·K).</param>
public readonly record struct GasPoint(double Pressure, double PressurePerKelvin, double HeatCapacity);
