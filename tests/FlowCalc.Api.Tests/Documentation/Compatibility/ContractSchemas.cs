using System.Text.Json.Nodes;

namespace FlowCalc.Api.Tests.Documentation.Compatibility;

/// <summary>The schemas of a contract, with references followed.</summary>
sealed class ContractSchemas(JsonObject contract)
{
    const string Components = "#/components/schemas/";

    /// <summary>The name of the component that a schema refers to, and to nothing else; null where it states itself.</summary>
    public static string? NameOf(JsonObject schema) => Unwrapped(schema)["$ref"]?.GetValue<string>()[Components.Length..];

    /// <summary>A schema itself, not a reference to it. An empty one, which anything fits, where there is none.</summary>
    public JsonObject Of(JsonNode? node)
    {
        if (node is not JsonObject schema) return [];
        schema = Unwrapped(schema);
        return NameOf(schema) is { } name ? Of(contract["components"]?["schemas"]?[name]) : schema;
    }

    /// <summary>What a value may be one of: the members of a choice, of choices within it too; else the schema alone.</summary>
    public IReadOnlyList<JsonObject> Alternatives(JsonObject schema)
    {
        var stated = Of(schema);
        var members = (stated["anyOf"] ?? stated["oneOf"]) as JsonArray;
        return members is null ? [schema] : [.. members.OfType<JsonObject>().SelectMany(Alternatives)];
    }

    // All of one thing is that thing.
    static JsonObject Unwrapped(JsonObject schema) => schema is { Count: 1 } && schema["allOf"] is JsonArray { Count: 1 } all && all[0] is JsonObject one ? Unwrapped(one) : schema;
}
