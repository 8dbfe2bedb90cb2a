using System.Text.Json.Nodes;

namespace FlowCalc.Api.Tests.Documentation.Compatibility;

/// <summary>What breaks in what a call takes or answers, down to the last field. A component is looked at once for each side.</summary>
/// <param name="released">The schemas that callers know.</param>
/// <param name="present">The schemas as they are.</param>
sealed class SchemaDifference(ContractSchemas released, ContractSchemas present)
{
    readonly HashSet<(string?, string?, Side)> seen = [];
    readonly List<string> found = [];

    /// <summary>Every difference so far, in words.</summary>
    public IReadOnlyList<string> Found => found;

    /// <summary>Tells a difference beside those of schemas.</summary>
    public void Tell(string place, string what) => found.Add($"{place}: {what}.");

    /// <summary>Compares two schemas and all that they hold.</summary>
    /// <param name="place">Where they are, for the words.</param>
    /// <param name="before">The one that callers know; null where anything fits.</param>
    /// <param name="now">The one that there is; null where anything fits.</param>
    /// <param name="side">Who writes the value.</param>
    public void Compare(string place, JsonNode? before, JsonNode? now, Side side)
    {
        if ((before is null && now is null) || Schema(before) is not { } old || Schema(now) is not { } current) return;
        var names = (ContractSchemas.NameOf(old), ContractSchemas.NameOf(current));
        if (names is not (null, null))
        {
            // A reference may have conditions of its own beside it.
            if (side == Side.Request) TellAll(place, ConditionDifference.Of(old, current, FieldsOf(released.Of(old))));
            // What a caller sends and an answer gives back is what a caller sends.
            if (seen.Contains((names.Item1, names.Item2, Side.Request)) || !seen.Add((names.Item1, names.Item2, side))) return;
            place = $"{names.Item1 ?? place} ({(side == Side.Request ? "taken" : "answered")})";
        }
        var (alternatives, others) = (released.Alternatives(old), present.Alternatives(current));
        if (alternatives.Count > 1 || others.Count > 1)
        {
            CompareChoice(place, alternatives, others, side);
            if (side == Side.Request) TellAll(place, ConditionDifference.Of(released.Of(old), present.Of(current), []));
        }
        else CompareStated(place, released.Of(alternatives[0]), present.Of(others[0]), side);
    }

    void CompareStated(string place, JsonObject old, JsonObject current, Side side)
    {
        TellAll(place, ValueDifference.Of(old, current, side));
        if (side == Side.Request) TellAll(place, ConditionDifference.Of(old, current, FieldsOf(old)));
        CompareFields(place, old, current, side);
        Compare(place + "[]", old["items"], current["items"], side);
        Compare(place + ".*", old["additionalProperties"], current["additionalProperties"], side);
        Compare(place + ", its names", old["propertyNames"], current["propertyNames"], side);
    }

    void CompareFields(string place, JsonObject old, JsonObject current, Side side)
    {
        var (fields, others) = (FieldsOf(old), FieldsOf(current));
        var (required, nowRequired) = (Required(old), Required(current));
        var isOpen = IsOpen(current);
        foreach (var (name, field) in fields)
        {
            if (others.ContainsKey(name)) Compare($"{place}.{name}", field, others[name], side);
            else if (side == Side.Answer || !isOpen) Tell($"{place}.{name}", "the field is gone");
            if (side == Side.Answer && others.ContainsKey(name) && required.Contains(name) && !nowRequired.Contains(name)) Tell($"{place}.{name}", "the field may be left out");
        }
        if (side == Side.Answer) return;
        foreach (var name in nowRequired.Except(required)) Tell($"{place}.{name}", "the field is required");
        if (IsOpen(old) && !isOpen) Tell(place, "it takes no other fields any more");
    }

    // Members of a choice go in pairs by what they are: the same component, else the same type.
    void CompareChoice(string place, IReadOnlyList<JsonObject> old, IReadOnlyList<JsonObject> current, Side side)
    {
        var left = current.ToList();
        foreach (var member in old)
        {
            var pair = left.Find(other => Key(released, member) == Key(present, other));
            if (pair is not null)
            {
                left.Remove(pair);
                Compare(place, member, pair, side);
            }
            else if (side == Side.Request) Tell(place, $"it takes {Key(released, member)} no more");
        }
        if (side == Side.Answer)
            foreach (var member in left) Tell(place, $"it may be {Key(present, member)}, which is new");
    }

    static string Key(ContractSchemas schemas, JsonObject member) => ContractSchemas.NameOf(member) ?? schemas.Of(member)["type"]?.ToJsonString().Trim('"') ?? "anything";

    // Where nothing is said of a part, or true, anything fits it; where false is said, nothing.
    static JsonObject? Schema(JsonNode? node) => node switch
    {
        JsonObject schema => schema,
        JsonValue value when !value.GetValue<bool>() => null,
        _ => [],
    };

    static JsonObject FieldsOf(JsonObject schema) => schema["properties"] as JsonObject ?? [];

    static HashSet<string> Required(JsonObject schema) => [.. (schema["required"] as JsonArray ?? []).Select(name => name!.GetValue<string>())];

    static bool IsOpen(JsonObject schema) => schema["additionalProperties"] is not JsonValue value || value.GetValue<bool>();

    void TellAll(string place, IEnumerable<string> differences)
    {
        foreach (var difference in differences) Tell(place, difference);
    }
}
