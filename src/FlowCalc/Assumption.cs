namespace FlowCalc;

/// <summary>A value that the document left open and the engine filled in.</summary>
/// <param name="Pointer">JSON pointer of the place in the document.</param>
/// <param name="Value">What was taken, in words or with its unit.</param>
/// <param name="Source">Why that.</param>
public sealed record Assumption(string Pointer, string Value, string Source);
