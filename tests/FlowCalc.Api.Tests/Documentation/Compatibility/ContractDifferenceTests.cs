using System.Text.Json.Nodes;

namespace FlowCalc.Api.Tests.Documentation.Compatibility;

public sealed class ContractDifferenceTests
{
    const string Call = "paths /v1/flow post", Layout = "components schemas Layout", Answer = "components schemas Answer";

    [Theory]
    [InlineData("paths /v1/flow", null, "POST /v1/flow: the call is gone.")]
    [InlineData(Call, null, "POST /v1/flow: the call is gone.")]
    [InlineData(Call + " operationId", "\"Solve\"", "POST /v1/flow: its name was Flow and is Solve.")]
    [InlineData(Call + " parameters 0 name", "\"system\"", "POST /v1/flow, query units: the parameter is gone.")]
    [InlineData(Call + " parameters 1", null, "POST /v1/flow, header Prefer: the parameter is gone.")]
    [InlineData(Call + " parameters 1 required", "true", "POST /v1/flow, header Prefer: the parameter is required.")]
    [InlineData(Call + " parameters -", """{ "name": "today", "in": "query", "required": true, "schema": {} }""", "POST /v1/flow, query today: the parameter is required.")]
    [InlineData(Call + " parameters 0 schema enum 1", null, "POST /v1/flow, query units: it takes \"us\" no more.")]
    [InlineData(Call + " parameters 0 schema default", "\"us\"", "POST /v1/flow, query units: left out it counted as metric and counts as us.")]
    [InlineData(Call + " parameters 1 schema enum", """["respond-async"]""", "POST /v1/flow, header Prefer: it takes \"respond-async\" alone.")]
    [InlineData(Call + " requestBody content application/json", null, "POST /v1/flow: it takes application/json no more.")]
    [InlineData(Call + " requestBody required", "true", "POST /v1/flow: it needs a body.")]
    [InlineData(Call + " responses 422", null, "POST /v1/flow: the answer 422 is gone.")]
    [InlineData(Call + " responses 200 content text/csv", null, "POST /v1/flow, 200: text/csv is gone.")]
    [InlineData(Call + " responses 200 headers Location", null, "POST /v1/flow, 200: the header Location is gone.")]
    [InlineData(Call + " security 1", null, "POST /v1/flow: it asks every caller for a key.")]
    public void What_breaks_in_a_call_is_told(string path, string? value, string words) => Assert.Equal([words], ContractDifference.Of(SmallContract.Make(), SmallContract.With(path, value)));

    [Theory]
    [InlineData(" properties name", null, "Layout (taken).name: the field is gone.")]
    [InlineData(" properties name type", "\"integer\"", "Layout (taken).name: its type was string and is integer.")]
    [InlineData(" properties share type", "\"integer\"", "Layout (taken).share: its type was number and is integer.")]
    [InlineData(" properties share format", "\"float\"", "Layout (taken).share: its format was double and is float.")]
    [InlineData(" properties kind enum 0", null, "Layout (taken).kind: it takes \"boat\" no more.")]
    [InlineData(" properties name maxLength", "9", "Layout (taken).name: its maxLength was 10 and is 9.")]
    [InlineData(" properties count minimum", "2", "Layout (taken).count: its minimum was 1 and is 2.")]
    [InlineData(" properties count maximum", "1e3", "Layout (taken).count: its maximum was none and is 1e3.")]
    [InlineData(" properties name pattern", "\"^a\"", "Layout (taken).name: its pattern was none and is ^a.")]
    [InlineData(" properties points uniqueItems", "true", "Layout (taken).points: its items must differ.")]
    [InlineData(" properties points items", """{ "type": "string" }""", "Bore (taken): it takes Quantity no more.")]
    [InlineData(" properties notes additionalProperties type", "\"boolean\"", "Layout (taken).notes.*: its type was string and is boolean.")]
    [InlineData(" properties notes additionalProperties", "false", "Layout (taken).notes: it takes no other fields any more.")]
    [InlineData(" required -", "\"name\"", "Layout (taken).name: the field is required.")]
    [InlineData(" if", """{ "required": ["name"] }""", "Layout (taken): there is a condition (if) where none was.")]
    [InlineData(" not not oneOf 1 required -", "\"name\"", "Layout (taken): its condition (not) has changed: look whether it lets through all that it did.")]
    public void What_breaks_in_a_body_is_told(string path, string? value, string words) => Assert.Equal([words], ContractDifference.Of(SmallContract.Make(), SmallContract.With(Layout + path, value)));

    [Theory]
    [InlineData(" properties nozzles", null, "Answer (answered).nozzles: the field is gone.")]
    [InlineData(" required 0", null, "Answer (answered).verdict: the field may be left out.")]
    [InlineData(" properties share type", "\"string\"", "Answer (answered).share: its type was number and is string.")]
    [InlineData(" properties share type", """["null", "number"]""", "Answer (answered).share: its type was number and is null or number.")]
    [InlineData(" properties share format", null, "Answer (answered).share: its format was double and is none.")]
    [InlineData(" properties verdict enum -", "\"odd\"", "Answer (answered).verdict: it may be \"odd\", which is new.")]
    [InlineData(" properties verdict enum", null, "Answer (answered).verdict: it may be more than the words that were listed.")]
    [InlineData(" properties nozzles items type", "\"integer\"", "Answer (answered).nozzles[]: its type was string and is integer.")]
    [InlineData(" properties worst oneOf -", """{ "type": "string" }""", "Answer (answered).worst: it may be string, which is new.")]
    public void What_breaks_in_an_answer_is_told(string path, string? value, string words) => Assert.Equal([words], ContractDifference.Of(SmallContract.Make(), SmallContract.With(Answer + path, value)));

    [Theory]
    [InlineData("components schemas Worst properties id", null, "Worst (answered).id: the field is gone.")]
    [InlineData("components schemas Bore anyOf 0 pattern", "\"in$\"", "Bore (taken): its pattern was mm$ and is in$.")]
    [InlineData("components schemas Quantity required -", "\"unit\"", "Quantity (taken).unit: the field is required.")]
    public void What_breaks_deeper_down_is_told(string path, string? value, string words) => Assert.Equal([words], ContractDifference.Of(SmallContract.Make(), SmallContract.With(path, value)));

    [Theory]
    [InlineData("paths /v1/more", """{ "get": { "operationId": "More" } }""")]
    [InlineData(Call + " parameters -", """{ "name": "explain", "in": "query", "schema": { "type": "boolean" } }""")]
    [InlineData(Call + " parameters 0 schema enum -", "\"si\"")]
    [InlineData(Call + " responses 401", """{ "content": {} }""")]
    [InlineData(Call + " responses 200 content application/pdf", """{ "schema": { "type": "string" } }""")]
    [InlineData(Call + " requestBody content application/yaml", """{ "schema": {} }""")]
    [InlineData(Call + " summary", "\"Steady flow\"")]
    [InlineData(Layout + " properties mount", """{ "type": "object" }""")]
    [InlineData(Layout + " properties kind enum -", "\"plant\"")]
    [InlineData(Layout + " properties name maxLength", "11")]
    [InlineData(Layout + " properties count minimum", "0")]
    [InlineData(Layout + " properties count type", "\"number\"")]
    [InlineData(Layout + " properties name type", """["null", "string"]""")]
    [InlineData(Layout + " required", "[]")]
    [InlineData(Layout + " additionalProperties", "true")]
    [InlineData(Layout + " not", null)]
    [InlineData(Layout + " not not oneOf 1 properties", """{ "pump": { "not": {} } }""")]
    [InlineData("components schemas Bore anyOf -", """{ "type": "number" }""")]
    [InlineData(Answer + " properties more", """{ "type": "string" }""")]
    [InlineData(Answer + " required -", "\"nozzles\"")]
    [InlineData(Answer + " properties verdict enum 1", null)]
    [InlineData(Answer + " properties share type", "\"integer\"")]
    [InlineData(Answer + " properties worst oneOf 0", null)]
    public void An_addition_is_not_told(string path, string? value) => Assert.Empty(ContractDifference.Of(SmallContract.Make(), SmallContract.With(path, value)));

    [Fact]
    public void Every_difference_is_told_at_once()
    {
        var present = SmallContract.With(Answer + " properties nozzles", null);
        present["components"]!["schemas"]!["Layout"]!["required"]!.AsArray().Add("name");
        present["paths"]!["/v1/flow"]!["post"]!["parameters"]!.AsArray().RemoveAt(1);

        Assert.Equal(
            ["POST /v1/flow, header Prefer: the parameter is gone.", "Layout (taken).name: the field is required.", "Answer (answered).nozzles: the field is gone."],
            ContractDifference.Of(SmallContract.Make(), present));
    }

    [Fact]
    public void A_component_under_another_name_is_told_where_it_is_one_of_a_choice()
    {
        var present = JsonNode.Parse(SmallContract.Make().ToJsonString().Replace("Worst", "Poorest", StringComparison.Ordinal))!.AsObject();

        // Members of a choice go in pairs by name, so that one which was renamed has to be looked at.
        Assert.Equal(["Answer (answered).worst: it may be Poorest, which is new."], ContractDifference.Of(SmallContract.Make(), present));
    }
}
