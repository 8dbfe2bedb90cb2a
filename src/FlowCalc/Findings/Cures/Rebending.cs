using System.Collections.Immutable;
using FlowCalc.Layouts;
using FlowCalc.Quantities;
using UnitsNet;

namespace FlowCalc.Findings.Cures;

/// <summary>A run with other radii on the same way.</summary>
static class Rebending
{
    /// <summary>The run in another tube; a radius that is stated stays, one that came from the old tube becomes the new one's, as the changed document would read.</summary>
    /// <param name="judged">The layout as it is.</param>
    /// <param name="run">The run.</param>
    /// <param name="tube">The tube to lay it in.</param>
    /// <returns>The run, null where it cannot be laid at all, and why it may not be buildable; null for no doubt.</returns>
    public static (Run? Run, string? Doubt) InTube(JudgedLayout judged, Run run, Tube tube)
    {
        if (Relaid(judged.Layout, run, tube) is not { } changed) return (null, null);
        if (changed.Bends.Length == 0) return (changed, null);
        var least = changed.Bends.Min(bend => bend.Radius.Meters);
        if (!Fits(changed)) return (changed, $"the bends of {Wording.Id(run.Id)} would no longer fit its route");
        if (Bends.Least(tube, judged.FlowLimit(FindingCodes.BendTooTight)) is not var (allowed, isStated) || least >= allowed * (1 - 1e-9)) return (changed, null);
        var (bound, outside) = (Wording.Of(allowed, QuantityKind.Length, judged.Units), tube.OutsideDiameter?.Meters);
        return (changed, isStated
            ? $"a bend of {Wording.Id(run.Id)} would be tighter than the {bound} that the tube allows"
            : $"a bend of {Wording.Id(run.Id)} would be tighter than {bound}, {Wording.Number(allowed / outside!.Value)} outside diameters of the tube");
    }

    /// <summary>The run in another tube, whether or not the tube bends so; null where it cannot be laid at all.</summary>
    /// <param name="layout">The layout as it is.</param>
    /// <param name="run">The run.</param>
    /// <param name="tube">The tube to lay it in.</param>
    public static Run? Relaid(Layout layout, Run run, Tube tube)
    {
        var changed = run with { Tube = tube };
        if (run.Bends.Length == 0) return changed;
        if (run.Route is { StatedRadius: null })
        {
            // Without a radius of its own the way has none to take from such a tube.
            if (tube.MinimumBendRadius is not { } radius || Laid(layout, changed, radius) is not { } laid) return null;
            changed = laid;
        }
        // The loss of a bend has no meaning below half a bore of radius.
        return changed.Bends.Min(bend => bend.Radius.Meters) < 0.5 * tube.Bore.Meters ? null : changed;
    }

    /// <summary>The run with one radius in all its corners, or, where it is given by its length, for all bends that are tighter; null where it cannot be laid.</summary>
    public static Run? WithRadius(Layout layout, Run run, Length radius)
    {
        if (run.Route is null)
        {
            ImmutableArray<Bend> bends = [.. run.Bends.Select(bend => bend.Radius < radius ? bend with { Radius = radius } : bend)];
            // A run given by its length keeps it, and the wider arcs have to fit into it.
            var arcs = bends.Sum(bend => bend.Arcs.Meters);
            return arcs > run.Length.Meters ? null : run with { Bends = bends };
        }
        return Laid(layout, run, radius) is { Route: { } way } laid ? laid with { Route = way with { StatedRadius = radius } } : null;
    }

    /// <summary>Whether no straight of the run's route is negative.</summary>
    public static bool Fits(Run run) => run.Route is not { } route || route.Straights.All(straight => straight >= Length.Zero);

    static Run? Laid(Layout layout, Run run, Length radius)
    {
        if (run.Route is not { } route || layout.Points[run.From].At is not { } from || layout.Points[run.To].At is not { } to) return null;
        return RouteGeometry.TryLay([from, .. route.Corners, to], radius.Meters, out var laid, out _)
            ? run with { Bends = laid.Bends, Length = Length.FromMeters(laid.Length), Route = laid.Route }
            : null;
    }
}
