using System.Globalization;
using System.Text;
using FlowCalc.Api.Tests.Flow;
using FlowCalc.Api.Tests.Hosting;
using FlowCalc.Api.Tests.Requests;
using FlowCalc.Examples;

namespace FlowCalc.Api.Tests.Exchange;

public sealed class ExchangeCallTests(Service service) : IDisposable
{
    readonly HttpClient caller = service.Caller();

    public void Dispose() => caller.Dispose();

    [Fact]
    public async Task A_layout_of_a_liquid_is_a_file_of_plain_text()
    {
        using var response = await Post(Documents.Demo);

        Assert.Equal("text/plain", response.Content.Headers.ContentType?.MediaType);
        var text = await response.Content.ReadAsStringAsync(TestContext.Current.CancellationToken);
        Assert.StartsWith("[TITLE]\n", text, StringComparison.Ordinal);
        Assert.Contains(";fuel-rail\n", text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("?units=us")]
    [InlineData("?format=inp&units=metric")]
    public async Task Units_of_a_file_that_has_its_own_are_a_422(string query)
    {
        var fault = await Post(Documents.Demo, query).Fault(422);

        Assert.Contains("format=csv", fault.GetProperty("errors").GetProperty("?units")[0].GetString()!, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("metric", "L_min")]
    [InlineData("us", "US_gal_min")]
    [InlineData("si", "m3_s")]
    public async Task The_table_has_the_numbers_of_the_flow_in_its_units(string units, string unit)
    {
        var flow = await caller.PostFlow(Documents.Demo, "?units=" + units).Json(200);

        using var response = await Post(Documents.Demo, $"?format=csv&units={units}");
        var lines = (await response.Content.ReadAsStringAsync(TestContext.Current.CancellationToken)).TrimStart('\uFEFF').TrimEnd().Split("\r\n");

        var names = lines[0].Split(',').ToList();
        var at = names.IndexOf("volume_flow_" + unit);
        Assert.True(at > 0, lines[0]);
        foreach (var nozzle in flow.GetProperty("nozzles").EnumerateArray())
        {
            var row = lines.Select(line => line.Split(',')).Single(row => row[0] == "nozzle" && row[1] == nozzle.GetProperty("id").GetString());
            Assert.Equal(nozzle.GetProperty("volumeFlow").Value(), double.Parse(row[at], CultureInfo.InvariantCulture));
            Assert.Equal(nozzle.GetProperty("pressure").Value(), double.Parse(row[3], CultureInfo.InvariantCulture));
        }
        Assert.Equal(flow.GetProperty("points").GetArrayLength() + flow.GetProperty("runs").GetArrayLength(), lines.Length - 1);
    }

    [Fact]
    public async Task A_gas_is_a_422_that_says_so_and_its_table_is_answered()
    {
        var gas = Encoding.UTF8.GetString(ExampleCatalogue.Find("cabinet-inert-gas")!.Value.Span);

        Assert.Contains("no liquid", (await Post(gas).Fault(422)).GetProperty("errors").GetProperty("")[0].GetString(), StringComparison.Ordinal);
        using var table = await Post(gas, "?format=csv");
        Assert.True(table.IsSuccessStatusCode);
    }

    [Theory]
    [InlineData("?format=net", "?format")]
    [InlineData("?units=imperial", "?units")]
    [InlineData("?part=runs", "?part")]
    public async Task Query_that_does_not_fit_is_told(string query, string place) => Assert.True((await Post(Documents.Demo, query).Fault(422)).GetProperty("errors").TryGetProperty(place, out _));

    Task<HttpResponseMessage> Post(string document, string query = "") => caller.PostLayout("/v1/exchange", Encoding.UTF8.GetBytes(document), query);
}
