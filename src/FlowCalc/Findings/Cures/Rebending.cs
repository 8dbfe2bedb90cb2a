using FlowCalc.Layouts;
using UnitsNet;
using UnitSystem = FlowCalc.Quantities.UnitSystem;

namespace FlowCalc.Findings.Cures;

/// <summary>A run with other radii in the same route: length and straights follow.</summary>
static class Rebending
{
    /// <summary>The run in another tube; bends that had the old tube's least radius get the new one's, as the document's default would give them.</summary>
    /// <returns>The run, and why it may not be buildable; null for no doubt.</returns>
    public static (Run Run, string? Doubt) InTube(Run run, Tube tube, UnitSystem units)
    {
        var changed = run with { Tube = tube };
        if (run.Bends.Length == 0) return (changed, null);
        if (run.Route is not null && tube.MinimumBendRadius is { } radius && run.Tube.MinimumBendRadius is { } before && HasRadius(run, before))
            changed = WithRadius(changed, radius);

        if (changed.Route is { } route && route.Straights.Any(straight => straight < Length.Zero))
            return (changed, $"the bends of {Wording.Id(run.Id)} would no longer fit its route");
        if (tube.MinimumBendRadius is { } least && changed.Bends.Min(bend => bend.Radius.Meters) < least.Meters * (1 - 1e-9))
            return (changed, $"a bend of {Wording.Id(run.Id)} would be tighter than the {Wording.Of(least, units)} that the tube allows");
        return (changed, null);
    }

    /// <summary>The run with one radius for all bends that are below it, or, where it has a route, for all bends.</summary>
    public static Run WithRadius(Run run, Length radius)
    {
        var bends = run.Bends.Select(bend => run.Route is null && bend.Radius >= radius ? bend : bend with { Radius = radius }).ToArray();
        if (run.Route is not { } route) return run with { Bends = [.. bends] };

        // A corner turned with setback s = R tan(a/2) takes s from the straights on both sides and replaces 2s of them by an arc R a.
        var straights = route.Straights.Select(straight => straight.Meters).ToArray();
        var length = run.Length.Meters;
        for (var index = 0; index < bends.Length; index++)
        {
            var angle = bends[index].Angle.Radians;
            var wider = bends[index].Radius.Meters - run.Bends[index].Radius.Meters;
            var setback = wider * Math.Tan(angle / 2);
            straights[index] -= setback;
            straights[index + 1] -= setback;
            length -= 2 * setback - wider * angle;
        }
        return run with
        {
            Bends = [.. bends],
            Length = Length.FromMeters(length),
            Route = route with { Straights = [.. straights.Select(straight => Length.FromMeters(straight))] },
        };
    }

    static bool HasRadius(Run run, Length radius) => run.Bends.All(bend => Math.Abs(bend.Radius.Meters - radius.Meters) <= 1e-9 * radius.Meters);
}
