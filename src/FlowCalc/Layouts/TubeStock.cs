using System.Collections.Immutable;
using UnitsNet;

namespace FlowCalc.Layouts;

/// <summary>The lengths in which a tube is to be had.</summary>
/// <param name="Tube">Name of the tube among the document's or the catalogue's; null for every tube without an entry of its own.</param>
/// <param name="Lengths">Lengths of bars, or the one of a coil; at least one, each any number of times.</param>
/// <param name="IsCoil">Whether it is a coil, to be straightened.</param>
public sealed record TubeStock(string? Tube, ImmutableArray<Length> Lengths, bool IsCoil);
