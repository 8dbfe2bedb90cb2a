using System.Collections.Immutable;
using System.Text.Json;
using UnitsNet;

namespace FlowCalc.Layouts.Reading;

/// <summary>Reads the way of a run whose points have places.</summary>
static class RunRouteReader
{
    /// <summary>The way; null where something is wrong.</summary>
    public static RunWay? Read(ReadingContext context, in Members<RunField> members, in PointDraft from, in PointDraft to, Tube? tube)
    {
        const string follows = "both its points have places (at), from which it follows; leave it out, or leave out the places";
        members.Refuses(context, RunField.Length, follows);
        members.Refuses(context, RunField.Rise, follows);
        members.Refuses(context, RunField.Bends, follows);
        var before = context.Faults.Count;
        var corners = Corners(context, members[RunField.Via]);
        var given = TubeReader.BendRadius(context, members[RunField.BendRadius], tube?.Bore.Meters ?? double.NaN);
        if (context.Faults.Count > before || from.At is not { } start || to.At is not { } end || tube is null) return null;

        Length? stated = double.IsFinite(given) ? Length.FromMeters(given) : null;
        var radius = (stated ?? tube.MinimumBendRadius)?.Meters;
        if (RouteGeometry.TryLay([start, .. corners, end], radius, out var laid, out var flaw))
        {
            if (laid.Length <= Sizes.RunLength.Most) return new RunWay(laid.Length, laid.Rise, laid.Bends, laid.Route with { StatedRadius = stated });
            context.Faults.Add(members.Owner, $"its way is {laid.Length:0.###} m long: {Sizes.RunLength.What} is {Sizes.RunLength.Words}");
            return null;
        }
        Report(context, members, flaw, corners.Length);
        return null;
    }

    /// <summary>The corners between the ends that could be read.</summary>
    public static ImmutableArray<Place> Corners(ReadingContext context, JsonValue element)
    {
        if (element.ValueKind is JsonValueKind.Undefined) return [];
        if (element.ValueKind is not JsonValueKind.Array)
        {
            context.Faults.Add(element, $"read {Said.Value(element)}: via is an array of places, each three lengths [x, y, z]");
            return [];
        }
        var corners = ImmutableArray.CreateBuilder<Place>(element.GetArrayLength());
        foreach (var entry in element.EnumerateArray())
        {
            context.Pass(corners.Count);
            if (SpaceValue.Place(context, entry) is { } corner) corners.Add(corner);
        }
        return corners.DrainToImmutable();
    }

    static void Report(ReadingContext context, in Members<RunField> members, RouteFlaw flaw, int corners)
    {
        // Place 0 is the start and the last the end; a corner between them has its own element.
        var at = flaw.Place >= 1 && flaw.Place <= corners ? members[RunField.Via][flaw.Place - 1] : members.Owner;
        switch (flaw.Kind)
        {
            case RouteFlawKind.SamePlace:
                context.Faults.Add(at, $"{Place(flaw.Place, corners)} is where {Place(flaw.Place - 1, corners)} is: places that follow each other are 0.001 mm apart or more");
                break;
            case RouteFlawKind.TurnsBack:
                context.Faults.Add(at, $"the way turns back on itself by {flaw.Size * 180 / Math.PI:0.##}° at {Place(flaw.Place, corners)}: a corner turns by less than 179.9°");
                break;
            case RouteFlawKind.NoRadius:
                context.Faults.Add(members.Owner, "bendRadius", "missing: the way has a corner, and its tube states no minimumBendRadius to take instead");
                break;
            case RouteFlawKind.NoRoom:
                context.Faults.Add(members.Owner, $"the bends at its corners take {flaw.Size:0.######} m more than the way has between its places; give a smaller bendRadius or places further apart");
                break;
            default:
                throw new InvalidOperationException($"Unknown flaw {flaw.Kind}.");
        }
    }

    static string Place(int place, int corners) => place == 0 ? "the run's start" : place > corners ? "the run's end" : $"corner {place}";
}
