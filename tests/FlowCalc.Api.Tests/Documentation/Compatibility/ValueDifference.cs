using System.Text.Json.Nodes;

namespace FlowCalc.Api.Tests.Documentation.Compatibility;

/// <summary>What breaks in a single value: its type, its format, its words, its bounds.</summary>
static class ValueDifference
{
    // Each with +1 where a greater bound is the tighter one.
    static readonly (string Keyword, int Tighter)[] Bounds =
        [("minimum", 1), ("exclusiveMinimum", 1), ("minLength", 1), ("minItems", 1), ("minProperties", 1), ("maximum", -1), ("exclusiveMaximum", -1), ("maxLength", -1), ("maxItems", -1), ("maxProperties", -1)];

    public static IEnumerable<string> Of(JsonObject released, JsonObject present, Side side) =>
        [.. Types(released, present, side), .. Format(released, present), .. Words(released, present, side), .. side == Side.Request ? Narrowed(released, present) : []];

    static IEnumerable<string> Types(JsonObject released, JsonObject present, Side side)
    {
        var (before, now) = (TypesOf(released), TypesOf(present));
        var (given, known) = side == Side.Request ? (before, now) : (now, before);
        if (known.Count > 0 && (given.Count == 0 || given.Any(type => !Covers(known, type))))
            yield return $"its type was {Named(before)} and is {Named(now)}";
    }

    static bool Covers(IReadOnlyList<string> known, string type) => known.Contains(type) || (type == "integer" && known.Contains("number"));

    static IReadOnlyList<string> TypesOf(JsonObject schema) => schema["type"] switch
    {
        JsonArray several => [.. several.Select(type => type!.GetValue<string>()).Order(StringComparer.Ordinal)],
        JsonValue one => [one.GetValue<string>()],
        _ => [],
    };

    static string Named(IReadOnlyList<string> types) => types.Count == 0 ? "any" : string.Join(" or ", types);

    static IEnumerable<string> Format(JsonObject released, JsonObject present)
    {
        var (before, now) = (released["format"]?.ToString() ?? "none", present["format"]?.ToString() ?? "none");
        if (before != now) yield return $"its format was {before} and is {now}";
    }

    static IEnumerable<string> Words(JsonObject released, JsonObject present, Side side)
    {
        var (before, now) = (WordsOf(released), WordsOf(present));
        if (side == Side.Request && now is not null)
        {
            if (before is null) yield return $"it takes {string.Join(", ", now)} alone";
            foreach (var word in (before ?? []).Except(now)) yield return $"it takes {word} no more";
        }
        if (side == Side.Answer && before is not null)
        {
            if (now is null) yield return "it may be more than the words that were listed";
            foreach (var word in (now ?? []).Except(before)) yield return $"it may be {word}, which is new";
        }
    }

    static IReadOnlyList<string>? WordsOf(JsonObject schema)
    {
        if (schema.TryGetPropertyValue("const", out var constant)) return [Written(constant)];
        return schema["enum"] is JsonArray words ? [.. words.Select(Written)] : null;
    }

    static string Written(JsonNode? value) => value?.ToJsonString() ?? "null";

    static IEnumerable<string> Narrowed(JsonObject released, JsonObject present)
    {
        foreach (var (keyword, tighter) in Bounds)
            if (present[keyword] is JsonValue now && (released[keyword] is not JsonValue before || tighter * Number(now).CompareTo(Number(before)) > 0))
                yield return $"its {keyword} was {released[keyword]?.ToString() ?? "none"} and is {now}";
        if (released["default"] is { } without && !JsonNode.DeepEquals(without, present["default"]))
            yield return $"left out it counted as {without} and counts as {present["default"]?.ToString() ?? "nothing"}";
        if (present["uniqueItems"]?.GetValue<bool>() == true && released["uniqueItems"]?.GetValue<bool>() != true)
            yield return "its items must differ";
        if (present["pattern"]?.ToString() is { } pattern && pattern != released["pattern"]?.ToString())
            yield return $"its pattern was {released["pattern"]?.ToString() ?? "none"} and is {pattern}";
    }

    // Kept as parsed text, a number is read from it whatever its type was.
    static double Number(JsonValue value) => double.Parse(value.ToJsonString(), System.Globalization.CultureInfo.InvariantCulture);
}
