namespace FlowCalc.Quantities;

/// <summary>A number with what it measures, for limits and findings.</summary>
/// <param name="Si">The value: SI base units, gauge Pa for a pressure, or a plain number.</param>
/// <param name="Kind">What is measured; null for a plain number such as a ratio.</param>
public readonly record struct Measure(double Si, QuantityKind? Kind);
