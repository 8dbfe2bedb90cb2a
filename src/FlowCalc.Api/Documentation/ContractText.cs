using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Nodes;
using FlowCalc.Api.Answers;
using FlowCalc.Api.Faults;
using FlowCalc.Layouts;
using FlowCalc.Studies;
using Microsoft.AspNetCore.OpenApi;
using Microsoft.OpenApi;

namespace FlowCalc.Api.Documentation;

/// <summary>The contract as text, made once: what the framework finds in the code, with the layout's own schema put in.</summary>
internal sealed class ContractText([FromKeyedServices(ContractText.Name)] IOpenApiDocumentProvider provider)
{
    public const string Name = "v1";

    const string Components = "#/components/schemas/", Definitions = "#/$defs/", Layout = nameof(LayoutDocument);

    // What calls take whose body is not a layout alone, by path, as the schema of studies names it.
    static readonly Dictionary<string, string> Bodies = new() { ["/v1/compare"] = "comparison", ["/v1/tolerance"] = "tolerance", ["/v1/size"] = "sizing" };

    static readonly JsonSerializerOptions Readable = new() { WriteIndented = true, Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    readonly Lazy<Task<ReadOnlyMemory<byte>>> utf8 = new(() => WriteAsync(provider));

    /// <summary>The document, UTF-8.</summary>
    public Task<ReadOnlyMemory<byte>> Utf8 => utf8.Value;

    static async Task<ReadOnlyMemory<byte>> WriteAsync(IOpenApiDocumentProvider provider)
    {
        var document = await provider.GetOpenApiDocumentAsync();
        var contract = JsonNode.Parse(await document.SerializeAsJsonAsync(OpenApiSpecVersion.OpenApi3_1))!.AsObject();
        var schemas = contract["components"]!["schemas"]!.AsObject();
        RequireEveryField(schemas);
        DescribeValues(schemas);
        PutLayoutSchema(contract);
        PutStudySchema(contract);
        PutClientForms(schemas);
        return Encoding.UTF8.GetBytes(contract.ToJsonString(Readable) + "\n");
    }

    // An answer holds every field, null where there is nothing to say; only a problem leaves its errors out, and an answer what was not asked for.
    static void RequireEveryField(JsonObject schemas)
    {
        foreach (var (name, schema) in schemas)
            if (schema!["properties"] is JsonObject fields)
                schema["required"] = new JsonArray([.. fields.Select(field => field.Key).Where(field => (name, field) is not (nameof(Problem), "errors") and not (_, "explanation")).Select(field => JsonValue.Create(field))]);
    }

    // The framework meets a quantity first as a nullable one, and then finds no description.
    static void DescribeValues(JsonObject schemas)
    {
        var quantity = schemas[nameof(Quantity)]!;
        quantity["description"] = "A value with its unit. Pressures are gauge. The unit of a plain number such as a ratio is `1`.";
        quantity["properties"]!["value"]!["description"] = "The value in full, never rounded.";
        quantity["properties"]!["unit"]!["description"] = "The unit's symbol.";
        schemas[nameof(JsonElement)]!["description"] = "Any JSON value.";
        foreach (var (_, schema) in schemas)
            if (schema!["properties"] is JsonObject fields)
                AllowNullOnce(fields);
    }

    // Null is one of any JSON values: a choice between null and any would fit it twice, and so not at all.
    static void AllowNullOnce(JsonObject fields)
    {
        foreach (var (name, field) in fields.ToList())
            if (field?["oneOf"] is JsonArray choices && choices.FirstOrDefault(choice => choice?["$ref"]?.GetValue<string>() == Components + nameof(JsonElement)) is { } any)
                fields[name] = any.DeepClone();
    }

    // Tools look for schemas among the components, so the definitions of the layout's schema become components too.
    static void PutLayoutSchema(JsonObject contract)
    {
        var schemas = contract["components"]!["schemas"]!.AsObject();
        var layout = JsonNode.Parse(LayoutSchema.Utf8.Span)!.AsObject();
        var definitions = layout["$defs"]?.AsObject() ?? [];
        layout.Remove("$defs");
        layout.Remove("$schema");
        layout.Remove("$id");
        Redirect(layout, "Layout.");
        schemas[Layout] = layout;
        Move(definitions, schemas, "Layout.");
        foreach (var (path, calls) in contract["paths"]!.AsObject())
            if (calls!["post"]?["requestBody"]?["content"]?["application/json"] is JsonObject body)
                body["schema"] = new JsonObject { ["$ref"] = Components + (Bodies.TryGetValue(path, out var study) ? "Study." + study : Layout) };
    }

    // What studies take beside a layout is described in terms of the layout's own schema.
    static void PutStudySchema(JsonObject contract) =>
        Move(JsonNode.Parse(StudySchema.Utf8.Span)!["$defs"]!.AsObject(), contract["components"]!["schemas"]!.AsObject(), "Study.");

    static void PutClientForms(JsonObject schemas)
    {
        var forms = new ClientForms(schemas);
        foreach (var (name, schema) in schemas.ToList())
            if (name.StartsWith("Layout.", StringComparison.Ordinal) || name.StartsWith("Study.", StringComparison.Ordinal) || name == Layout)
                forms.Put(schema!.AsObject());
    }

    static void Move(JsonObject definitions, JsonObject schemas, string prefix)
    {
        foreach (var (name, definition) in definitions)
        {
            var moved = definition!.DeepClone();
            Redirect(moved, prefix);
            schemas[prefix + name] = moved;
        }
    }

    static void Redirect(JsonNode? node, string prefix)
    {
        if (node is JsonArray items)
            foreach (var item in items)
                Redirect(item, prefix);
        if (node is not JsonObject fields)
            return;
        if (fields["$ref"] is JsonValue value && value.GetValue<string>() is var target)
            fields["$ref"] = Components + Component(target, prefix);
        if (fields["properties"] is JsonObject properties)
            ForbidInWords(properties);
        foreach (var (_, field) in fields)
            Redirect(field, prefix);
    }

    // Some readers of contracts know no field whose schema is plain false, though JSON Schema has it.
    static void ForbidInWords(JsonObject properties)
    {
        foreach (var name in properties.Where(property => property.Value?.GetValueKind() is JsonValueKind.False).Select(property => property.Key).ToList())
            properties[name] = new JsonObject { ["not"] = new JsonObject() };
    }

    static string Component(string target, string prefix) => target.Split(Definitions[1..]) switch
    {
        ["#" or "", var own] => prefix + own,
        [_, var ofLayout] => "Layout." + ofLayout,
        _ => Layout,
    };
}
