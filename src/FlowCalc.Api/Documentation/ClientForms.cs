using System.Text.Json;
using System.Text.Json.Nodes;

namespace FlowCalc.Api.Documentation;

/// <summary>Puts the schemas of what calls take into forms that say the same, and of which generators of typed clients lose nothing.</summary>
/// <remarks>What a value has to fulfil beside its shape is moved behind two denials: it holds as before, and no generator makes a type of it.</remarks>
/// <param name="schemas">Every schema of the contract, by name.</param>
internal sealed class ClientForms(JsonObject schemas)
{
    const string Components = "#/components/schemas/";

    static readonly string[] Choices = ["oneOf", "anyOf", "allOf"], Conditions = [.. Choices, "if", "then", "else", "not"];

    /// <summary>Changes a schema in place, with all that it holds.</summary>
    /// <param name="schema">A JSON Schema object.</param>
    public void Put(JsonObject schema)
    {
        NameType(schema);
        StateOpenness(schema);
        if (schema.ContainsKey("$ref"))
            SetApart(schema, ["properties"]);
        else if (Choices.Any(schema.ContainsKey) && !Choices.Any(choice => schema[choice] is JsonArray members && members.Any(TellsShape)))
            SetApart(schema, Conditions);
        else
            Flatten(schema);
        NameItems(schema);
        foreach (var held in Held(schema).ToList())
            Put(held);
    }

    // Words and constants are taken for anything where their type is not named beside them.
    static void NameType(JsonObject schema)
    {
        if (schema.ContainsKey("type"))
            return;
        JsonNode?[] values = schema["enum"] is JsonArray words ? [.. words] : schema.TryGetPropertyValue("const", out var constant) ? [constant] : [];
        if (values.Length > 0 && values.All(value => value?.GetValueKind() is JsonValueKind.String))
            schema["type"] = "string";
        else if (values.Length > 0 && values.All(value => value?.GetValueKind() is JsonValueKind.Number && value.AsValue().TryGetValue<int>(out _)))
            schema["type"] = "integer";
    }

    // An object that names no fields may hold any; read without that word it is one that holds none.
    static void StateOpenness(JsonObject schema)
    {
        if (TypeOf(schema) == "object" && !schema.ContainsKey("properties") && !schema.ContainsKey("additionalProperties"))
            schema["additionalProperties"] = true;
    }

    // Choices that only say which fields go together would be taken for kinds of objects of their own, and the fields beside them be lost.
    static void SetApart(JsonObject schema, string[] keywords)
    {
        var apart = new JsonObject();
        foreach (var keyword in keywords)
            if (schema.Remove(keyword, out var condition))
                apart[keyword] = condition;
        if (apart.Count > 0)
            schema["not"] = new JsonObject { ["not"] = apart };
    }

    // A choice between choices, such as a mass or a volume, each text or an object, is one between text and an object.
    void Flatten(JsonObject schema)
    {
        foreach (var choice in (string[])["oneOf", "anyOf"])
            if (schema[choice] is JsonArray members && !schema.ContainsKey("not") && members.Any(member => member?["$ref"] is { } target && TypeOf(Target(target)) is null or "string"))
            {
                JsonNode[] shapes = [.. members.SelectMany(member => Shapes(member!.AsObject())).DistinctBy(shape => shape.ToJsonString())];
                SetApart(schema, [choice]);
                schema["anyOf"] = new JsonArray(shapes);
                return;
            }
    }

    // A list of what is text or an object would be read as one of text alone, were its items not named as a whole of their own.
    void NameItems(JsonObject schema)
    {
        if (schema["items"] is JsonObject items && (items["$ref"] is { } name ? Target(name) : items) is var kind && kind.ContainsKey("anyOf") && !kind.ContainsKey("type"))
            schema["items"] = new JsonObject { ["allOf"] = new JsonArray(items.DeepClone()) };
    }

    IEnumerable<JsonObject> Shapes(JsonObject member)
    {
        if (member["$ref"] is { } name)
            return TypeOf(Target(name)) is not (null or "string") ? [new JsonObject { ["$ref"] = name.DeepClone() }] : Shapes(Target(name));
        if (member["anyOf"] is JsonArray members && members.Any(TellsShape))
            return members.SelectMany(one => Shapes(one!.AsObject()));
        return member.ContainsKey("enum") || TypeOf(member) is not { } type ? [member.DeepClone().AsObject()] : [new JsonObject { ["type"] = type }];
    }

    JsonObject Target(JsonNode reference) => schemas[reference.GetValue<string>()[Components.Length..]]!.AsObject();

    static string? TypeOf(JsonObject schema) => schema["type"]?.GetValueKind() is JsonValueKind.String ? schema["type"]!.GetValue<string>() : null;

    static bool TellsShape(JsonNode? member) => member is JsonObject fields
        && (fields.ContainsKey("$ref") || fields.ContainsKey("type") || fields.ContainsKey("enum") || Choices.Any(choice => fields[choice] is JsonArray members && members.Any(TellsShape)));

    static IEnumerable<JsonObject> Held(JsonObject schema)
    {
        foreach (var keyword in (string[])["items", "additionalProperties"])
            if (schema[keyword] is JsonObject one)
                yield return one;
        foreach (var member in Choices.Select(choice => schema[choice]).OfType<JsonArray>().SelectMany(members => members).OfType<JsonObject>())
            yield return member;
        if (schema["properties"] is JsonObject fields)
            foreach (var field in fields.Select(field => field.Value).OfType<JsonObject>())
                yield return field;
    }
}
