using System.Text.Json.Nodes;
using FlowCalc.Layouts;
using FlowCalc.Layouts.Editing;
using FlowCalc.Quantities;
using UnitsNet;

namespace FlowCalc.Workbench.Sheets.Changes;

/// <summary>Adds a nozzle where somebody points: at the end of the supply, on a run (which gets a tee), or at a nozzle (which becomes two).</summary>
public static class NewNozzle
{
    // Metres: enough to be seen and grabbed on the drawing; meant to be replaced.
    const double Reach = 0.3, FirstHeight = 1;

    // About the sine of 45°: along an axis rather than across it.
    const double Steep = 0.7;

    const string FirstLength = "1 m", BranchLength = "0.5 m";

    /// <summary>The first nozzle, on a run from the supply.</summary>
    /// <param name="root">The document, changed in place.</param>
    /// <param name="why">Why it cannot be done; null where it was.</param>
    /// <returns>Path of the nozzle; null where it cannot be done.</returns>
    public static string? AtSupply(JsonObject root, out string? why)
    {
        ArgumentNullException.ThrowIfNull(root);
        var (points, runs) = (PartNames.List(root, "points"), PartNames.List(root, "runs"));
        var supply = points.OfType<JsonObject>().FirstOrDefault(point => PartNames.Text(point, "kind") == "supply");
        why = supply is null ? "There is no supply to begin at; add a point of the kind supply first."
            : runs.OfType<JsonObject>().Any(run => PartNames.Text(run, "from") == PartNames.Of(supply)) ? "A run leaves the supply already; point at that run to put a tee in."
            : (root["tubes"] as JsonObject)?.Count > 0 ? Lacks(root) : "There is no tube in stock; add one under Stock first.";
        if (why is not null) return null;
        var leg = new JsonObject();
        if (supply!["at"] is null) leg["length"] = FirstLength;
        return Add(root, PartNames.Of(supply), leg, supply["at"] is JsonArray at ? Above(at) : null);
    }

    // Places are texts here, which nobody has checked; one that cannot be read is left for the reader to tell of.
    static JsonArray Above(JsonArray at)
    {
        var moved = at.DeepClone().AsArray();
        if (moved.Count == 3 && moved[2] is JsonValue up && up.TryGetValue<string>(out var text) && QuantityReader.TryRead(text, QuantityKind.Length, out var height, out _))
            moved[2] = PlaceText.Of(Length.FromMeters(height.Si + FirstHeight));
        return moved;
    }

    // A new nozzle is like one that is there, or from stock.
    static string? Lacks(JsonObject root) =>
        (root["nozzles"] as JsonObject)?.Count > 0 || PartNames.List(root, "points").OfType<JsonObject>().Any(point => PartNames.Text(point, "kind") == "nozzle")
            ? null
            : "There is no nozzle in stock; add one under Stock first.";

    /// <summary>A nozzle on a branch of its own from the middle of a run.</summary>
    /// <param name="root">The document, changed in place.</param>
    /// <param name="layout">The same, read.</param>
    /// <param name="run">Index of the run.</param>
    /// <param name="why">Why it cannot be done; null where it was.</param>
    /// <returns>Path of the nozzle; null where it cannot be done.</returns>
    public static string? OnRun(JsonObject root, Layout layout, int run, out string? why)
    {
        ArgumentNullException.ThrowIfNull(root);
        ArgumentNullException.ThrowIfNull(layout);
        why = Lacks(root) ?? RunSplit.Refuses(root, layout, run);
        if (why is not null) return null;
        var (tee, at) = RunSplit.Make(root, layout, run);
        var leg = LegOf(root, layout, run);
        leg["leaves"] = "branch";
        return Add(root, tee, leg, at is var (place, along) ? PlaceText.Of(Math.Abs(along.Z) > Steep * along.Length ? place.Moved(0, Reach, 0) : place.Moved(0, 0, Reach)) : null);
    }

    /// <summary>Two nozzles where there was one: the run to it now feeds a tee through its branch, and both are alike from there.</summary>
    /// <param name="root">The document, changed in place.</param>
    /// <param name="layout">The same, read.</param>
    /// <param name="point">Index of the nozzle.</param>
    /// <param name="why">Why it cannot be done; null where it was.</param>
    /// <returns>Path of the new nozzle; null where it cannot be done.</returns>
    public static string? AtNozzle(JsonObject root, Layout layout, int point, out string? why)
    {
        ArgumentNullException.ThrowIfNull(root);
        ArgumentNullException.ThrowIfNull(layout);
        why = layout.Points[point] is Nozzle ? null : $"{layout.Points[point].Id} is no nozzle.";
        if (why is not null) return null;
        var run = PartNames.Feeding(layout, point);
        var (points, runs) = (PartNames.List(root, "points"), PartNames.List(root, "runs"));
        var (old, at) = (layout.Points[point], layout.Points[point].At);
        var tee = PartNames.Free(points, "T");
        var bullhead = new JsonObject { ["id"] = tee, ["kind"] = "tee", ["fedThrough"] = "branch" };
        if (at is { } place) bullhead["at"] = PlaceText.Of(place);
        var (first, second) = (LegOf(root, layout, run), LegOf(root, layout, run));
        var fed = runs[run]!.AsObject();
        if (!fed.ContainsKey("id")) fed["id"] = layout.Runs[run].Id;
        fed["to"] = tee;
        first["id"] = PartNames.Free(runs, "R");
        first["from"] = tee;
        first["to"] = old.Id;
        // To both sides of the way that leads there.
        var (x, y) = layout.Runs[run].Route is { } route && Math.Abs(route.EndDirection.Y) > Steep ? (Reach, 0.0) : (0.0, Reach);
        if (at is { } here) points[point]!.AsObject()["at"] = PlaceText.Of(here.Moved(x, y, 0));
        points.Insert(point, bullhead);
        runs.Insert(run + 1, first);
        return Add(root, tee, second, at is { } there ? PlaceText.Of(there.Moved(-x, -y, 0)) : null, points[point + 1]!.AsObject());
    }

    // A run like the one that it hangs on.
    static JsonObject LegOf(JsonObject root, Layout layout, int run)
    {
        var (leg, like) = (new JsonObject(), PartNames.List(root, "runs")[run]!.AsObject());
        foreach (var name in (string[])["tube", "bore", "roughness"])
            if (like[name] is { } value) leg[name] = value.DeepClone();
        if (layout.Runs[run].Route is null) leg["length"] = BranchLength;
        return leg;
    }

    // A nozzle as the last one, with the leg that leads to it.
    static string Add(JsonObject root, string from, JsonObject leg, JsonArray? at, JsonObject? like = null)
    {
        var (points, runs) = (PartNames.List(root, "points"), PartNames.List(root, "runs"));
        var id = PartNames.Free(points, "N");
        like ??= points.OfType<JsonObject>().LastOrDefault(point => PartNames.Text(point, "kind") == "nozzle");
        var nozzle = new JsonObject { ["id"] = id, ["kind"] = "nozzle" };
        foreach (var name in (string[])["nozzle", "kFactor", "orifice", "zone"])
            if (like?[name] is { } value) nozzle[name] = value.DeepClone();
        if (like is null && (root["nozzles"] as JsonObject)?.FirstOrDefault().Key is { } stocked) nozzle["nozzle"] = stocked;
        if (at is not null) nozzle["at"] = at;
        points.Add(nozzle);
        if (!leg.ContainsKey("tube") && !leg.ContainsKey("bore") && (root["tubes"] as JsonObject)?.FirstOrDefault().Key is { } tube) leg["tube"] = tube;
        var run = new JsonObject { ["id"] = leg["id"]?.DeepClone() ?? PartNames.Free(runs, "R"), ["from"] = from, ["to"] = id };
        foreach (var (name, value) in leg.ToArray())
            if (!run.ContainsKey(name)) run[name] = value?.DeepClone();
        runs.Add(run);
        return EditPath.Of("points", id);
    }
}
