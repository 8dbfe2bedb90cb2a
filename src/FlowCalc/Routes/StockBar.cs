using System.Collections.Immutable;
using UnitsNet;

namespace FlowCalc.Routes;

/// <summary>One bar or coil and what is cut from it.</summary>
/// <param name="Length">Its length.</param>
/// <param name="Pieces">The pieces, as indices in the pieces of its tube's order, longest first.</param>
/// <param name="Offcut">What is left of it.</param>
public sealed record StockBar(Length Length, ImmutableArray<int> Pieces, Length Offcut);
