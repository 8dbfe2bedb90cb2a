namespace FlowCalc.Api.Explanations;

/// <summary>A symbol of an equation with its number.</summary>
/// <param name="Symbol">The symbol.</param>
/// <param name="Value">The number in full.</param>
/// <param name="Unit">Its unit; <c>1</c> for a plain number. A unit that no system of units has is SI in every answer. The equation itself takes it in SI.</param>
public readonly record struct ValueAnswer(string Symbol, double Value, string Unit);
