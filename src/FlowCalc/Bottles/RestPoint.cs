namespace FlowCalc.Bottles;

/// <summary>A bottle of a gas or a liquefied gas at rest at one temperature.</summary>
/// <param name="Temperature">Temperature of bottle and contents, K.</param>
/// <param name="Pressure">Absolute pressure, Pa; null where there is no answer.</param>
/// <param name="LiquidPart">Part of the volume that is liquid, 0 to 1; null in one phase or without an answer.</param>
/// <param name="Phase">What it holds; null without an answer.</param>
public readonly record struct RestPoint(double Temperature, double? Pressure, double? LiquidPart, BottlePhase? Phase);
