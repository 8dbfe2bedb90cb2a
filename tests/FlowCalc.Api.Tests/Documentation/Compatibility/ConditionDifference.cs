using System.Text.Json.Nodes;

namespace FlowCalc.Api.Tests.Documentation.Compatibility;

/// <summary>What breaks in the conditions on a value that a caller sends: which of its fields go together, what one asks of another.</summary>
/// <remarks>Whether a changed condition lets through all that the old one did is not worked out: it is told, to be looked at. What it says of fields that are new is no change.</remarks>
static class ConditionDifference
{
    static readonly string[] Keywords = ["not", "if", "then", "else", "allOf", "dependentRequired", "dependentSchemas"];

    /// <summary>Differences between the conditions of two schemas.</summary>
    /// <param name="released">The one that callers know.</param>
    /// <param name="present">The one that there is.</param>
    /// <param name="fields">The fields that callers know.</param>
    public static IEnumerable<string> Of(JsonObject released, JsonObject present, JsonObject fields)
    {
        foreach (var keyword in Keywords)
        {
            if (present[keyword] is not { } condition) continue;
            var now = Without(condition.DeepClone(), name => !fields.ContainsKey(name));
            if (released[keyword] is not { } before) yield return $"there is a condition ({keyword}) where none was";
            else if (!JsonNode.DeepEquals(Without(before.DeepClone(), name => !fields.ContainsKey(name)), now)) yield return $"its condition ({keyword}) has changed: look whether it lets through all that it did";
        }
    }

    // Takes out what is said of fields by themselves; that they are required stays.
    static JsonNode Without(JsonNode node, Func<string, bool> isNew)
    {
        if (node is JsonArray items)
            foreach (var item in items.OfType<JsonNode>()) Without(item, isNew);
        if (node is not JsonObject schema) return node;
        schema.Remove("description");
        if (schema["properties"] is JsonObject fields)
        {
            foreach (var name in fields.Select(field => field.Key).Where(isNew).ToList()) fields.Remove(name);
            if (fields.Count == 0) schema.Remove("properties");
        }
        foreach (var held in schema.Select(member => member.Value).OfType<JsonNode>().ToList()) Without(held, isNew);
        return node;
    }
}
