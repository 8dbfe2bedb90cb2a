using System.Text.Json;
using FlowCalc.Api.Tests.Hosting;
using FlowCalc.Api.Tests.Requests;

namespace FlowCalc.Api.Tests.Catalogue;

/// <summary>Gases and liquefied gases of the catalogue with the pressure of a bottle over its temperature.</summary>
public sealed class ChartTests(Service service) : IDisposable
{
    readonly HttpClient caller = service.Caller();

    public static TheoryData<string> Agents => ["HFC-227ea", "FK-5-1-12", "HFC-125", "HFC-236fa", "HFC-23", "carbon-dioxide", "nitrogen", "argon", "IG-541", "IG-55"];

    public void Dispose() => caller.Dispose();

    [Theory]
    [MemberData(nameof(Agents))]
    public async Task Pressure_rises_with_temperature_and_every_figure_has_a_source(string agent)
    {
        var answer = await caller.Get("/v1/agents/" + agent).Json(200);

        var rows = answer.GetProperty("chart").GetProperty("rows").EnumerateArray().Where(row => row.GetProperty("pressure").ValueKind != JsonValueKind.Null).ToArray();
        var pressures = rows.Select(row => row.GetProperty("pressure").Value()).ToArray();
        Assert.True(rows.Length >= 15, $"{rows.Length} rows");
        Assert.Equal(pressures.Order(), pressures);
        Assert.NotEmpty(answer.GetProperty("sources").EnumerateArray());
        Assert.NotEmpty(answer.GetProperty("cautions").EnumerateArray());
        var isGas = answer.GetProperty("kind").GetString() == "inert-gas";
        Assert.Equal(isGas, !answer.GetProperty("saturation").EnumerateArray().Any());
        Assert.All(answer.GetProperty("saturation").EnumerateArray(), row => Assert.Equal("bara", row.GetProperty("vapourPressure").GetProperty("unit").GetString()));
    }

    // ISO 14520-9 as recalled, not read again: 1150 kg/m³ of HFC-227ea at 25 bar and 20 °C has 34 bar at 50 °C, at 42 bar 53.
    [Theory]
    [InlineData("25", 34)]
    [InlineData("42", 53)]
    public async Task Chart_of_HFC_227ea_is_within_five_per_cent_of_the_standard(string charge, double warm)
    {
        var answer = await caller.Get($"/v1/agents/HFC-227ea?fill=1150%20kg/m3&chargePressure={charge}%20bar").Json(200);

        Assert.Equal(double.Parse(charge, System.Globalization.CultureInfo.InvariantCulture), Pressure(answer, 20), tolerance: 1e-6);
        Assert.Equal(warm, Pressure(answer, 50), tolerance: 0.05 * warm);
    }

    [Fact]
    public async Task Carbon_dioxide_is_full_of_liquid_where_its_density_is_its_fill()
    {
        var answer = await caller.Get("/v1/agents/carbon-dioxide?fill=680%20kg/m3").Json(200);

        // 680 kg/m³ is full of liquid at 26.8 °C and has 142.6 bar absolute at 50 °C, by a separate evaluation of the same equation.
        Assert.Equal("two-phase", Row(answer, 25).GetProperty("phase").GetString());
        Assert.Equal(0.935, Row(answer, 25).GetProperty("liquidPart").GetDouble(), tolerance: 1e-3);
        Assert.Equal("liquid-full", Row(answer, 30).GetProperty("phase").GetString());
        Assert.Equal("one-phase", Row(answer, 50).GetProperty("phase").GetString());
        Assert.Equal(142.6 - 1.01325, Pressure(answer, 50), tolerance: 0.05);
    }

    [Theory]
    [InlineData("/v1/agents/water?fill=700%20kg/m3", "?fill", "is a liquid")]
    [InlineData("/v1/agents/nitrogen?fill=200%20kg/m3", "?fill", "leave the fill out")]
    [InlineData("/v1/agents/carbon-dioxide?chargePressure=60%20bar", "?chargePressure", "leave it out")]
    [InlineData("/v1/agents/HFC-227ea?chargePressure=2%20bar", "?fill", "No such bottle can be")]
    [InlineData("/v1/agents/HFC-227ea?fill=1600%20kg/m3", "?fill", "No such bottle can be")]
    [InlineData("/v1/agents/HFC-227ea?fill=900", "?fill", "900")]
    [InlineData("/v1/agents/HFC-227ea?fill=9%20bar", "?fill", "bar")]
    [InlineData("/v1/agents/HFC-227ea?chargeTemperature=200%20%C2%B0C", "?chargeTemperature", "-53.15 to 86.75 °C")]
    [InlineData("/v1/agents/HFC-227ea?bottle=5", "?bottle", "it takes units, fill, chargePressure, chargeTemperature")]
    [InlineData("/v1/agents/HFC-227ea?fill=900%20kg/m3&fill=800%20kg/m3", "?fill", "more than once")]
    public async Task A_bottle_that_does_not_fit_the_agent_is_a_422_with_its_reason(string path, string name, string words)
    {
        var fault = await caller.Get(path).Fault(422);

        Assert.Contains(words, fault.GetProperty("errors").GetProperty(name)[0].GetString()!, StringComparison.Ordinal);
    }

    static double Pressure(JsonElement answer, double celsius) => Row(answer, celsius).GetProperty("pressure").Value();

    static JsonElement Row(JsonElement answer, double celsius) =>
        Assert.Single(answer.GetProperty("chart").GetProperty("rows").EnumerateArray(), row => Math.Abs(row.GetProperty("temperature").Value() - celsius) < 1e-6);
}
