using System.Text.Json.Nodes;
using FlowCalc.Layouts;
using FlowCalc.Layouts.Editing;
using FlowCalc.Workbench.Sheets.Changes;

namespace FlowCalc.Workbench.Desks;

/// <summary>Does with a thing on the drawing what the tool in hand does.</summary>
public static class Pointing
{
    /// <summary>Path of a point in changes.</summary>
    public static string PathOf(LayoutPoint point)
    {
        ArgumentNullException.ThrowIfNull(point);
        return EditPath.Of("points", point.Id);
    }

    /// <summary>Path of a run in changes.</summary>
    public static string PathOf(Run run)
    {
        ArgumentNullException.ThrowIfNull(run);
        return EditPath.Of("runs", run.Id);
    }

    /// <summary>Points at a thing.</summary>
    /// <param name="desk">The desk.</param>
    /// <param name="path">Path of a point or run.</param>
    public static void At(Desk desk, string path)
    {
        ArgumentNullException.ThrowIfNull(desk);
        if (desk.Tool == Tool.Choose) desk.Choose(path);
        else if (desk.Sheet.Layout is not { } layout) desk.Tell("The document has faults: mend them first, the drawing still shows it without them.");
        else
        {
            var (point, run) = Find(layout, path);
            if (desk.Tool == Tool.AddNozzle) Add(desk, layout, point, run);
            else Remove(desk, layout, point, run);
        }
    }

    /// <summary>Adds the first nozzle, on a run from the supply.</summary>
    public static void AddFirst(Desk desk)
    {
        ArgumentNullException.ThrowIfNull(desk);
        Make(desk, "added a nozzle", root => (NewNozzle.AtSupply(root, out var why), why));
    }

    /// <summary>The point or the run of a path; -1 for none.</summary>
    public static (int Point, int Run) Find(Layout layout, string? path)
    {
        ArgumentNullException.ThrowIfNull(layout);
        for (var at = 0; at < layout.Points.Length; at++)
            if (PathOf(layout.Points[at]) == path) return (at, -1);
        for (var at = 0; at < layout.Runs.Length; at++)
            if (PathOf(layout.Runs[at]) == path) return (-1, at);
        return (-1, -1);
    }

    static void Add(Desk desk, Layout layout, int point, int run) => Make(desk, "added a nozzle", root =>
    {
        string? why;
        var path = run >= 0 ? NewNozzle.OnRun(root, layout, run, out why)
            : point >= 0 && layout.Points[point] is SupplyPoint ? NewNozzle.AtSupply(root, out why)
            : point >= 0 && layout.Points[point] is Nozzle ? NewNozzle.AtNozzle(root, layout, point, out why)
            : Nowhere(out why);
        return (path, why);
    });

    static void Remove(Desk desk, Layout layout, int point, int run) => Make(desk, "took a part away", root =>
    {
        string? why = null;
        if (run >= 0) Removal.OfRun(root, layout, run);
        else if (point >= 0) Removal.OfPoint(root, layout, point, out why);
        return (null, why);
    });

    static void Make(Desk desk, string what, Func<JsonObject, (string? Path, string? Why)> change)
    {
        string? path = null;
        var wasSound = desk.Sheet.Layout is not null;
        if (desk.TryEdit(what, root =>
        {
            (path, var why) = change(root);
            return why;
        }, sheet => path is not null && wasSound && sheet.Faults is [var fault, ..] ? $"That cannot be added there, as it would be a fault: {fault.Message}." : null))
            desk.Choose(path);
    }

    static string? Nowhere(out string why)
    {
        why = "A nozzle goes on a run, at the supply or at another nozzle; point at one of those.";
        return null;
    }
}
