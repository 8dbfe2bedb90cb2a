using System.Collections.Immutable;
using FlowCalc.ReferenceData;

namespace FlowCalc.Api.Catalogue;

/// <summary>The tubes of the catalogue.</summary>
/// <param name="Tubes">By material, then by outside diameter, then by wall.</param>
/// <param name="Sources">The sources that they name.</param>
public sealed record TubesAnswer(ImmutableArray<TubeAnswer> Tubes, ImmutableArray<Source> Sources);
