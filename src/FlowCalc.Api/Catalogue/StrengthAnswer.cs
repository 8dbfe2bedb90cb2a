using System.Collections.Immutable;
using FlowCalc.Api.Answers;

namespace FlowCalc.Api.Catalogue;

/// <summary>An agent at one strength.</summary>
/// <param name="MassFraction">Additive in the mass of the whole, 0 to 1; null for a liquid that comes in one strength.</param>
/// <param name="FreezingPoint">Temperature at which the first ice forms; null where it is not known.</param>
/// <param name="Temperatures">The temperatures that its data reach.</param>
/// <param name="Properties">Its properties over that range, the ends and every full 10 K between them.</param>
public sealed record StrengthAnswer(double? MassFraction, Quantity? FreezingPoint, TemperatureRange Temperatures, ImmutableArray<PropertyRow> Properties);
