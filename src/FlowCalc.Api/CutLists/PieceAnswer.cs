using System.Collections.Immutable;
using FlowCalc.Api.Answers;

namespace FlowCalc.Api.CutLists;

/// <summary>One piece of tube, from fitting to fitting.</summary>
/// <param name="Number">Its number within the run, from the run's start, 1 for the first.</param>
/// <param name="CutLength">Length of the finished piece, up to the next whole millimetre; null where its fittings leave it no tube.</param>
/// <param name="ExactLength">The same, as it comes out.</param>
/// <param name="SawnLength">Length to saw off the stock: with what squaring takes from both ends; null where there is no tube.</param>
/// <param name="Start">The end from which marks are measured, towards the supply.</param>
/// <param name="End">The other end.</param>
/// <param name="Bends">The bends that have a place, in order from the start.</param>
/// <param name="Straights">Straight lengths before, between and after these bends; negative where arcs overlap.</param>
public sealed record PieceAnswer(
    int Number,
    Quantity? CutLength,
    Quantity ExactLength,
    Quantity? SawnLength,
    JointAnswer Start,
    JointAnswer End,
    ImmutableArray<BendMarkAnswer> Bends,
    ImmutableArray<Quantity> Straights);
