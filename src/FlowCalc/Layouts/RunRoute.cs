using System.Collections.Immutable;
using UnitsNet;

namespace FlowCalc.Layouts;

/// <summary>The way of a run in space, derived from its ends, its corners and its bend radius.</summary>
/// <param name="StartDirection">Direction in which it leaves its first point.</param>
/// <param name="EndDirection">Direction in which it comes to its last point.</param>
/// <param name="Straights">Straight lengths before, between and after the bends: one more than there are bends; a negative one says that bends overlap.</param>
/// <param name="Corners">The corners between the ends.</param>
public sealed record RunRoute(Direction StartDirection, Direction EndDirection, ImmutableArray<Length> Straights, ImmutableArray<Place> Corners)
{
    /// <summary>
    /// Between each bend and the next, the angle from the plane of the first to that of the second about the straight between them, over −180° to 180°; right-handed in the
    /// direction of travel. One fewer than there are bends; empty for none or one.
    /// </summary>
    public ImmutableArray<Angle> Rotations { get; init; } = [];

    /// <summary>The bend radius that the run states for itself; null where it takes its tube's least radius.</summary>
    public Length? StatedRadius { get; init; }
}
