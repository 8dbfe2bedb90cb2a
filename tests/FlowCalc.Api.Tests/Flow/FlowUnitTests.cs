using System.Text.Json;
using FlowCalc.Api.Tests.Hosting;
using FlowCalc.Api.Tests.Requests;

namespace FlowCalc.Api.Tests.Flow;

public sealed class FlowUnitTests(Service service) : IDisposable
{
    readonly HttpClient caller = service.Caller();

    public void Dispose() => caller.Dispose();

    [Theory]
    [InlineData("us")]
    [InlineData("metric")]
    public async Task Every_quantity_is_the_same_in_another_system_of_units(string units)
    {
        var si = await caller.PostFlow(Documents.Demo, "?units=si").Json(200);
        var other = await caller.PostFlow(Documents.Demo, "?units=" + units).Json(200);

        var (expected, actual) = (Quantities(si).ToList(), Quantities(other).ToList());
        Assert.Equal(expected.Count, actual.Count);
        Assert.True(expected.Count > 250, $"{expected.Count} quantities");
        foreach (var ((place, value), (_, same)) in expected.Zip(actual))
            Assert.True(Math.Abs(value - same) <= 1e-11 * Math.Max(1, Math.Abs(value)), $"{place}: {value} and {same}");
    }

    [Fact]
    public async Task Metric_units_are_those_of_an_answer_without_a_query()
    {
        var plain = await caller.PostFlow(Documents.Demo).Json(200);
        var metric = await caller.PostFlow(Documents.Demo, "?units=metric").Json(200);

        Assert.Equal(metric.GetRawText(), plain.GetRawText());
        Assert.Equal("bar", plain.GetProperty("supply").GetProperty("pressure").GetProperty("unit").GetString());
        Assert.Equal("L/min", plain.GetProperty("supply").GetProperty("volumeFlow").GetProperty("unit").GetString());
        Assert.Equal("kg/s", plain.GetProperty("supply").GetProperty("massFlow").GetProperty("unit").GetString());
    }

    static IEnumerable<(string Place, double Si)> Quantities(JsonElement node, string place = "")
    {
        if (node.ValueKind == JsonValueKind.Object && node.TryGetProperty("unit", out var unit) && node.TryGetProperty("value", out var value))
            yield return (place, SiUnits.Of(value.GetDouble(), unit.GetString()!));
        else if (node.ValueKind == JsonValueKind.Object)
            foreach (var field in node.EnumerateObject())
                foreach (var found in Quantities(field.Value, $"{place}/{field.Name}"))
                    yield return found;
        else if (node.ValueKind == JsonValueKind.Array)
            foreach (var (at, item) in node.EnumerateArray().Index())
                foreach (var found in Quantities(item, $"{place}/{at}"))
                    yield return found;
    }
}
