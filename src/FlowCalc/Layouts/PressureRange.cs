using UnitsNet;

namespace FlowCalc.Layouts;

/// <summary>The pressures at which a nozzle does its work.</summary>
/// <param name="Least">Lowest absolute pressure.</param>
/// <param name="Most">Highest absolute pressure.</param>
public readonly record struct PressureRange(Pressure Least, Pressure Most);
