using System.Collections.Immutable;
using UnitsNet;

namespace FlowCalc.Routes;

/// <summary>One piece of tube, from fitting to fitting.</summary>
/// <param name="Run">Index of its run in the layout.</param>
/// <param name="Number">Its number within the run from the run's start, 1 for the first.</param>
/// <param name="Start">The end from which marks are measured, towards the supply.</param>
/// <param name="End">The other end.</param>
/// <param name="Exact">Length of the finished piece along its centre line; not over 0 where the fittings leave it no tube.</param>
/// <param name="Cut">The same, up to the next whole millimetre; null where there is no tube.</param>
/// <param name="Sawn">Length to saw off the stock: with what squaring takes from both ends; null where there is no tube.</param>
/// <param name="Bends">The bends that have a place, in order from the start.</param>
/// <param name="Straights">Straight lengths before, between and after these bends, one more than there are; negative where arcs overlap.</param>
public sealed record TubePiece(
    int Run, int Number, PieceEnd Start, PieceEnd End, Length Exact, Length? Cut, Length? Sawn, ImmutableArray<BendMark> Bends, ImmutableArray<Length> Straights);
