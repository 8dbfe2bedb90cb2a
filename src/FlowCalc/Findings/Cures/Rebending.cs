using System.Collections.Immutable;
using FlowCalc.Layouts;
using UnitsNet;
using UnitSystem = FlowCalc.Quantities.UnitSystem;

namespace FlowCalc.Findings.Cures;

/// <summary>A run with other radii on the same way.</summary>
static class Rebending
{
    /// <summary>The run in another tube; bends that had the old tube's least radius get the new one's, as the document's default would give them.</summary>
    /// <param name="layout">The layout.</param>
    /// <param name="run">The run.</param>
    /// <param name="tube">The tube to lay it in.</param>
    /// <param name="units">Units of the doubt's words.</param>
    /// <returns>The run, null where it cannot be laid at all, and why it may not be buildable; null for no doubt.</returns>
    public static (Run? Run, string? Doubt) InTube(Layout layout, Run run, Tube tube, UnitSystem units)
    {
        var changed = run with { Tube = tube };
        if (run.Bends.Length == 0) return (changed, null);
        if (run.Route is not null && tube.MinimumBendRadius is { } radius && run.Tube.MinimumBendRadius is { } before && HasRadius(run, before))
        {
            if (WithRadius(layout, changed, radius) is not { } laid) return (null, null);
            changed = laid;
        }
        var least = changed.Bends.Min(bend => bend.Radius.Meters);
        // The loss of a bend has no meaning below half a bore of radius.
        if (least < 0.5 * tube.Bore.Meters) return (null, null);
        if (!Fits(changed)) return (changed, $"the bends of {Wording.Id(run.Id)} would no longer fit its route");
        if (tube.MinimumBendRadius is { } allowed && least < allowed.Meters * (1 - 1e-9))
            return (changed, $"a bend of {Wording.Id(run.Id)} would be tighter than the {Wording.Of(allowed, units)} that the tube allows");
        return (changed, null);
    }

    /// <summary>The run with one radius in all its corners, or, where it is given by its length, for all bends that are tighter; null where it cannot be laid.</summary>
    public static Run? WithRadius(Layout layout, Run run, Length radius)
    {
        if (run.Route is not { } route)
        {
            ImmutableArray<Bend> bends = [.. run.Bends.Select(bend => bend.Radius < radius ? bend with { Radius = radius } : bend)];
            // A run given by its length keeps it, and the wider arcs have to fit into it.
            var arcs = bends.Sum(bend => bend.Count * bend.Angle.Radians * bend.Radius.Meters);
            return arcs > run.Length.Meters ? null : run with { Bends = bends };
        }
        if (layout.Points[run.From].At is not { } from || layout.Points[run.To].At is not { } to) return null;
        return RouteGeometry.TryLay([from, .. route.Corners, to], radius.Meters, out var laid, out _)
            ? run with { Bends = laid.Bends, Length = Length.FromMeters(laid.Length), Route = laid.Route }
            : null;
    }

    /// <summary>Whether no straight of the run's route is negative.</summary>
    public static bool Fits(Run run) => run.Route is not { } route || route.Straights.All(straight => straight >= Length.Zero);

    static bool HasRadius(Run run, Length radius) => run.Bends.All(bend => Math.Abs(bend.Radius.Meters - radius.Meters) <= 1e-9 * radius.Meters);
}
