using System.Text.Json;
using FlowCalc.Api.Tests.Flow;
using FlowCalc.Api.Tests.Hosting;
using FlowCalc.Api.Tests.Requests;

namespace FlowCalc.Api.Tests.Discharge;

public sealed class DischargeUnitTests(Service service) : IDisposable
{
    readonly HttpClient caller = service.Caller();

    public void Dispose() => caller.Dispose();

    [Theory]
    [InlineData("us")]
    [InlineData("metric")]
    public async Task Every_quantity_and_every_series_is_the_same_in_another_system_of_units(string units)
    {
        var si = await caller.PostDischarge(Documents.Demo, "?units=si").Json(200);
        var other = await caller.PostDischarge(Documents.Demo, "?units=" + units).Json(200);

        var (expected, actual) = (Numbers(si).ToList(), Numbers(other).ToList());
        Assert.Equal(expected.Count, actual.Count);
        Assert.True(expected.Count > 5_000, $"{expected.Count} numbers");
        // A pressure that is nearly the surroundings' has the rounding of an absolute one, about 1e5 Pa.
        foreach (var ((place, value), (_, same)) in expected.Zip(actual))
            Assert.True(Math.Abs(value - same) <= 1e-11 * Math.Max(1, Math.Abs(value)) + (place.Contains("ressure", StringComparison.Ordinal) ? 1e-9 : 0), $"{place}: {value} and {same}");
    }

    [Theory]
    [InlineData("", "bar", "kg", "kg/s", "°C")]
    [InlineData("?units=metric", "bar", "kg", "kg/s", "°C")]
    [InlineData("?units=si", "Pa", "kg", "kg/s", "K")]
    [InlineData("?units=us", "psi", "lb", "lb/s", "°F")]
    public async Task Units_are_those_asked_for(string query, string pressure, string mass, string flow, string temperature)
    {
        var one = (await caller.PostDischarge(DischargeDocuments.Small, query).Json(200)).GetProperty("cases")[0];

        Assert.Equal((temperature, pressure, mass, flow), (Unit(one, "temperature"), Unit(one, "peakPressure"), Unit(one, "leftInTubes"), Unit(one, "peakMassFlow")));
        Assert.Equal("s", Unit(one, "end"));
        var units = one.GetProperty("series").GetProperty("units");
        Assert.Equal(
            ("s", pressure, mass, flow),
            (units.GetProperty("time").GetString(), units.GetProperty("pressure").GetString(), units.GetProperty("mass").GetString(), units.GetProperty("massFlow").GetString()));
    }

    // Charged to 12 bar gauge at 20 °C: that is what the bottle has before the valve opens, whatever the surroundings' pressure.
    [Theory]
    [InlineData("1.01325 bara")]
    [InlineData("0.7 bara")]
    public async Task Pressures_are_gauge(string ambient)
    {
        var document = DischargeDocuments.SmallWith(layout => layout["ambientPressure"] = ambient);

        var one = (await caller.PostDischarge(document).Json(200)).GetProperty("cases")[0];

        Assert.Equal(12, one.GetProperty("startPressure").Value(), tolerance: 1e-6);
        Assert.Equal(12, one.GetProperty("peakPressure").Value(), tolerance: 1e-6);
        var series = one.GetProperty("series");
        Assert.Equal(12, series.GetProperty("bottlePressure")[0].GetDouble(), tolerance: 1e-6);
        Assert.Equal("equalised", one.GetProperty("ended").GetString());
        Assert.InRange(series.GetProperty("bottlePressure").EnumerateArray().Last().GetDouble(), -1e-6, 0.02);
        foreach (var nozzle in series.GetProperty("nozzles").EnumerateArray())
            Assert.All(nozzle.GetProperty("pressure").EnumerateArray(), pressure => Assert.InRange(pressure.GetDouble(), -1e-6, 12.1));
    }

    static string? Unit(JsonElement one, string field) => one.GetProperty(field).GetProperty("unit").GetString();

    static IEnumerable<(string Place, double Si)> Numbers(JsonElement node, string place = "")
    {
        if (node.ValueKind == JsonValueKind.Object && node.TryGetProperty("unit", out var unit) && node.TryGetProperty("value", out var value))
            yield return (place, SiUnits.Of(value.GetDouble(), unit.GetString()!));
        else if (node.ValueKind == JsonValueKind.Object && node.TryGetProperty("units", out var units))
            foreach (var number in Series(node, units, place))
                yield return number;
        else if (node.ValueKind == JsonValueKind.Object)
            foreach (var field in node.EnumerateObject())
                foreach (var found in Numbers(field.Value, $"{place}/{field.Name}"))
                    yield return found;
        else if (node.ValueKind == JsonValueKind.Array)
            foreach (var (at, item) in node.EnumerateArray().Index())
                foreach (var found in Numbers(item, $"{place}/{at}"))
                    yield return found;
    }

    static IEnumerable<(string Place, double Si)> Series(JsonElement series, JsonElement units, string place)
    {
        List<(JsonElement Node, string Field, string Kind)> lists = [(series, "time", "time"), (series, "bottlePressure", "pressure"), (series, "liquidInBottle", "mass")];
        foreach (var nozzle in series.GetProperty("nozzles").EnumerateArray())
            lists.AddRange([(nozzle, "massFlow", "massFlow"), (nozzle, "pressure", "pressure")]);
        foreach (var (node, field, kind) in lists)
            foreach (var (at, number) in node.GetProperty(field).EnumerateArray().Index())
                yield return ($"{place}/{field}/{at}", SiUnits.Of(number.GetDouble(), units.GetProperty(kind).GetString()!));
    }
}
