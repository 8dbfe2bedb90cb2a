using System.Collections.Concurrent;
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
    const string Draft = "https://json-schema.org/draft/2020-12/schema", Address = "https://contract.test/schemas";

    // One serves all tests.
    static readonly Lazy<Task<Contract>> Shipped = new(Ask);

    readonly Lazy<BuildOptions> registered = new(() => Register(document));
    readonly ConcurrentDictionary<string, JsonSchema> built = new();

    public JsonElement Document => document;

    public static Task<Contract> Published() => Shipped.Value;

    static async Task<Contract> Ask()
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
        var result = built.GetOrAdd(schema, name => JsonSchema.FromText(new JsonObject { ["$schema"] = Draft, ["$ref"] = Address + Definitions + name }.ToJsonString(), registered.Value)).Evaluate(instance, new EvaluationOptions { OutputFormat = OutputFormat.List });

        return result.IsValid ? [] : [.. result.Details!.Where(detail => detail.Errors is not null).SelectMany(detail => detail.Errors!.Select(error => $"{detail.InstanceLocation}: {error.Value}"))];
    }

    // A second's work, so all of them are built once, at an address of their own, and one that is asked for is a reference to it.
    static BuildOptions Register(JsonElement document)
    {
        var text = document.GetProperty("components").GetProperty("schemas").GetRawText().Replace(Components, Definitions, StringComparison.Ordinal);
        var definitions = JsonNode.Parse(text)!.AsObject();
        foreach (var (name, definition) in definitions)
            if (!name.StartsWith("Layout", StringComparison.Ordinal) && definition!["properties"] is not null)
                definition["additionalProperties"] = false;
        var options = new BuildOptions { SchemaRegistry = new() };
        JsonSchema.FromText(new JsonObject { ["$schema"] = Draft, ["$id"] = Address, ["$defs"] = definitions }.ToJsonString(), options);
        return options;
    }
}
