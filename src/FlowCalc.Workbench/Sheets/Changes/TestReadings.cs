using System.Text.Json.Nodes;

namespace FlowCalc.Workbench.Sheets.Changes;

/// <summary>What a document says was read at points in a test of the built system.</summary>
static class TestReadings
{
    static readonly string[] ByPoint = ["collected", "flows", "pressures"];

    /// <summary>The readings that stand by the names of points.</summary>
    public static IEnumerable<JsonObject> Of(JsonObject root) =>
        root["measured"] is JsonObject measured ? ByPoint.Select(name => measured[name]).OfType<JsonObject>() : [];

    /// <summary>Takes away what was read at points that are gone; a test of which nothing is left goes too.</summary>
    /// <param name="root">The document, changed in place.</param>
    /// <param name="gone">Names of the points.</param>
    public static void Forget(JsonObject root, IReadOnlyCollection<string> gone)
    {
        var readings = Of(root).ToArray();
        if (!readings.Any(one => gone.Any(one.ContainsKey))) return;
        foreach (var one in readings)
            foreach (var name in gone) one.Remove(name);
        var measured = root["measured"]!.AsObject();
        foreach (var name in ByPoint)
            if (measured[name] is JsonObject { Count: 0 }) measured.Remove(name);
        if (!ByPoint.Append("dischargeTime").Any(measured.ContainsKey)) root.Remove("measured");
    }
}
