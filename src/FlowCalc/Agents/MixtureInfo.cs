using System.Collections.Immutable;

namespace FlowCalc.Agents;

/// <summary>A mixture of the catalogue and the range of its data.</summary>
/// <param name="Id">Id, as <c>mixture</c> names it in a layout document.</param>
/// <param name="Title">Name for people.</param>
/// <param name="LowestMassFraction">Weakest solution of the data: additive in the mass of the whole, 0 to 1.</param>
/// <param name="HighestMassFraction">Strongest solution of the data.</param>
/// <param name="LowestTemperature">Lowest temperature of the data, K: the freezing point of the strongest solution.</param>
/// <param name="HighestTemperature">Highest temperature of the data, K.</param>
/// <param name="FreezingPoints">Freezing points from the weakest to the strongest solution, every 0.05 of mass fraction.</param>
/// <param name="Sources">Keys into <see cref="ReferenceData.SourceCatalogue"/>.</param>
public sealed record MixtureInfo(
    string Id,
    string Title,
    double LowestMassFraction,
    double HighestMassFraction,
    double LowestTemperature,
    double HighestTemperature,
    ImmutableArray<SolutionFreezingPoint> FreezingPoints,
    ImmutableArray<string> Sources);
