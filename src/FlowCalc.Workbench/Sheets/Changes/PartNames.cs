using System.Text.Json.Nodes;
using FlowCalc.Layouts;

namespace FlowCalc.Workbench.Sheets.Changes;

/// <summary>Points and runs of a document by their names.</summary>
static class PartNames
{
    /// <summary>The first of N1, N2, … that no entry of a list has.</summary>
    public static string Free(JsonArray entries, string letter)
    {
        var taken = entries.Select(Of).ToHashSet(StringComparer.Ordinal);
        for (var number = 1; ; number++)
            if (!taken.Contains(letter + number)) return letter + number;
    }

    /// <summary>The id of a point or run as the document has it; of a run without one <c>from-to</c>.</summary>
    public static string Of(JsonNode? entry) => entry is not JsonObject part ? "" : Text(part, "id") is { Length: > 0 } id ? id : part.ContainsKey("from") ? $"{Text(part, "from")}-{Text(part, "to")}" : "";

    /// <summary>A text of an entry; empty where there is none.</summary>
    public static string Text(JsonObject part, string name) => part[name] is JsonValue value && value.TryGetValue<string>(out var text) ? text : "";

    /// <summary>Index of the run that feeds a point other than the supply.</summary>
    public static int Feeding(Layout layout, int point) => Enumerable.Range(0, layout.Runs.Length).First(run => layout.Runs[run].To == point);

    /// <summary>A list of the document, made where there is none.</summary>
    public static JsonArray List(JsonObject root, string name)
    {
        if (root[name] is JsonArray entries) return entries;
        var made = new JsonArray();
        root[name] = made;
        return made;
    }
}
