using System.Collections.Immutable;
using FlowCalc.Layouts;
using UnitsNet;

namespace FlowCalc.Routes;

/// <summary>A bend with its place along the developed centre line of its run, m from the run's start.</summary>
/// <param name="Bend">The bend, one.</param>
/// <param name="Start">Where its arc begins.</param>
/// <param name="End">Where its arc ends.</param>
/// <param name="Rotation">From the plane of the bend before it; null for the first.</param>
readonly record struct PlacedBend(Bend Bend, double Start, double End, Angle? Rotation)
{
    public double Middle => (Start + End) / 2;

    /// <summary>The bends of a run in order; none where it is given by its length, which says nothing of their places.</summary>
    public static ImmutableArray<PlacedBend> Of(Run run)
    {
        if (run.Route is not { } route || run.Bends.IsEmpty) return [];
        var placed = ImmutableArray.CreateBuilder<PlacedBend>(run.Bends.Length);
        var at = 0.0;
        for (var bend = 0; bend < run.Bends.Length; bend++)
        {
            at += route.Straights[bend].Meters;
            var end = at + run.Bends[bend].Arcs.Meters;
            placed.Add(new PlacedBend(run.Bends[bend], at, end, bend > 0 && bend <= route.Rotations.Length ? route.Rotations[bend - 1] : null));
            at = end;
        }
        return placed.MoveToImmutable();
    }
}
