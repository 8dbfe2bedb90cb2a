namespace FlowCalc.Explanations;

/// <summary>A symbol of an equation.</summary>
/// <param name="Symbol">The symbol, such as <c>Re</c>.</param>
/// <param name="Meaning">What it stands for.</param>
/// <param name="Unit">Its unit.</param>
public readonly record struct EquationSymbol(string Symbol, string Meaning, SymbolUnit Unit);
