using System.Collections.Immutable;
using FlowCalc.ReferenceData;

namespace FlowCalc.Api.Catalogue;

/// <summary>The fittings of the catalogue. Tees are points of a layout, not fittings.</summary>
/// <param name="Fittings">By id.</param>
/// <param name="Sources">The sources that they name.</param>
public sealed record FittingsAnswer(ImmutableArray<FittingAnswer> Fittings, ImmutableArray<Source> Sources);
