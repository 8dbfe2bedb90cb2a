using System.Collections.Immutable;

namespace FlowCalc.Api.Catalogue;

/// <summary>A mixture that a layout names by its id and a mass fraction.</summary>
/// <param name="Id">Id, as <c>agent.mixture</c> names it in a layout document.</param>
/// <param name="Title">Name for people.</param>
/// <param name="LowestMassFraction">Weakest solution of the data: additive in the mass of the whole, 0 to 1.</param>
/// <param name="HighestMassFraction">Strongest solution of the data.</param>
/// <param name="Temperatures">The temperatures that its data reach, the lowest of them with the strongest solution only: each solution's data start at its own freezing point.</param>
/// <param name="FreezingPoints">Freezing points from the weakest to the strongest solution.</param>
/// <param name="Sources">Keys of its sources.</param>
public sealed record MixtureAnswer(
    string Id, string Title, double LowestMassFraction, double HighestMassFraction, TemperatureRange Temperatures, ImmutableArray<FreezingPointAnswer> FreezingPoints, ImmutableArray<string> Sources);
