using System.Text.Json.Nodes;

namespace FlowCalc.Api.Tests.Documentation.Compatibility;

/// <summary>A contract of one call, with one of each kind of thing that may break.</summary>
static class SmallContract
{
    public static JsonObject Make() => JsonNode.Parse(
        """
        {
          "paths": { "/v1/flow": { "post": {
            "operationId": "Flow",
            "parameters": [
              { "name": "units", "in": "query", "schema": { "type": "string", "enum": ["metric", "us"], "default": "metric" } },
              { "name": "Prefer", "in": "header", "schema": { "type": "string" } }
            ],
            "requestBody": { "content": { "application/json": { "schema": { "$ref": "#/components/schemas/Layout" } } } },
            "responses": {
              "200": { "headers": { "Location": {} }, "content": { "application/json": { "schema": { "$ref": "#/components/schemas/Answer" } }, "text/csv": { "schema": { "type": "string" } } } },
              "422": { "content": {} }
            },
            "security": [{ "key": [] }, {}]
          } } },
          "components": { "schemas": {
            "Quantity": { "type": "object", "properties": { "value": { "type": "number" } }, "required": ["value"] },
            "Layout": {
              "type": "object", "additionalProperties": false, "required": ["points"],
              "properties": {
                "name": { "type": "string", "maxLength": 10 },
                "kind": { "type": "string", "enum": ["boat", "car"] },
                "count": { "type": "integer", "minimum": 1 },
                "share": { "type": "number", "format": "double" },
                "points": { "type": "array", "minItems": 1, "items": { "allOf": [{ "$ref": "#/components/schemas/Bore" }] } },
                "notes": { "type": "object", "additionalProperties": { "type": "string" } },
                "bottle": { "$ref": "#/components/schemas/Quantity" },
                "pressure": { "$ref": "#/components/schemas/Quantity" }
              },
              "not": { "not": { "oneOf": [{ "required": ["bottle"], "properties": { "pressure": { "not": {} } } }, { "required": ["pressure"] }] } }
            },
            "Bore": { "anyOf": [{ "type": "string", "pattern": "mm$" }, { "$ref": "#/components/schemas/Quantity" }] },
            "Answer": {
              "type": "object", "required": ["verdict", "share", "worst", "layout"],
              "properties": {
                "verdict": { "type": "string", "enum": ["pass", "fail"] },
                "share": { "type": "number", "format": "double" },
                "worst": { "oneOf": [{ "type": "null" }, { "$ref": "#/components/schemas/Worst" }] },
                "nozzles": { "type": "array", "items": { "type": "string" } },
                "layout": { "$ref": "#/components/schemas/Layout" }
              }
            },
            "Worst": { "type": "object", "required": ["id"], "properties": { "id": { "type": "string" } } }
          } }
        }
        """)!.AsObject();

    /// <summary>That contract with a part of it set, put at the end of a list (<c>-</c>) or, where there is no value, taken away.</summary>
    /// <param name="path">Names from the top, parted by blanks.</param>
    /// <param name="value">JSON.</param>
    public static JsonObject With(string path, string? value)
    {
        var contract = Make();
        var names = path.Split(' ');
        var holder = names[..^1].Aggregate((JsonNode)contract, (node, name) => Step(node, name)!);
        var set = value is null ? null : JsonNode.Parse(value);
        switch (holder, names[^1])
        {
            case (JsonArray list, "-"): list.Add(set); break;
            case (JsonArray list, var at) when value is null: list.RemoveAt(int.Parse(at, System.Globalization.CultureInfo.InvariantCulture)); break;
            case (JsonArray list, var at): list[int.Parse(at, System.Globalization.CultureInfo.InvariantCulture)] = set; break;
            case (JsonObject fields, var name) when value is null: Assert.True(fields.Remove(name), path); break;
            case (JsonObject fields, var name): fields[name] = set; break;
        }
        return contract;
    }

    static JsonNode? Step(JsonNode node, string name) => node is JsonArray list ? list[int.Parse(name, System.Globalization.CultureInfo.InvariantCulture)] : node[name];
}
