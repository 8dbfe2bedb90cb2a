namespace FlowCalc.Quantities;

/// <summary>A value with the unit that it is written in.</summary>
/// <param name="Value">The value, in <paramref name="Unit"/>.</param>
/// <param name="Unit">The unit's symbol, the main spelling of its row in <see cref="UnitTable"/>.</param>
public readonly record struct WrittenQuantity(double Value, string Unit);
