using System.Diagnostics;
using System.Text.Json.Nodes;
using FlowCalc.Api.Tests.Flow;
using FlowCalc.Api.Tests.Hosting;
using FlowCalc.Api.Tests.Requests;

namespace FlowCalc.Api.Tests.Coverage;

public sealed class CoverageCallTests(Service service) : IDisposable
{
    /// <summary>A halocarbon in a space with people.</summary>
    public const string Space =
        """
        { "format": 1, "application": "marine-engine-space", "agent": "HFC-227ea", "supply": { "bottle": { "volume": "4 L", "fill": "3 kg", "chargePressure": "25 bar" } },
          "zones": { "engine": { "occupied": true, "volume": "2.5 m3", "temperatures": ["0 °C", "40 °C"], "airflow": "0.1 m3/s", "openings": "0 m2", "hazard": "class-B", "leaving": "20 s" } },
          "points": [ { "id": "s", "kind": "supply" }, { "id": "n", "kind": "nozzle", "orifice": { "diameter": "8 mm", "dischargeCoefficient": 0.8 }, "zone": "engine" } ],
          "runs": [ { "from": "s", "to": "n", "bore": "12 mm", "length": "2 m" } ], "cases": { "temperatures": ["20 °C"] } }
        """;

    /// <summary>A zone alone, of which nearly nothing is known, and a spray that grazes a face.</summary>
    public const string Bare =
        """
        { "format": 1, "agent": "nitrogen", "supply": { "pressure": "20 bar" }, "zones": { "box": {} },
          "points": [ { "id": "s", "kind": "supply", "at": ["0 m", "0 m", "1 m"] },
            { "id": "n", "kind": "nozzle", "kFactor": "1 L/min/bar^0.5", "zone": "box", "at": ["0 m", "0 m", "0.5 m"], "aim": [1, 0, -0.5], "spray": { "angle": "90°" } } ],
          "runs": [ { "from": "s", "to": "n", "bore": "6 mm" } ],
          "coverage": { "surfaces": { "floor": { "corners": [["0 m", "0 m", "0 m"], ["2 m", "0 m", "0 m"], ["2 m", "1 m", "0 m"]] } } } }
        """;

    readonly HttpClient caller = service.Caller();

    public void Dispose() => caller.Dispose();

    [Fact]
    public async Task Demo_covers_what_it_has_to_and_points_at_nobody()
    {
        var answer = await caller.PostCoverage(Documents.Demo).Json(200);

        Assert.Equal("note", answer.GetProperty("verdict").GetString());
        Assert.All(answer.GetProperty("targets").EnumerateArray(), target => Assert.True(target.GetProperty("covered").GetBoolean()));
        Assert.All(answer.GetProperty("persons").EnumerateArray(), person => Assert.True(person.GetProperty("offAxis").Value() > 60));
        var top = answer.GetProperty("surfaces").EnumerateArray().Single(surface => surface.GetProperty("id").GetString() == "block top");
        Assert.Equal(top.GetProperty("coveredPart").GetDouble(), top.GetProperty("covered").Value() / top.GetProperty("area").Value(), tolerance: 1e-12);
        Assert.Equal("L/min/m2", top.GetProperty("density").GetProperty("least").GetProperty("unit").GetString());
        Assert.NotEmpty(answer.GetProperty("notProven").EnumerateArray());
        Assert.Contains(answer.GetProperty("cautions").EnumerateArray(), caution => caution.GetString()!.StartsWith("No approval", StringComparison.Ordinal));
    }

    [Fact]
    public async Task Masses_of_the_zones_are_those_of_the_discharge()
    {
        var coverage = await caller.PostCoverage(Documents.Demo).Json(200);
        var discharge = await caller.PostDischarge(Documents.Demo).Json(200);

        foreach (var zone in coverage.GetProperty("zones").EnumerateArray())
        {
            var masses = discharge.GetProperty("cases").EnumerateArray()
                .Select(one => one.GetProperty("nozzles").EnumerateArray().Where(nozzle => nozzle.GetProperty("zone").GetString() == zone.GetProperty("id").GetString()).Sum(nozzle => nozzle.GetProperty("mass").Value())).ToArray();
            // The band of a case reaches a little further than its plain answer.
            Assert.InRange(zone.GetProperty("mass").GetProperty("least").Value(), 0.95 * masses.Min(), masses.Min() + 1e-9);
            Assert.InRange(zone.GetProperty("mass").GetProperty("most").Value(), masses.Max() - 1e-9, 1.05 * masses.Max());
        }
    }

    [Fact]
    public async Task Units_of_the_answer_are_those_asked_for_and_the_amounts_the_same()
    {
        var metric = (await caller.PostCoverage(Space).Json(200)).GetProperty("zones")[0];
        var us = (await caller.PostCoverage(Space, "?units=us").Json(200)).GetProperty("zones")[0];

        Assert.Equal("lb", us.GetProperty("need").GetProperty("mass").GetProperty("unit").GetString());
        Assert.Equal(metric.GetProperty("need").GetProperty("mass").Value(), 0.45359237 * us.GetProperty("need").GetProperty("mass").Value(), tolerance: 1e-9);
        Assert.Equal(1.9484062, metric.GetProperty("need").GetProperty("mass").Value(), tolerance: 1e-6);
        Assert.Equal("°F", us.GetProperty("exposure").GetProperty("hottest").GetProperty("unit").GetString());
    }

    [Fact]
    public async Task Air_through_a_flooded_space_fails_and_harm_is_told()
    {
        var answer = await caller.PostCoverage(Space).Json(200);

        var codes = answer.GetProperty("findings").EnumerateArray().Select(finding => finding.GetProperty("code").GetString()).ToArray();
        Assert.Contains("flooding-not-claimable", codes);
        Assert.Contains("over-loael", codes);
        Assert.Equal(2.4, answer.GetProperty("zones")[0].GetProperty("air").GetProperty("changesPerMinute").GetDouble(), tolerance: 1e-9);
        Assert.Equal(0, answer.GetProperty("zones")[0].GetProperty("exposure").GetProperty("allowed").Value());
    }

    [Fact]
    public async Task Document_with_neither_zones_nor_coverage_is_a_422_that_says_so() =>
        Assert.Contains("missing", (await caller.PostCoverage(Documents.SmallWith(small =>
        {
            small.Remove("zones");
            foreach (var point in small["points"]!.AsArray()) point!.AsObject().Remove("zone");
        })).Fault(422)).GetProperty("errors").GetProperty("/coverage")[0].GetString()!, StringComparison.Ordinal);

    [Fact]
    public async Task More_pairs_than_the_limit_are_a_422_with_both_numbers()
    {
        await using var small = Service.With(("Limits:CoveragePairs", "100"));
        using var other = small.Caller();

        // Six surfaces, seven targets and two persons times seven nozzles.
        var detail = (await other.PostCoverage(Documents.Demo).Fault(422)).GetRawText();

        Assert.Contains("105", detail, StringComparison.Ordinal);
        Assert.Contains("100", detail, StringComparison.Ordinal);
    }

    // 140 surfaces of 64 corners and 71 nozzles: about as much as the limits let through.
    [Fact]
    public async Task The_largest_document_that_the_limits_let_through_is_answered_or_refused_in_time()
    {
        var document = Crowded(surfaces: 140, nozzles: 71);
        var watch = Stopwatch.StartNew();

        using var response = await caller.PostCoverage(document);

        Assert.Contains((int)response.StatusCode, (int[])[200, 422]);
        // Eight seconds by the limits, and what a machine busy with other tests adds.
        Assert.True(watch.Elapsed < TimeSpan.FromSeconds(60), $"{watch.Elapsed}");
        TestContext.Current.TestOutputHelper?.WriteLine($"{(int)response.StatusCode} after {watch.Elapsed}");
    }

    [Fact]
    public async Task Query_that_does_not_fit_is_told() =>
        Assert.NotEmpty((await caller.PostCoverage(Documents.Demo, "?today=2026-11-25").Fault(422)).GetProperty("errors").GetProperty("?today")[0].GetString()!);

    [Fact]
    public async Task Cure_of_a_target_is_a_change_that_a_comparison_takes()
    {
        var demo = JsonNode.Parse(Documents.Demo)!;
        demo["points"]!.AsArray().Single(point => (string?)point!["id"] == "exhaust")!["aim"] = JsonNode.Parse("[0, -1, 0]");
        var finding = (await caller.PostCoverage(demo.ToJsonString()).Json(200)).GetProperty("findings").EnumerateArray().First(one => one.GetProperty("code").GetString() == "target-not-covered");
        var change = finding.GetProperty("cure").GetProperty("changes")[0];

        Assert.Equal("points/exhaust/aim", change.GetProperty("path").GetString());
        var request = new JsonObject
        {
            ["layout"] = demo,
            ["variants"] = new JsonArray(new JsonObject { ["name"] = "turned", ["set"] = new JsonObject { ["points/exhaust/aim"] = JsonNode.Parse(change.GetProperty("to").GetRawText()) } }),
        };
        await caller.PostStudy("compare", request.ToJsonString()).Json(200);
    }

    static string Crowded(int surfaces, int nozzles)
    {
        var demo = JsonNode.Parse(Bare)!;
        var points = demo["points"]!.AsArray();
        var runs = demo["runs"]!.AsArray();
        points.RemoveAt(1);
        runs.Clear();
        points.Add(JsonNode.Parse("""{ "id": "j", "kind": "junction", "at": ["0 m", "0 m", "0.9 m"] }"""));
        runs.Add(JsonNode.Parse("""{ "from": "s", "to": "j", "bore": "20 mm" }"""));
        for (var i = 0; i < nozzles; i++)
        {
            points.Add(JsonNode.Parse(FormattableString.Invariant($$"""{ "id": "n{{i}}", "kind": "nozzle", "kFactor": "1 L/min/bar^0.5", "zone": "box", "at": ["{{0.02 * i}} m", "0 m", "0.5 m"], "aim": [0, 0, -1], "spray": { "angle": "150°" } }""")));
            runs.Add(JsonNode.Parse($$"""{ "from": "j", "to": "n{{i}}", "bore": "6 mm" }"""));
        }
        var faces = new JsonObject();
        for (var i = 0; i < surfaces; i++)
        {
            var height = -0.01 * i;
            faces[$"f{i}"] = new JsonObject
            {
                ["corners"] = new JsonArray([.. Enumerable.Range(0, 64).Select(corner => (JsonNode)new JsonArray(
                    Metres(2 * Math.Cos(corner * Math.PI / 32)), Metres(2 * Math.Sin(corner * Math.PI / 32)), Metres(height)))]),
            };
        }
        demo["coverage"] = new JsonObject { ["surfaces"] = faces };
        return demo.ToJsonString();
    }

    static JsonValue Metres(double metres) => JsonValue.Create(FormattableString.Invariant($"{metres:R} m"))!;
}
