using UnitsNet;

namespace FlowCalc.Bottles;

/// <summary>A pressure regulator in a bottle's outlet.</summary>
/// <param name="SetPressure">Absolute pressure that it holds at its outlet.</param>
/// <param name="Kv">Flow coefficient fully open, m³/(s·√Pa) at 1000 kg/m³; null where not given.</param>
public sealed record Regulator(Pressure SetPressure, double? Kv);
