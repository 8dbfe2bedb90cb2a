namespace FlowCalc.Api.Explanations;

/// <summary>A symbol of an equation.</summary>
/// <param name="Symbol">The symbol.</param>
/// <param name="Meaning">What it stands for.</param>
/// <param name="Unit">The SI unit in which the equation takes it; <c>1</c> for a plain number, <c>SI</c> for that of whatever figure a step is about. Pa is gauge or a difference, Pa(a) absolute.</param>
public readonly record struct SymbolAnswer(string Symbol, string Meaning, string Unit);
