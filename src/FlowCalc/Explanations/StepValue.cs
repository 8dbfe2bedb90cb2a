namespace FlowCalc.Explanations;

/// <summary>A symbol with its number.</summary>
/// <param name="Symbol">The symbol.</param>
/// <param name="Si">The number in the unit's SI form.</param>
/// <param name="Unit">Its unit.</param>
public readonly record struct StepValue(string Symbol, double Si, SymbolUnit Unit);
