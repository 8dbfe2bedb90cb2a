using System.Collections.Immutable;
using UnitsNet;

namespace FlowCalc.Routes;

/// <summary>The clips of a run.</summary>
/// <param name="Spacing">Largest distance between two, as taken.</param>
/// <param name="Table">Largest distance by the table of the tube's size and material.</param>
/// <param name="At">Places along the developed centre line from the run's start; empty where there are too many to list.</param>
/// <param name="Count">Clips with a place, listed or not.</param>
/// <param name="Unplaced">Clips beside bends of which the document gives no place: two a bend.</param>
/// <param name="AreStated">Whether the document gives the places.</param>
/// <param name="WidestGap">The distance that is longest for what it may be.</param>
/// <param name="GapLimit">What it may be by the table: a fifth less beside a fitting that the tube carries.</param>
/// <param name="FarthestJoint">Longest way from a fitting to the next clip.</param>
public sealed record RunClips(
    Length Spacing, Length Table, ImmutableArray<Length> At, long Count, long Unplaced, bool AreStated, Length WidestGap, Length GapLimit, Length FarthestJoint);
