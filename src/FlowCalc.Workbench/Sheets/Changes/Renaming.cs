using System.Text.Json.Nodes;

namespace FlowCalc.Workbench.Sheets.Changes;

/// <summary>Gives a thing another name, wherever the document names it.</summary>
public static class Renaming
{
    /// <summary>A point, and the runs that begin or end there; not the runs where two points have the old name, as nobody can tell whose they are.</summary>
    /// <param name="root">The document, changed in place.</param>
    /// <param name="point">Index of the point.</param>
    /// <param name="name">Its new name.</param>
    public static void Point(JsonObject root, int point, string name)
    {
        ArgumentNullException.ThrowIfNull(root);
        var part = PartNames.List(root, "points")[point]!.AsObject();
        var old = PartNames.Text(part, "id");
        part["id"] = name;
        if (!PartNames.List(root, "points").Any(other => PartNames.Of(other) == old))
        {
            Follow(PartNames.List(root, "runs"), ["from", "to"], old, name);
            foreach (var readings in TestReadings.Of(root)) Rename(readings, old, name);
        }
    }

    /// <summary>A tube, nozzle or zone of the document's own, and what uses it.</summary>
    /// <param name="root">The document, changed in place.</param>
    /// <param name="kind"><c>tubes</c>, <c>nozzles</c> or <c>zones</c>.</param>
    /// <param name="old">Its name.</param>
    /// <param name="name">Its new name.</param>
    /// <param name="why">Why it cannot be done; null where it was.</param>
    public static void Entry(JsonObject root, string kind, string old, string name, out string? why)
    {
        ArgumentNullException.ThrowIfNull(root);
        var entries = root[kind]!.AsObject();
        why = name.Length == 0 ? "A name has at least one letter." : name != old && entries.ContainsKey(name) ? $"There is a \"{name}\" already." : null;
        if (why is not null) return;
        Rename(entries, old, name);
        var (list, field) = kind switch { "tubes" => ("runs", "tube"), "nozzles" => ("points", "nozzle"), _ => ("points", "zone") };
        Follow(PartNames.List(root, list), [field], old, name);
        if (kind == "zones" && root["coverage"] is JsonObject coverage)
            foreach (var things in coverage.Select(member => member.Value).OfType<JsonObject>())
                Follow(things.Select(thing => thing.Value), ["zone"], old, name);
        if (kind == "tubes" && root["cutting"] is JsonObject cutting && cutting["stock"] is JsonArray stock) Follow(stock, ["tube"], old, name);
    }

    // A name keeps its place among the others.
    static void Rename(JsonObject entries, string old, string name)
    {
        if (!entries.ContainsKey(old) || (name != old && entries.ContainsKey(name))) return;
        var all = entries.ToArray();
        entries.Clear();
        foreach (var (key, value) in all) entries[key == old ? name : key] = value;
    }

    static void Follow(IEnumerable<JsonNode?> parts, string[] fields, string old, string name)
    {
        foreach (var part in parts.OfType<JsonObject>())
            foreach (var field in fields)
                if (PartNames.Text(part, field) == old) part[field] = name;
    }
}
