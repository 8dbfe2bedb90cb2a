using System.Text.Json;
using System.Text.Json.Nodes;
using FlowCalc.Api.Documentation;
using FlowCalc.Api.Tests.Flow;

namespace FlowCalc.Api.Tests.Documentation;

public sealed class ClientFormsTests
{
    // What stands behind two denials holds as it did before them.
    [Theory]
    [InlineData("supply", """{ "pressure": "12 bar", "bottle": { "volume": "4 L" } }""")]
    [InlineData("supply", "{}")]
    [InlineData("supply", """{ "pressure": "12" }""")]
    [InlineData("supply", """{ "pressure": { "value": 12, "unit": "mm" } }""")]
    [InlineData("supply", """{ "pressure": 12 }""")]
    [InlineData("tubes", """{ "feed": { "bore": "6 mm", "wall": "1 mm" } }""")]
    [InlineData("format", "2")]
    [InlineData("application", "\"aeroplane\"")]
    public async Task Contract_refuses_what_the_schema_of_the_layout_refuses(string field, string value)
    {
        var contract = await Contract.Published();
        var layout = JsonNode.Parse(Documents.Small)!.AsObject();
        Assert.Empty(contract.Breaks("LayoutDocument", JsonSerializer.SerializeToElement(layout)));

        layout[field] = JsonNode.Parse(value);

        Assert.NotEmpty(contract.Breaks("LayoutDocument", JsonSerializer.SerializeToElement(layout)));
    }

    [Theory]
    [InlineData("""{ "enum": ["a", "b"] }""", """{ "enum": ["a", "b"], "type": "string" }""")]
    [InlineData("""{ "const": 1 }""", """{ "const": 1, "type": "integer" }""")]
    [InlineData("""{ "enum": ["a", null] }""", """{ "enum": ["a", null] }""")]
    [InlineData("""{ "type": "object", "maxProperties": 3 }""", """{ "type": "object", "maxProperties": 3, "additionalProperties": true }""")]
    [InlineData(
        """{ "type": "object", "properties": { "a": true, "b": true }, "oneOf": [{ "required": ["a"] }, { "required": ["b"] }] }""",
        """{ "type": "object", "properties": { "a": true, "b": true }, "not": { "not": { "oneOf": [{ "required": ["a"] }, { "required": ["b"] }] } } }""")]
    [InlineData(
        """{ "anyOf": [{ "$ref": "#/components/schemas/mass" }, { "$ref": "#/components/schemas/volume" }] }""",
        """
        { "not": { "not": { "anyOf": [{ "$ref": "#/components/schemas/mass" }, { "$ref": "#/components/schemas/volume" }] } },
          "anyOf": [{ "type": "string" }, { "$ref": "#/components/schemas/quantity" }] }
        """)]
    [InlineData(
        """{ "type": "array", "items": { "$ref": "#/components/schemas/mass" } }""",
        """{ "type": "array", "items": { "allOf": [{ "$ref": "#/components/schemas/mass" }] } }""")]
    [InlineData("""{ "type": "array", "items": { "$ref": "#/components/schemas/quantity" } }""", """{ "type": "array", "items": { "$ref": "#/components/schemas/quantity" } }""")]
    [InlineData("""{ "oneOf": [{ "type": "null" }, { "$ref": "#/components/schemas/quantity" }] }""", """{ "oneOf": [{ "type": "null" }, { "$ref": "#/components/schemas/quantity" }] }""")]
    public void Schema_gets_the_form_of_which_generators_lose_nothing(string schema, string form)
    {
        var schemas = JsonNode.Parse(
            """
            { "quantity": { "type": "object", "properties": { "value": { "type": "number" }, "unit": { "type": "string" } } },
              "mass": { "anyOf": [{ "type": "string", "pattern": "kg$" }, { "$ref": "#/components/schemas/quantity" }] },
              "volume": { "anyOf": [{ "type": "string", "pattern": "L$" }, { "$ref": "#/components/schemas/quantity" }] } }
            """)!.AsObject();
        var changed = JsonNode.Parse(schema)!.AsObject();

        new ClientForms(schemas).Put(changed);

        Assert.True(JsonNode.DeepEquals(JsonNode.Parse(form), changed), changed.ToJsonString());
    }
}
