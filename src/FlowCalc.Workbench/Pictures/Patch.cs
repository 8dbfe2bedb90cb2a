using System.Collections.Immutable;

namespace FlowCalc.Workbench.Pictures;

/// <summary>A filled area between spots.</summary>
/// <param name="Spots">Its corners, three or more.</param>
/// <param name="Fill">Its colour; null for none.</param>
/// <param name="Edge">Colour of its edge; null for none.</param>
/// <param name="EdgeWidth">Width of its edge, points.</param>
public sealed record Patch(ImmutableArray<Spot> Spots, Ink? Fill, Ink? Edge = null, double EdgeWidth = 1) : Mark;
