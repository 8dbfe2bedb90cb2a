using System.Text.Json.Nodes;
using FlowCalc.Layouts;

namespace FlowCalc.Workbench.Sheets.Changes;

/// <summary>Takes a nozzle, or a run with all that hangs on it, away. A tee that has one leg left becomes tube again, or a reducer where the tubes differ.</summary>
public static class Removal
{
    // Below it a tube goes straight on, rad; as the reading of layouts has it.
    const double LeastTurn = 0.1 * Math.PI / 180;

    /// <summary>Takes a run and everything behind it away.</summary>
    /// <param name="root">The document, changed in place.</param>
    /// <param name="layout">The same, read.</param>
    /// <param name="run">Index of the run.</param>
    public static void OfRun(JsonObject root, Layout layout, int run)
    {
        ArgumentNullException.ThrowIfNull(root);
        ArgumentNullException.ThrowIfNull(layout);
        // What has one way out and loses it leads nowhere and goes too.
        while (layout.Points[layout.Runs[run].From] is Reducer or Junction && layout.Runs.Count(other => other.From == layout.Runs[run].From) == 1)
            run = PartNames.Feeding(layout, layout.Runs[run].From);
        var (lostRuns, lostPoints) = (new HashSet<int>(), new HashSet<int>());
        for (var waiting = new Stack<int>([run]); waiting.TryPop(out var at);)
        {
            lostRuns.Add(at);
            lostPoints.Add(layout.Runs[at].To);
            for (var next = 0; next < layout.Runs.Length; next++)
                if (layout.Runs[next].From == layout.Runs[at].To) waiting.Push(next);
        }
        var from = layout.Runs[run].From;
        var left = Enumerable.Range(0, layout.Runs.Length).Where(at => layout.Runs[at].From == from && !lostRuns.Contains(at)).ToArray();
        if (layout.Points[from] is Tee && left is [var only]) Dissolve(root, layout, from, only, lostRuns, lostPoints);
        TestReadings.Forget(root, [.. lostPoints.Select(at => layout.Points[at].Id)]);
        Drop(PartNames.List(root, "runs"), lostRuns);
        Drop(PartNames.List(root, "points"), lostPoints);
    }

    /// <summary>Takes a nozzle or a cap away, with its run.</summary>
    /// <param name="root">The document, changed in place.</param>
    /// <param name="layout">The same, read.</param>
    /// <param name="point">Index of the point.</param>
    /// <param name="why">Why it cannot be done; null where it was.</param>
    public static void OfPoint(JsonObject root, Layout layout, int point, out string? why)
    {
        ArgumentNullException.ThrowIfNull(layout);
        var isEnd = layout.Runs.All(run => run.From != point);
        why = isEnd && layout.Points[point] is not SupplyPoint ? null : $"{layout.Points[point].Id} leads on: take one of the runs that leave it away.";
        if (why is null) OfRun(root, layout, PartNames.Feeding(layout, point));
    }

    static void Dissolve(JsonObject root, Layout layout, int tee, int leaving, HashSet<int> lostRuns, HashSet<int> lostPoints)
    {
        var feeding = PartNames.Feeding(layout, tee);
        var (runs, points) = (PartNames.List(root, "runs"), PartNames.List(root, "points"));
        var (first, second) = (runs[feeding]!.AsObject(), runs[leaving]!.AsObject());
        second.Remove("leaves");
        if (Joined(first, second, points[tee]!.AsObject(), layout, feeding, leaving))
        {
            lostRuns.Add(leaving);
            lostPoints.Add(tee);
            return;
        }
        var point = points[tee]!.AsObject();
        point["kind"] = "reducer";
        foreach (var name in (string[])["fedThrough", "body"]) point.Remove(name);
    }

    // Only runs of the same tube that hold nothing but their way become one; nothing that somebody wrote is lost.
    static bool Joined(JsonObject first, JsonObject second, JsonObject tee, Layout layout, int feeding, int leaving)
    {
        string[] plain = ["id", "from", "to", "leaves", "tube", "bore", "roughness", "length", "rise", "bends", "via", "bendRadius"];
        var (before, behind) = (layout.Runs[feeding], layout.Runs[leaving]);
        if (before.Tube != behind.Tube || second.Any(member => !plain.Contains(member.Key)) || first["bendRadius"]?.ToJsonString() != second["bendRadius"]?.ToJsonString()) return false;
        if (before.Route is not null)
        {
            JsonNode?[] corner = before.Route.EndDirection.AngleTo(behind.Route!.StartDirection) < LeastTurn ? [] : [tee["at"]];
            // Without a radius the tube cannot be bent where the tee was.
            if (corner.Length > 0 && before.Tube.MinimumBendRadius is null && !first.ContainsKey("bendRadius")) return false;
            JsonNode?[] corners = [.. first["via"] as JsonArray ?? [], .. corner, .. second["via"] as JsonArray ?? []];
            if (corners.Length > 0) first["via"] = new JsonArray([.. corners.Select(place => place?.DeepClone())]);
        }
        else
        {
            first["length"] = PlaceText.Of(before.Length + behind.Length);
            if ((before.Rise + behind.Rise).Meters != 0) first["rise"] = PlaceText.Of(before.Rise + behind.Rise);
            else first.Remove("rise");
            if (second["bends"] is JsonArray more) first["bends"] = new JsonArray([.. (first["bends"] as JsonArray ?? []).Concat(more).Select(bend => bend?.DeepClone())]);
        }
        first["to"] = second["to"]?.DeepClone();
        return true;
    }

    static void Drop(JsonArray entries, HashSet<int> lost)
    {
        foreach (var at in lost.OrderDescending()) entries.RemoveAt(at);
    }
}
