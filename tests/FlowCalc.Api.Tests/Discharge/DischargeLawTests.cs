using System.Text.Json;
using System.Text.Json.Nodes;
using FlowCalc.Api.Tests.Hosting;
using FlowCalc.Api.Tests.Requests;

namespace FlowCalc.Api.Tests.Discharge;

/// <summary>What holds of every discharge, whatever the layout.</summary>
public sealed class DischargeLawTests(Service service) : IDisposable
{
    static readonly Dictionary<string, (string Document, double Fill)> Documents = new()
    {
        ["demo"] = (Flow.Documents.Demo, 3),
        ["small"] = (DischargeDocuments.Small, 1.4),
        ["two bottles"] = (DischargeDocuments.BottleWith(bottle => bottle["count"] = 2), 2.8),
        ["opening valve"] = (DischargeDocuments.BottleWith(bottle => bottle["openingTime"] = "0.4 s"), 1.4),
        ["regulator"] = (DischargeDocuments.BottleWith(bottle => bottle["outlet"] = JsonNode.Parse("""{ "valveKv": "2 m3/h", "regulator": { "setPressure": "6 bar", "kv": "2 m3/h" } }""")), 1.4),
        ["short dip tube"] = (DischargeDocuments.BottleWith(bottle => bottle["outlet"]!["dipTube"]!["length"] = "200 mm"), 1.4),
        ["attitudes"] = (DischargeDocuments.Cases("""{ "temperatures": ["5 °C", "60 °C"], "attitudes": [{ "name": "falling", "gravity": [0, 0, 0] }, { "name": "leaning", "gravity": [0.6, 0.3, -0.7] }, { "name": "over", "gravity": [0, 0, 1] }] }"""), 1.4),
    };

    readonly HttpClient caller = service.Caller();

    public static TheoryData<string> Layouts => [.. Documents.Keys];

    public void Dispose() => caller.Dispose();

    [Theory]
    [MemberData(nameof(Layouts))]
    public async Task What_left_the_nozzles_and_what_stayed_add_up_to_the_fill(string layout)
    {
        var (document, fill) = Documents[layout];
        foreach (var one in await Cases(document))
        {
            var given = one.GetProperty("nozzles").EnumerateArray().Sum(nozzle => nozzle.GetProperty("mass").Value());
            Assert.Equal(fill, given + one.GetProperty("leftInBottle").Value() + one.GetProperty("leftInTubes").Value(), tolerance: 1e-9 * fill);
        }
    }

    [Theory]
    [MemberData(nameof(Layouts))]
    public async Task Shares_are_parts_of_all_that_left_the_nozzles(string layout)
    {
        var (document, fill) = Documents[layout];
        foreach (var one in await Cases(document))
        {
            var nozzles = one.GetProperty("nozzles").EnumerateArray().ToList();
            var all = nozzles.Sum(nozzle => nozzle.GetProperty("mass").Value());
            Assert.Equal(all > 0 ? 1 : 0, nozzles.Sum(nozzle => nozzle.GetProperty("share").GetDouble()), tolerance: 1e-12);
            foreach (var nozzle in nozzles)
                Assert.Equal(all * nozzle.GetProperty("share").GetDouble(), nozzle.GetProperty("mass").Value(), tolerance: 1e-12 * fill);
            foreach (var band in one.GetProperty("band").ValueKind == JsonValueKind.Null ? [] : one.GetProperty("band").GetProperty("shares").EnumerateArray().ToArray())
                Assert.InRange(band.GetProperty("high").GetDouble() - band.GetProperty("low").GetDouble(), 0, 1);
        }
    }

    [Theory]
    [MemberData(nameof(Layouts))]
    public async Task Moments_stand_in_the_order_in_which_they_come(string layout)
    {
        var (document, fill) = Documents[layout];
        foreach (var one in await Cases(document))
        {
            var end = one.GetProperty("end").Value();
            var time95 = Time(one, "time95");
            Assert.True(!(time95 > end), $"{time95} s of {end} s");
            Assert.True(!(Time(one, "liquidEnd") > end));
            foreach (var nozzle in one.GetProperty("nozzles").EnumerateArray())
            {
                var (arrival, own, gas) = (Time(nozzle, "arrival"), Time(nozzle, "time95"), Time(nozzle, "liquidEnd"));
                Assert.Equal(nozzle.GetProperty("mass").Value() > 0, own is not null);
                Assert.True(!(arrival > time95) && !(arrival > own) && !(own > end) && !(gas > end) && !(arrival > gas), $"{nozzle} of {fill} kg until {end} s");
            }
        }
    }

    [Theory]
    [MemberData(nameof(Layouts))]
    public async Task Series_rises_in_time_has_lists_of_one_length_and_ends_with_the_case(string layout)
    {
        var (document, fill) = Documents[layout];
        foreach (var one in await Cases(document))
        {
            var series = one.GetProperty("series");
            var times = Numbers(series, "time");
            Assert.True(times.Zip(times.Skip(1)).All(pair => pair.First <= pair.Second));
            Assert.Equal(0, times[0]);
            Assert.Equal(one.GetProperty("end").Value(), times[^1], tolerance: 1e-9 * times[^1]);
            var liquid = Numbers(series, "liquidInBottle");
            Assert.Equal(fill, liquid[0], tolerance: 0.2 * fill);
            Assert.True(liquid[0] <= fill * (1 + 1e-9));
            Assert.True(liquid.Zip(liquid.Skip(1)).All(pair => pair.Second <= pair.First + 1e-9 * fill));
            Assert.Equal(one.GetProperty("leftInBottle").Value(), liquid[^1], tolerance: 1e-6 * fill);
            Assert.All(
                series.GetProperty("nozzles").EnumerateArray().SelectMany(nozzle => (double[][])[Numbers(nozzle, "massFlow"), Numbers(nozzle, "pressure")]).Append(liquid).Append(Numbers(series, "bottlePressure")),
                list => Assert.Equal(times.Length, list.Length));
        }
    }

    // Between its instants a thinned series is taken as straight: what its flows add up to shows whether they are those of the masses.
    [Theory]
    [MemberData(nameof(Layouts))]
    public async Task Flows_of_the_series_add_up_to_the_masses_of_the_nozzles(string layout)
    {
        var (document, fill) = Documents[layout];
        foreach (var one in await Cases(document))
        {
            var times = Numbers(one.GetProperty("series"), "time");
            foreach (var (nozzle, course) in one.GetProperty("nozzles").EnumerateArray().Zip(one.GetProperty("series").GetProperty("nozzles").EnumerateArray()))
            {
                var flow = Numbers(course, "massFlow");
                var sum = Enumerable.Range(1, times.Length - 1).Sum(at => 0.5 * (flow[at] + flow[at - 1]) * (times[at] - times[at - 1]));
                Assert.Equal(nozzle.GetProperty("mass").Value(), sum, tolerance: 0.01 * fill);
            }
        }
    }

    async Task<List<JsonElement>> Cases(string document)
    {
        var answer = await caller.PostDischarge(document).Json(200);
        var cases = answer.GetProperty("cases").EnumerateArray().ToList();
        Assert.All(cases, one => Assert.Equal(JsonValueKind.Null, one.GetProperty("failure").ValueKind));
        return cases;
    }

    static double? Time(JsonElement node, string field) => node.GetProperty(field) is { ValueKind: JsonValueKind.Object } time ? time.Value() : null;

    static double[] Numbers(JsonElement node, string field) => [.. node.GetProperty(field).EnumerateArray().Select(number => number.GetDouble())];
}
