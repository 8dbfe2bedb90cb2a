using System.Text.Json;
using FlowCalc.Api.Tests.Hosting;
using FlowCalc.Api.Tests.Requests;

namespace FlowCalc.Api.Tests.Flow;

public sealed class FlowAnswerTests(Service service) : IDisposable
{
    static readonly string[] Kinds = ["outlet", "tube", "bends", "tees", "fittings", "boreChanges", "rise"];

    readonly HttpClient caller = service.Caller();

    public void Dispose() => caller.Dispose();

    [Theory]
    [InlineData("metric")]
    [InlineData("us")]
    [InlineData("si")]
    public async Task Losses_of_each_nozzle_add_up_to_the_drop_from_a_held_pressure(string units)
    {
        var answer = await caller.PostFlow(Documents.Small, "?units=" + units).Json(200);

        var supply = answer.GetProperty("supply").GetProperty("pressure").Value();
        foreach (var nozzle in answer.GetProperty("nozzles").EnumerateArray())
            AssertAddsUp(nozzle, supply);
    }

    [Fact]
    public async Task Losses_of_each_nozzle_of_the_demo_add_up_to_the_drop_from_the_bottle()
    {
        var answer = await caller.PostFlow(Documents.Demo).Json(200);

        // The demo's bottle is charged to 14 bar at 20 °C and asked at 20 °C.
        foreach (var nozzle in answer.GetProperty("nozzles").EnumerateArray())
            AssertAddsUp(nozzle, 14);
    }

    [Fact]
    public async Task Shares_of_nozzles_and_of_zones_add_up_to_one()
    {
        var answer = await caller.PostFlow(Documents.Demo).Json(200);

        Assert.Equal(1, answer.GetProperty("nozzles").EnumerateArray().Sum(nozzle => nozzle.GetProperty("share").GetDouble()), tolerance: 1e-12);
        Assert.Equal(1, answer.GetProperty("zones").EnumerateArray().Sum(zone => zone.GetProperty("share").GetDouble()), tolerance: 1e-12);
    }

    [Fact]
    public async Task Flows_of_the_nozzles_add_up_to_that_of_the_supply()
    {
        var answer = await caller.PostFlow(Documents.Demo).Json(200);

        var supply = answer.GetProperty("supply").GetProperty("massFlow").Value();
        Assert.Equal(supply, answer.GetProperty("nozzles").EnumerateArray().Sum(nozzle => nozzle.GetProperty("massFlow").Value()), tolerance: 1e-9 * supply);
        Assert.InRange(answer.GetProperty("solver").GetProperty("massResidual").GetDouble(), 0, 1e-10);
    }

    [Fact]
    public async Task Every_field_has_the_place_that_the_contract_gives_it_and_nothing_is_left_out()
    {
        var answer = await caller.PostFlow(Documents.Demo).Json(200);

        Assert.Equal(
            ["verdict", "findings", "supply", "zones", "nozzles", "runs", "points", "band", "solver", "assumptions", "limits", "cautions", "engine"],
            answer.EnumerateObject().Select(field => field.Name));
        Assert.Equal(
            ["id", "zone", "pressure", "massFlow", "volumeFlow", "share", "wantedShare", "deviation", "losses"],
            answer.GetProperty("nozzles")[0].EnumerateObject().Select(field => field.Name));
        Assert.Equal(
            ["id", "from", "to", "massFlow", "velocity", "reynolds", "regime", "pressureIn", "pressureOut", "losses"],
            answer.GetProperty("runs")[0].EnumerateObject().Select(field => field.Name));
        Assert.Equal(Kinds, answer.GetProperty("runs")[0].GetProperty("losses").EnumerateObject().Select(field => field.Name));
        Assert.NotEmpty(answer.GetProperty("cautions").EnumerateArray());
        Assert.Equal(14, answer.GetProperty("points").GetArrayLength());
        Assert.Equal(13, answer.GetProperty("runs").GetArrayLength());
    }

    [Fact]
    public async Task Demo_has_two_starved_nozzles_behind_the_uneven_branch_R11_and_the_feed_tube_cures_it()
    {
        var answer = await caller.PostFlow(Documents.Demo).Json(200);

        var findings = answer.GetProperty("findings").EnumerateArray().ToList();
        var branch = Assert.Single(findings, finding => Code(finding) == "uneven-branch");
        Assert.Contains(Where(branch), id => id == "R11");
        Assert.Contains(branch.GetProperty("cure").GetProperty("changes").EnumerateArray(), change => change.GetProperty("to").GetString() == "feed");
        Assert.Equal("runs/R11/tube", branch.GetProperty("cure").GetProperty("changes")[0].GetProperty("path").GetString());

        Assert.Equal(["exhaust", "fuel-rail"], findings.Where(finding => Code(finding) == "starved-nozzle").SelectMany(Where).Order(StringComparer.Ordinal));
        foreach (var starved in answer.GetProperty("nozzles").EnumerateArray().Where(nozzle => nozzle.GetProperty("id").GetString() is "exhaust" or "fuel-rail"))
            Assert.InRange(starved.GetProperty("deviation").GetDouble(), -0.25, -0.15);
        Assert.Equal("fail", answer.GetProperty("verdict").GetString());
    }

    [Fact]
    public async Task Demo_with_the_cure_done_brings_every_nozzle_within_a_tenth()
    {
        var cured = Documents.Demo.Replace("\"leaves\": \"branch\", \"tube\": \"drop\" },\n    { \"id\": \"R12\"", "\"leaves\": \"branch\", \"tube\": \"feed\" },\n    { \"id\": \"R12\"", StringComparison.Ordinal);
        Assert.NotEqual(Documents.Demo, cured);

        var answer = await caller.PostFlow(cured).Json(200);

        foreach (var nozzle in answer.GetProperty("nozzles").EnumerateArray())
            Assert.InRange(nozzle.GetProperty("deviation").GetDouble(), -0.1, 0.1);
    }

    [Fact]
    public async Task Numbers_are_written_in_full_so_that_they_read_back_to_the_same_double()
    {
        using var response = await caller.PostFlow(Documents.Demo);
        var text = await response.Content.ReadAsStringAsync(TestContext.Current.CancellationToken);
        using var answer = JsonDocument.Parse(text);

        var raw = answer.RootElement.GetProperty("nozzles")[0].GetProperty("pressure").GetProperty("value");
        Assert.Equal(raw.GetRawText(), raw.GetDouble().ToString("R", System.Globalization.CultureInfo.InvariantCulture));
        Assert.True(raw.GetRawText().Length > 10, raw.GetRawText());
    }

    static void AssertAddsUp(JsonElement nozzle, double from)
    {
        var drop = from - nozzle.GetProperty("pressure").Value();
        var sum = Kinds.Sum(kind => nozzle.GetProperty("losses").GetProperty(kind).Value());
        Assert.Equal(drop, sum, tolerance: 1e-9 * Math.Abs(from));
    }

    static string? Code(JsonElement finding) => finding.GetProperty("code").GetString();

    static IEnumerable<string> Where(JsonElement finding) => finding.GetProperty("where").EnumerateArray().Select(id => id.GetString()!);
}
