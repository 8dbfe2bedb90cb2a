using System.Text.Json;
using System.Text.Json.Nodes;
using FlowCalc.Api.Tests.Flow;
using FlowCalc.Api.Tests.Hosting;
using FlowCalc.Api.Tests.Requests;

namespace FlowCalc.Api.Tests.Discharge;

/// <summary>Cures as the service tells them: what a caller may post as a variant.</summary>
public sealed class CureAnswerTests(Service service) : IDisposable
{
    readonly HttpClient caller = service.Caller();

    public void Dispose() => caller.Dispose();

    [Theory]
    [InlineData("flow")]
    [InlineData("discharge")]
    public async Task Every_failing_finding_of_the_demo_has_a_cure_whose_outcome_is_the_answer_to_that_variant(string call)
    {
        var findings = (await Post(call, Documents.Demo)).GetProperty("findings").EnumerateArray().Where(finding => finding.GetProperty("severity").GetString() == "fail").ToList();

        Assert.NotEmpty(findings);
        foreach (var finding in findings)
        {
            var cure = finding.GetProperty("cure");
            var set = new JsonObject([.. cure.GetProperty("changes").EnumerateArray().Select(change => KeyValuePair.Create(change.GetProperty("path").GetString()!, (JsonNode?)JsonNode.Parse(change.GetProperty("to").GetRawText())))]);
            var request = new JsonObject { ["layout"] = JsonNode.Parse(Documents.Demo), ["variants"] = new JsonArray(new JsonObject { ["name"] = "cured", ["set"] = set }) };
            var variant = (await caller.PostStudy("compare", request.ToJsonString()).Json(200)).GetProperty("answers").EnumerateArray().Single(one => one.GetProperty("name").GetString() == "cured");
            var (outcome, answer) = (cure.GetProperty("outcome"), variant.GetProperty(call));

            Assert.True(cure.GetProperty("clears").GetBoolean());
            Assert.Equal(answer.GetProperty("verdict").GetString(), outcome.GetProperty("verdict").GetString());
            Assert.Equal(Count(answer, "fail"), outcome.GetProperty("fails").GetInt32());
            Assert.Equal(Count(answer, "warn"), outcome.GetProperty("warns").GetInt32());
        }
    }

    [Fact]
    public async Task Outcome_of_a_discharge_names_its_slowest_case_with_the_time_in_the_units_asked_for()
    {
        var findings = (await Post("discharge", Documents.Demo)).GetProperty("findings").EnumerateArray();

        var outcome = findings.First(finding => finding.GetProperty("cure").ValueKind is JsonValueKind.Object).GetProperty("cure").GetProperty("outcome");

        Assert.Equal("0 °C, upright", outcome.GetProperty("slowestCase").GetString());
        Assert.Equal("s", outcome.GetProperty("slowestTime").GetProperty("unit").GetString());
        Assert.InRange(outcome.GetProperty("slowestTime").GetProperty("value").GetDouble(), 10, 30);
        Assert.Equal("exhaust", outcome.GetProperty("worstNozzle").GetString());
    }

    [Fact]
    public async Task What_is_not_text_and_what_goes_stand_in_a_change_as_json()
    {
        var boat = System.Text.Encoding.UTF8.GetString(FlowCalc.Examples.ExampleCatalogue.Find("boat-engine-space")!.Value.Span);

        var finding = (await Post("discharge", boat)).GetProperty("findings").EnumerateArray().First(finding => finding.GetProperty("code").GetString() == "discharge-too-slow");

        var change = Assert.Single(finding.GetProperty("cure").GetProperty("changes").EnumerateArray());
        Assert.Equal("supply/bottle/outlet/dipTube/follows", change.GetProperty("path").GetString());
        Assert.Equal(JsonValueKind.True, change.GetProperty("to").ValueKind);
    }

    async Task<JsonElement> Post(string call, string document) => await (call == "flow" ? caller.PostFlow(document) : caller.PostDischarge(document)).Json(200);

    static int Count(JsonElement answer, string severity) => answer.GetProperty("findings").EnumerateArray().Count(finding => finding.GetProperty("severity").GetString() == severity);
}
