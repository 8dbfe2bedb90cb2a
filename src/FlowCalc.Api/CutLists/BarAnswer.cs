using System.Collections.Immutable;
using FlowCalc.Api.Answers;

namespace FlowCalc.Api.CutLists;

/// <summary>One bar or coil and what is cut from it.</summary>
/// <param name="Length">Its length.</param>
/// <param name="Pieces">The pieces, longest first.</param>
/// <param name="Offcut">What is left of it.</param>
public sealed record BarAnswer(Quantity Length, ImmutableArray<PieceNameAnswer> Pieces, Quantity Offcut);
