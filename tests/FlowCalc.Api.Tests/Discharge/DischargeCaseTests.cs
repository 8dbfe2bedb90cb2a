using System.Text.Json;
using System.Text.Json.Nodes;
using FlowCalc.Api.Tests.Hosting;
using FlowCalc.Api.Tests.Requests;

namespace FlowCalc.Api.Tests.Discharge;

/// <summary>Which cases are answered, and what is required of them.</summary>
public sealed class DischargeCaseTests(Service service) : IDisposable
{
    readonly HttpClient caller = service.Caller();

    public void Dispose() => caller.Dispose();

    // Water freezes at 0 °C: 5 K over it is warmer than -20 °C. A liquid of one's own without a freezing point is asked at -20 °C.
    [Theory]
    [InlineData("\"water\"", null, "20, 60, 5", "upright")]
    [InlineData("\"water\"", "motorsport", "20, 60, 5", "upright, on the roof, on the left side, on the right side")]
    [InlineData("{ \"density\": \"1020 kg/m3\", \"viscosity\": \"1.4 mPa·s\" }", "machine", "20, 60, -20", "upright")]
    public async Task Cases_that_the_document_leaves_open_are_the_usual_ones_and_listed_as_assumptions(string agent, string? application, string temperatures, string attitudes)
    {
        var document = DischargeDocuments.SmallWith(layout =>
        {
            layout.Remove("cases");
            layout["agent"] = JsonNode.Parse(agent);
            if (application is not null)
                layout["application"] = application;
        });

        var answer = await caller.PostDischarge(document).Json(200);

        var asked = answer.GetProperty("cases").EnumerateArray().Select(one => (Celsius: Math.Round(one.GetProperty("temperature").Value(), 9), Attitude: one.GetProperty("attitude").GetString()!)).ToList();
        var expected = temperatures.Split(", ").SelectMany(celsius => attitudes.Split(", ").Select(attitude => (double.Parse(celsius), attitude)));
        Assert.Equal(expected, asked);
        Assert.Contains(temperatures.Replace(",", " °C,", StringComparison.Ordinal), Assumption(answer, "/cases/temperatures"), StringComparison.Ordinal);
        Assert.Equal(attitudes, Assumption(answer, "/cases/attitudes"));
    }

    [Fact]
    public async Task Cases_that_the_document_states_are_no_assumptions()
    {
        var answer = await caller.PostDischarge(DischargeDocuments.Small).Json(200);

        Assert.Single(answer.GetProperty("cases").EnumerateArray());
        Assert.DoesNotContain(answer.GetProperty("assumptions").EnumerateArray(), one => one.GetProperty("pointer").GetString()!.StartsWith("/cases", StringComparison.Ordinal));
    }

    [Fact]
    public async Task Requirement_that_the_document_states_is_answered()
    {
        var document = DischargeDocuments.SmallWith(layout => layout["requirement"] = JsonNode.Parse("""{ "part": 0.5, "of": "contents", "within": ["1 s", "40 s"] }"""));

        var one = (await caller.PostDischarge(document).Json(200)).GetProperty("cases")[0];

        var requirement = one.GetProperty("requirement");
        Assert.Equal((0.5, "contents", true), (requirement.GetProperty("part").GetDouble(), requirement.GetProperty("of").GetString(), requirement.GetProperty("stated").GetBoolean()));
        Assert.Equal([1, 40], requirement.GetProperty("within").EnumerateArray().Select(time => time.Value()));
        Assert.InRange(requirement.GetProperty("time").Value(), one.GetProperty("nozzles")[0].GetProperty("arrival").Value(), one.GetProperty("time95").Value());
        Assert.Equal(JsonValueKind.Object, one.GetProperty("band").GetProperty("requirement").ValueKind);
    }

    [Fact]
    public async Task Requirement_of_a_quantity_is_met_where_so_much_is_out_and_never_where_there_is_less()
    {
        foreach (var (quantity, isMet) in ((string, bool)[])[("0.7 kg", true), ("5 kg", false)])
        {
            var document = DischargeDocuments.SmallWith(layout => layout["requirement"] = JsonNode.Parse($$"""{ "part": 1, "of": "quantity", "quantity": "{{quantity}}", "within": ["0 s", "60 s"] }"""));

            var answer = await caller.PostDischarge(document).Json(200);

            var requirement = answer.GetProperty("cases")[0].GetProperty("requirement");
            Assert.Equal("quantity", requirement.GetProperty("of").GetString());
            Assert.Equal(isMet, requirement.GetProperty("time").ValueKind == JsonValueKind.Object);
            Assert.Equal(!isMet, answer.GetProperty("verdict").GetString() == "fail");
        }
    }

    [Theory]
    [InlineData("motorsport", true)]
    [InlineData("machine", false)]
    [InlineData(null, false)]
    public async Task Requirement_that_the_document_leaves_open_is_the_usual_one_of_the_application(string? application, bool isUsual)
    {
        var document = DischargeDocuments.SmallWith(layout =>
        {
            if (application is not null)
                layout["application"] = application;
        });

        var requirement = (await caller.PostDischarge(document).Json(200)).GetProperty("cases")[0].GetProperty("requirement");

        Assert.Equal(isUsual, requirement.ValueKind == JsonValueKind.Object);
        if (!isUsual)
            return;
        Assert.Equal((0.95, false), (requirement.GetProperty("part").GetDouble(), requirement.GetProperty("stated").GetBoolean()));
        Assert.Equal([10, 30], requirement.GetProperty("within").EnumerateArray().Select(time => time.Value()));
    }

    [Fact]
    public async Task Case_below_freezing_fails_and_the_others_are_answered()
    {
        var answer = await caller.PostDischarge(DischargeDocuments.Cases("""{ "temperatures": ["20 °C", "-10 °C", "60 °C"] }""")).Json(200);

        var failures = answer.GetProperty("cases").EnumerateArray().Select(one => one.GetProperty("failure").GetString()).ToList();
        Assert.Equal([true, false, true], failures.Select(failure => failure is null));
        Assert.Contains("freezing point", failures[1], StringComparison.Ordinal);
        Assert.Equal("fail", answer.GetProperty("verdict").GetString());
        Assert.All((int[])[0, 2], at => Assert.True(answer.GetProperty("cases")[at].GetProperty("time95").Value() > 0));
    }

    [Fact]
    public async Task Failed_case_leaves_the_answers_of_the_others_as_they_are_alone()
    {
        var alone = await caller.PostDischarge(DischargeDocuments.Small).Json(200);
        var beside = await caller.PostDischarge(DischargeDocuments.Cases("""{ "temperatures": ["-10 °C", "20 °C"], "attitudes": [{ "name": "upright", "gravity": [0, 0, -1] }] }""")).Json(200);

        Assert.Equal(alone.GetProperty("cases")[0].GetRawText(), beside.GetProperty("cases")[1].GetRawText());
    }

    [Fact]
    public async Task Bottle_on_its_head_is_blind_and_the_finding_says_so()
    {
        var answer = await caller.PostDischarge(DischargeDocuments.Cases("""{ "temperatures": ["20 °C"], "attitudes": [{ "name": "over", "gravity": [0, 0, 1] }] }""")).Json(200);

        var one = answer.GetProperty("cases")[0];
        Assert.Equal(1.4, one.GetProperty("leftInBottle").Value(), tolerance: 1e-12);
        Assert.All((string[])["time95", "liquidEnd"], field => Assert.Equal(JsonValueKind.Null, one.GetProperty(field).ValueKind));
        Assert.Equal("equalised", one.GetProperty("ended").GetString());
        Assert.True(one.GetProperty("end").Value() > 0);
        foreach (var nozzle in one.GetProperty("nozzles").EnumerateArray())
            Assert.Equal((0, JsonValueKind.Null), (nozzle.GetProperty("mass").Value(), nozzle.GetProperty("arrival").ValueKind));
        var finding = Assert.Single(answer.GetProperty("findings").EnumerateArray(), finding => finding.GetProperty("code").GetString() == "bottle-blind-when-inverted");
        Assert.Equal("fail", finding.GetProperty("severity").GetString());
    }

    [Fact]
    public async Task Without_gravity_all_is_drawn_and_the_answer_says_that_it_is_assumed()
    {
        var answer = await caller.PostDischarge(DischargeDocuments.Cases("""{ "temperatures": ["20 °C"], "attitudes": [{ "name": "falling", "gravity": [0, 0, 0] }] }""")).Json(200);

        var one = answer.GetProperty("cases")[0];
        Assert.Equal(0, one.GetProperty("leftInBottle").Value(), tolerance: 1e-9);
        Assert.True(one.GetProperty("time95").Value() > 0);
        Assert.Contains(answer.GetProperty("assumptions").EnumerateArray(), assumed => assumed.GetProperty("value").GetString()!.Contains("without gravity", StringComparison.Ordinal));
    }

    static string Assumption(JsonElement answer, string pointer) =>
        answer.GetProperty("assumptions").EnumerateArray().Single(one => one.GetProperty("pointer").GetString() == pointer).GetProperty("value").GetString()!;
}
