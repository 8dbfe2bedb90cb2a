using System.Text.Json.Nodes;

namespace FlowCalc.Api.Tests.Documentation.Compatibility;

/// <summary>What in a contract breaks programs that were written for an earlier one. Additions break nothing and are not told.</summary>
static class ContractDifference
{
    /// <summary>Every incompatible difference, in words; empty where there is none.</summary>
    /// <param name="released">The contract that callers know.</param>
    /// <param name="present">The contract as it is.</param>
    public static IReadOnlyList<string> Of(JsonObject released, JsonObject present)
    {
        var schemas = new SchemaDifference(new ContractSchemas(released), new ContractSchemas(present));
        // What callers send first: a layout that an answer gives back is compared as one that was sent.
        foreach (var (call, old, current) in Calls(released, present, schemas)) CompareAsked(schemas, call, old, current);
        foreach (var (call, old, current) in Calls(released, present, schemas)) CompareAnswered(schemas, call, old, current);
        return [.. schemas.Found.Distinct()];
    }

    static IEnumerable<(string Call, JsonNode Old, JsonNode Current)> Calls(JsonObject released, JsonObject present, SchemaDifference schemas)
    {
        foreach (var (path, methods) in Fields(released["paths"]))
            foreach (var (method, old) in Fields(methods))
            {
                var call = $"{method.ToUpperInvariant()} {path}";
                if (present["paths"]?[path]?[method] is { } current) yield return (call, old!, current);
                else schemas.Tell(call, "the call is gone");
            }
    }

    static void CompareAsked(SchemaDifference schemas, string call, JsonNode old, JsonNode current)
    {
        // Generated clients name their methods by it.
        if (old["operationId"]?.ToString() is { } id && current["operationId"]?.ToString() is var now && id != now) schemas.Tell(call, $"its name was {id} and is {now ?? "none"}");
        CompareParameters(schemas, call, Parameters(old), Parameters(current));
        if (AsksNobody(old) && !AsksNobody(current)) schemas.Tell(call, "it asks every caller for a key");
        foreach (var (media, content) in Fields(old["requestBody"]?["content"]))
        {
            if (current["requestBody"]?["content"]?[media] is { } taken) schemas.Compare($"{call}, body", content?["schema"], taken["schema"], Side.Request);
            else schemas.Tell(call, $"it takes {media} no more");
        }
        if (IsRequired(current["requestBody"]) && !IsRequired(old["requestBody"])) schemas.Tell(call, "it needs a body");
    }

    static void CompareParameters(SchemaDifference schemas, string call, Dictionary<string, JsonNode> old, Dictionary<string, JsonNode> current)
    {
        foreach (var (name, parameter) in old)
        {
            if (current.TryGetValue(name, out var now)) schemas.Compare($"{call}, {name}", parameter["schema"], now["schema"], Side.Request);
            else schemas.Tell($"{call}, {name}", "the parameter is gone");
        }
        foreach (var (name, parameter) in current)
            if (IsRequired(parameter) && !(old.TryGetValue(name, out var before) && IsRequired(before))) schemas.Tell($"{call}, {name}", "the parameter is required");
    }

    static void CompareAnswered(SchemaDifference schemas, string call, JsonNode old, JsonNode current)
    {
        foreach (var (status, answer) in Fields(old["responses"]))
        {
            if (current["responses"]?[status] is not { } now)
            {
                schemas.Tell(call, $"the answer {status} is gone");
                continue;
            }
            foreach (var (header, _) in Fields(answer?["headers"]))
                if (now["headers"]?[header] is null) schemas.Tell($"{call}, {status}", $"the header {header} is gone");
            foreach (var (media, content) in Fields(answer?["content"]))
            {
                if (now["content"]?[media] is { } given) schemas.Compare($"{call}, {status}", content?["schema"], given["schema"], Side.Answer);
                else schemas.Tell($"{call}, {status}", $"{media} is gone");
            }
        }
    }

    static Dictionary<string, JsonNode> Parameters(JsonNode call) =>
        (call["parameters"] as JsonArray ?? []).ToDictionary(parameter => $"{parameter!["in"]} {parameter["name"]}", parameter => parameter!);

    static bool AsksNobody(JsonNode call) => call["security"] is not JsonArray { Count: > 0 } ways || ways.Any(way => way is JsonObject { Count: 0 });

    static bool IsRequired(JsonNode? part) => part?["required"]?.GetValue<bool>() == true;

    static JsonObject Fields(JsonNode? node) => node as JsonObject ?? [];
}
