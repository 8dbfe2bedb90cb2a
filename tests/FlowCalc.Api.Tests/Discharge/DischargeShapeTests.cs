using System.Text.Json;
using FlowCalc.Api.Tests.Flow;
using FlowCalc.Api.Tests.Hosting;
using FlowCalc.Api.Tests.Requests;

namespace FlowCalc.Api.Tests.Discharge;

/// <summary>What stands where in an answer.</summary>
public sealed class DischargeShapeTests(Service service) : IDisposable
{
    readonly HttpClient caller = service.Caller();

    public void Dispose() => caller.Dispose();

    [Fact]
    public async Task Every_field_has_the_place_that_the_contract_gives_it_and_nothing_is_left_out()
    {
        var answer = await caller.PostDischarge(Documents.Demo).Json(200);

        AssertFields(answer, "verdict", "findings", "cases", "assumptions", "limits", "cautions", "engine");
        var one = answer.GetProperty("cases")[0];
        AssertFields(
            one,
            "temperature", "attitude", "failure", "startPressure", "time95", "requirement", "liquidEnd", "end", "ended", "peakMassFlow", "peakPressure", "leftInBottle", "leftInTubes", "mostInTubes", "cushionExponent",
            "zones", "nozzles", "band", "quasiSteady", "series");
        AssertFields(one.GetProperty("requirement"), "part", "of", "quantity", "stated", "time", "within");
        AssertFields(one.GetProperty("zones")[0], "id", "share", "wantedShare", "deviation");
        AssertFields(one.GetProperty("nozzles")[0], "id", "zone", "arrival", "mass", "share", "wantedShare", "deviation", "time95", "liquidEnd", "peakMassFlow", "surge");
        AssertFields(one.GetProperty("band"), "time95", "requirement", "shares", "from");
        AssertFields(one.GetProperty("band").GetProperty("time95"), "low", "high");
        AssertFields(one.GetProperty("band").GetProperty("shares")[0], "id", "low", "high");
        AssertFields(one.GetProperty("quasiSteady"), "emptying", "inertia", "acoustic", "inventory", "lag", "verdict");
        AssertFields(one.GetProperty("series"), "time", "bottlePressure", "liquidInBottle", "nozzles", "units");
        AssertFields(one.GetProperty("series").GetProperty("nozzles")[0], "id", "massFlow", "pressure");
        AssertFields(answer.GetProperty("engine"), "version", "data");
        Assert.NotEmpty(answer.GetProperty("cautions").EnumerateArray());
        Assert.NotEmpty(answer.GetProperty("limits").EnumerateArray());
    }

    [Fact]
    public async Task Demo_has_nine_cases_temperatures_in_order_and_attitudes_within_each()
    {
        var answer = await caller.PostDischarge(Documents.Demo).Json(200);

        var asked = answer.GetProperty("cases").EnumerateArray().Select(one => (one.GetProperty("temperature").Value(), one.GetProperty("attitude").GetString())).ToList();
        string[] attitudes = ["upright", "on its roof", "on its left side"];
        Assert.Equal(new[] { 0.0, 20, 60 }.SelectMany(_ => attitudes), asked.Select(one => one.Item2));
        foreach (var (at, celsius) in new[] { 0.0, 20, 60 }.Index())
            Assert.All(asked.Skip(3 * at).Take(3), one => Assert.Equal(celsius, one.Item1, tolerance: 1e-9));
        Assert.All(answer.GetProperty("cases").EnumerateArray(), one => Assert.Equal(JsonValueKind.Null, one.GetProperty("failure").ValueKind));
    }

    [Fact]
    public async Task Nozzles_zones_shares_and_series_stand_in_the_order_of_the_document()
    {
        var answer = await caller.PostDischarge(Documents.Demo).Json(200);

        string[] nozzles = ["cell-left", "cell-right", "driver", "navigator", "turbo", "fuel-rail", "exhaust"];
        foreach (var one in answer.GetProperty("cases").EnumerateArray())
        {
            Assert.Equal(nozzles, Ids(one.GetProperty("nozzles")));
            Assert.Equal(nozzles, Ids(one.GetProperty("band").GetProperty("shares")));
            Assert.Equal(nozzles, Ids(one.GetProperty("series").GetProperty("nozzles")));
            Assert.Equal(["cab", "fuel cell", "engine"], Ids(one.GetProperty("zones")));
        }
    }

    [Fact]
    public async Task Case_without_a_discharge_has_its_reason_and_nothing_else()
    {
        var answer = await caller.PostDischarge(DischargeDocuments.Cases("""{ "temperatures": ["-5 °C"] }""")).Json(200);

        var one = answer.GetProperty("cases")[0];
        Assert.Contains("freez", one.GetProperty("failure").GetString()!, StringComparison.Ordinal);
        foreach (var field in (string[])["startPressure", "time95", "requirement", "liquidEnd", "end", "ended", "peakMassFlow", "peakPressure", "leftInBottle", "leftInTubes", "mostInTubes", "cushionExponent", "band", "quasiSteady", "series"])
            Assert.True(one.GetProperty(field).ValueKind == JsonValueKind.Null, field);
        Assert.Empty(one.GetProperty("nozzles").EnumerateArray());
        Assert.Empty(one.GetProperty("zones").EnumerateArray());
        Assert.Equal("fail", answer.GetProperty("verdict").GetString());
    }

    [Fact]
    public async Task Findings_name_what_the_document_has_and_stand_worst_first()
    {
        var answer = await caller.PostDischarge(Documents.Demo).Json(200);

        using var demo = JsonDocument.Parse(Documents.Demo);
        string[] ids = [.. Ids(demo.RootElement.GetProperty("points")), .. Ids(demo.RootElement.GetProperty("runs")), "cab", "fuel cell", "engine"];
        var findings = answer.GetProperty("findings").EnumerateArray().ToList();
        Assert.NotEmpty(findings);
        // What an assumption is about stands as its pointer.
        string[] places = [.. ids, .. answer.GetProperty("assumptions").EnumerateArray().Select(assumed => assumed.GetProperty("pointer").GetString()!)];
        Assert.All(findings.SelectMany(finding => finding.GetProperty("where").EnumerateArray()), place => Assert.Contains(place.GetString(), places));
        string[] order = ["fail", "warn", "note"];
        var ranks = findings.Select(finding => Array.IndexOf(order, finding.GetProperty("severity").GetString())).ToList();
        Assert.Equal(ranks.Order(), ranks);
        Assert.Equal(order[ranks[0]], answer.GetProperty("verdict").GetString());
    }

    static void AssertFields(JsonElement node, params string[] names) => Assert.Equal(names, node.EnumerateObject().Select(field => field.Name));

    static IEnumerable<string> Ids(JsonElement list) => list.EnumerateArray().Select(one => one.GetProperty("id").GetString()!);
}
