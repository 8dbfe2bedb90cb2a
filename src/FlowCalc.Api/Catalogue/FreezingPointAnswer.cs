using FlowCalc.Api.Answers;

namespace FlowCalc.Api.Catalogue;

/// <summary>Where a mixture of one strength freezes.</summary>
/// <param name="MassFraction">Additive in the mass of the whole, 0 to 1.</param>
/// <param name="FreezingPoint">Temperature at which the first ice forms.</param>
public sealed record FreezingPointAnswer(double MassFraction, Quantity FreezingPoint);
