namespace FlowCalc.Api.Answers;

/// <summary>A value with its unit. Pressures are gauge. The unit of a plain number such as a ratio is <c>1</c>.</summary>
/// <param name="Value">The value in full, never rounded.</param>
/// <param name="Unit">The unit's symbol.</param>
public readonly record struct Quantity(double Value, string Unit);
