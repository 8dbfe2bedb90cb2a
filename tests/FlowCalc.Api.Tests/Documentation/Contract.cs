using System.Text.Json;
using System.Text.Json.Nodes;
using FlowCalc.Api.Tests.Hosting;
using FlowCalc.Api.Tests.Requests;
using Json.Schema;

namespace FlowCalc.Api.Tests.Documentation;

/// <summary>The contract as the service publishes it, and what it says of an answer.</summary>
sealed class Contract(JsonElement document)
{
    const string Components = "#/components/schemas/", Definitions = "#/$defs/";

    readonly Dictionary<string, JsonSchema> built = [];

    public JsonElement Document => document;

    public static async Task<Contract> Published()
    {
        // The contract states the limits that the service is shipped with.
        await using var service = Service.AsShipped();
        using var caller = service.Caller();
        return new(await caller.Get("/openapi/v1.json").Json(200));
    }

    /// <summary>Every operation: path, method, what the contract says.</summary>
    public IEnumerable<(string Path, string Method, JsonElement Operation)> Operations() =>
        from path in document.GetProperty("paths").EnumerateObject()
        from method in path.Value.EnumerateObject()
        select (path.Name, method.Name, method.Value);

    /// <summary>The name of the schema of an answer.</summary>
    public string SchemaOf(string path, string method, string status) =>
        document.GetProperty("paths").GetProperty(path).GetProperty(method).GetProperty("responses").GetProperty(status).GetProperty("content").EnumerateObject().First()
            .Value.GetProperty("schema").GetProperty("$ref").GetString()![Components.Length..];

    /// <summary>What of an instance breaks a schema of the contract, fields that it does not know among it; empty where nothing does.</summary>
    public IReadOnlyList<string> Breaks(string schema, JsonElement instance)
    {
        if (!built.TryGetValue(schema, out var known)) built[schema] = known = Build(schema);

        var result = known.Evaluate(instance, new EvaluationOptions { OutputFormat = OutputFormat.List });

        return result.IsValid ? [] : [.. result.Details!.Where(detail => detail.Errors is not null).SelectMany(detail => detail.Errors!.Select(error => $"{detail.InstanceLocation}: {error.Value}"))];
    }

    JsonSchema Build(string schema)
    {
        var text = document.GetProperty("components").GetProperty("schemas").GetRawText().Replace(Components, Definitions, StringComparison.Ordinal);
        var definitions = JsonNode.Parse(text)!.AsObject();
        foreach (var (name, definition) in definitions)
            if (!name.StartsWith("Layout", StringComparison.Ordinal) && definition!["properties"] is not null)
                definition["additionalProperties"] = false;
        var whole = new JsonObject { ["$schema"] = "https://json-schema.org/draft/2020-12/schema", ["$ref"] = Definitions + schema, ["$defs"] = definitions };

        return JsonSchema.FromText(whole.ToJsonString());
    }
}
