namespace FlowCalc.Agents;

/// <summary>Freezing point of one strength of a mixture.</summary>
/// <param name="MassFraction">Part of the additive in the mass of the whole, 0 to 1.</param>
/// <param name="FreezingPoint">Temperature at which the first ice forms, K.</param>
public readonly record struct SolutionFreezingPoint(double MassFraction, double FreezingPoint);
