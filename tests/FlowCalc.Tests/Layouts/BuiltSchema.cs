using System.Text.Json;
using FlowCalc.Layouts;
using Json.Schema;

namespace FlowCalc.Tests.Layouts;

/// <summary>The layout's schema, built once: the evaluator registers a schema by its id and refuses a second one.</summary>
static class BuiltSchema
{
    public static JsonElement Document { get; } = JsonDocument.Parse(LayoutSchema.Utf8).RootElement;

    public static JsonSchema Schema { get; } = JsonSchema.Build(Document);

    public static bool Accepts(string json)
    {
        using var document = JsonDocument.Parse(json);
        return Schema.Evaluate(document.RootElement).IsValid;
    }

    /// <summary>One definition as a schema of its own.</summary>
    public static JsonSchema Definition(string name) => JsonSchema.FromText($$"""{ "$id": "urn:test:{{name}}", "$ref": "{{Document.GetProperty("$id").GetString()}}#/$defs/{{name}}" }""");
}
