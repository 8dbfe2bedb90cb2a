using System.Text.Json.Nodes;
using FlowCalc.Layouts;
using UnitsNet;

namespace FlowCalc.Workbench.Sheets.Changes;

/// <summary>Puts a tee in the middle of a run.</summary>
static class RunSplit
{
    // What lies along a run at places of its own cannot be shared out without asking.
    static readonly string[] Along = ["clips", "hotPlaces"];

    static readonly string[] Shared = ["tube", "bore", "roughness", "bendRadius"];

    /// <summary>Why a run cannot be parted; null where it can.</summary>
    public static string? Refuses(JsonObject root, Layout layout, int run)
    {
        var parts = PartNames.List(root, "runs")[run]!.AsObject();
        if (Along.FirstOrDefault(parts.ContainsKey) is { } named) return $"{layout.Runs[run].Id} has {named} at places along it; take them off before a tee goes in.";
        return layout.Runs[run].Length.Meters > 0 ? null : $"{layout.Runs[run].Id} has no length to put a tee in.";
    }

    /// <summary>Parts a run: it keeps its name up to the tee, and a new run goes on from there.</summary>
    /// <param name="root">The document.</param>
    /// <param name="layout">The same, read.</param>
    /// <param name="run">Index of the run.</param>
    /// <returns>Id of the tee; its place, and the direction of the tube there, where the run has a way in space.</returns>
    public static (string Tee, (Place Place, Direction Along)? At) Make(JsonObject root, Layout layout, int run)
    {
        var (points, runs) = (PartNames.List(root, "points"), PartNames.List(root, "runs"));
        var (whole, tee) = (layout.Runs[run], PartNames.Free(points, "T"));
        var before = runs[run]!.AsObject();
        var behind = new JsonObject { ["id"] = PartNames.Free(runs, "R"), ["from"] = tee, ["to"] = layout.Points[whole.To].Id, ["leaves"] = "run" };
        if (!before.ContainsKey("id")) before["id"] = whole.Id;
        foreach (var name in Shared)
            if (before[name] is { } value) behind[name] = value.DeepClone();
        before["to"] = tee;
        var point = new JsonObject { ["id"] = tee, ["kind"] = "tee", ["fedThrough"] = "run" };
        var (first, at) = whole.Route is null ? ByLength(before, behind, whole) : ByPlace(before, behind, layout, whole);
        if (at is var (place, _)) point["at"] = PlaceText.Of(place);
        ShareFittings(before, behind, whole, Length.FromMeters(first));
        points.Insert(whole.To, point);
        runs.Insert(run + 1, behind);
        return (tee, at);
    }

    // Its bends stay before the tee, and the straight that is left is shared.
    static (double First, (Place, Direction)? At) ByLength(JsonObject before, JsonObject behind, Run whole)
    {
        var arcs = whole.Bends.Sum(bend => bend.Arcs.Meters);
        var first = PlaceText.Rounded(Length.FromMeters(arcs + (whole.Length.Meters - arcs) / 2)).Meters;
        before["length"] = PlaceText.Of(Length.FromMeters(first));
        behind["length"] = PlaceText.Of(whole.Length - Length.FromMeters(first));
        if (whole.Rise.Meters == 0) return (first, null);
        var part = first / whole.Length.Meters;
        before["rise"] = PlaceText.Of(whole.Rise * part);
        behind["rise"] = PlaceText.Of(whole.Rise * (1 - part));
        return (first, null);
    }

    // In the middle of the longest straight, where there is room for it.
    static (double First, (Place, Direction)? At) ByPlace(JsonObject before, JsonObject behind, Layout layout, Run whole)
    {
        Place[] way = [layout.Points[whole.From].At!.Value, .. whole.Route!.Corners, layout.Points[whole.To].At!.Value];
        var longest = Enumerable.Range(0, way.Length - 1).MaxBy(leg => PlaceText.Between(way[leg], way[leg + 1]).Length);
        var (start, end) = (way[longest], way[longest + 1]);
        var corners = before["via"] as JsonArray ?? [];
        Via(before, corners.Take(longest));
        Via(behind, corners.Skip(longest));
        var middle = new Place(PlaceText.Rounded((start.X + end.X) / 2), PlaceText.Rounded((start.Y + end.Y) / 2), PlaceText.Rounded((start.Z + end.Z) / 2));
        var along = PlaceText.Between(start, end);
        return (Developed([.. way[..(longest + 1)], middle], whole), (middle, along));
    }

    // Each corner is shorter by what its arc cuts off: 2·R·tan(θ/2) − R·θ (plane geometry).
    static double Developed(Place[] way, Run whole)
    {
        var length = 0.0;
        for (var leg = 0; leg + 1 < way.Length; leg++) length += PlaceText.Between(way[leg], way[leg + 1]).Length;
        if (whole.Bends.IsEmpty) return length;
        for (var corner = 1; corner + 1 < way.Length; corner++)
        {
            var turn = PlaceText.Between(way[corner - 1], way[corner]).AngleTo(PlaceText.Between(way[corner], way[corner + 1]));
            length -= whole.Bends[0].Radius.Meters * (2 * Math.Tan(turn / 2) - turn);
        }
        return length;
    }

    // As they were typed, to the letter.
    static void Via(JsonObject run, IEnumerable<JsonNode?> corners)
    {
        JsonNode?[] kept = [.. corners.Select(corner => corner?.DeepClone())];
        run.Remove("via");
        if (kept.Length > 0) run["via"] = new JsonArray(kept);
    }

    // Those without a place stay before the tee.
    static void ShareFittings(JsonObject before, JsonObject behind, Run whole, Length first)
    {
        if (before["fittings"] is not JsonArray fittings) return;
        var moved = new JsonArray();
        for (var at = whole.Fittings.Length - 1; at >= 0; at--)
        {
            if (whole.Fittings[at].At is not { } place || place <= first) continue;
            var fitting = fittings[at]!.AsObject();
            fittings.RemoveAt(at);
            fitting["at"] = PlaceText.AtMost(place - first);
            moved.Insert(0, fitting);
        }
        if (moved.Count > 0) behind["fittings"] = moved;
        if (fittings.Count == 0) before.Remove("fittings");
    }
}
