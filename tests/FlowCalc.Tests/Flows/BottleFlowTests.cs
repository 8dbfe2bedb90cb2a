using FlowCalc.Agents;
using FlowCalc.Flows;

namespace FlowCalc.Tests.Flows;

/// <summary>The steady flow out of a bottle: its pressure at the temperature asked, and what its outlet takes.</summary>
public class BottleFlowTests
{
    const string Nozzle = """{ "id": "N", "kind": "nozzle", "orifice": { "diameter": "3 mm", "dischargeCoefficient": 0.8 } }""";
    const string Run = """{ "from": "S", "to": "N", "bore": "8 mm", "length": "1 m" }""";

    static string Document(string outlet = "", string more = "", string temperature = "20 °C", string fill = "3 kg") => $$"""
        { "format": 1, "agent": "water", "temperature": "{{temperature}}",
          "supply": { "bottle": { "volume": "5 L", "fill": "{{fill}}", "chargePressure": "14 bar", "chargeTemperature": "20 °C"{{more}}{{outlet}} } },
          "points": [ { "id": "S", "kind": "supply" }, {{Nozzle}} ], "runs": [ {{Run}} ] }
        """;

    static FlowResult Solve(string json) => Documents.Solve(json);

    static double Gauge(UnitsNet.Pressure pressure) => pressure.Pascals - 101_325;

    [Fact]
    public void At_the_charge_temperature_the_bottle_is_at_its_charge_pressure()
    {
        var result = Solve(Document());

        Assert.Equal(14e5, Gauge(result.Supply!.ReservoirPressure), tolerance: 1e-6);
        Assert.Equal(14e5, Gauge(result.Supply.Pressure), tolerance: 1e-6);
    }

    [Fact]
    public void A_warm_bottle_follows_the_gas_law_in_the_room_that_the_liquid_leaves()
    {
        var result = Solve(Document(temperature: "50 °C"));

        // Water: 998.21 and 988.03 kg/m³, vapour 2 339 and 12 352 Pa (steam tables, from memory). Nitrogen's second virial coefficient rises by 5 cm³/mol
        // between the two temperatures, which adds 0.3 % at 16 bar.
        var (gas20, gas50) = (5e-3 - 3 / 998.21, 5e-3 - 3 / 988.03);
        var expected = (14e5 + 101_325 - 2_339) * (323.15 / 293.15) * gas20 / gas50 + 12_352;
        Assert.Equal(1.0033, result.Supply!.ReservoirPressure.Pascals / expected, tolerance: 3e-4);
    }

    // At 150 bar nitrogen and argon part from the ideal gas by 5 % and more between these temperatures.
    [Theory]
    [InlineData("nitrogen")]
    [InlineData("argon")]
    public void A_cushion_under_high_pressure_follows_the_equation_of_its_gas(string gas)
    {
        var result = Solve(Document(temperature: "60 °C", more: $", \"cushionGas\": \"{gas}\"").Replace("14 bar", "150 bar", StringComparison.Ordinal));

        var equation = HelmholtzEquation.Of(gas);
        var water = AgentCatalogue.Find("water")!;
        var (dry, low, high) = (150e5 + 101_325 - water.VapourPressure(293.15), 0.0, 600.0);
        for (var i = 0; i < 60; i++) (low, high) = equation.At(293.15, (low + high) / 2).Pressure < dry ? ((low + high) / 2, high) : (low, (low + high) / 2);
        var density = low * (5e-3 - 3 / water.Density(293.15)) / (5e-3 - 3 / water.Density(333.15));
        var expected = equation.At(333.15, density).Pressure + water.VapourPressure(333.15);
        Assert.Equal(1, result.Supply!.ReservoirPressure.Pascals / expected, tolerance: 1e-8);
    }

    [Fact]
    public void The_outlets_losses_lie_between_the_bottle_and_the_supply_point()
    {
        var outlet = """, "outlet": { "dipTube": { "bore": "8 mm", "roughness": "0 mm", "length": "0.3 m" }, "valveKv": "1.5 m3/h" }""";

        var result = Solve(Document(outlet));

        var drop = (result.Supply!.ReservoirPressure - result.Supply.Pressure).Pascals;
        var flow = result.Supply.VolumeFlow.CubicMetersPerSecond;
        var density = result.Supply.MassFlow.KilogramsPerSecond / flow;
        var velocity = flow / (Math.PI / 4 * 0.008 * 0.008);
        var valve = 1e5 * density / 1000 * Math.Pow(flow * 3600 / 1.5, 2);
        var head = density * velocity * velocity / 2;
        var friction = Losses.DarcyFriction.Factor(density * velocity * 0.008 / 1.0016e-3, 0) * 0.3 / 0.008;
        Assert.Equal(valve + (0.57 + friction) * head, drop, tolerance: 1e-4 * drop);
        Assert.Equal(drop, result.Nozzles[0].Losses.Outlet.Pascals, tolerance: 1e-9 * drop);
        Assert.Contains(result.Assumptions, assumption => assumption.Pointer == "/supply/bottle/outlet/dipTube");
    }

    [Fact]
    public void Two_bottles_share_the_flow_and_so_lose_a_quarter_each_in_their_outlets()
    {
        var outlet = """, "outlet": { "valveKv": "1 m3/h" }""";

        var (one, two) = (Solve(Document(outlet)), Solve(Document(outlet, """, "count": 2""")));

        var (first, second) = (one.Nozzles[0], two.Nozzles[0]);
        var ratio = second.MassFlow.KilogramsPerSecond / first.MassFlow.KilogramsPerSecond;
        Assert.True(ratio > 1);
        Assert.Equal(0.25 * ratio * ratio, second.Losses.Outlet / first.Losses.Outlet, tolerance: 1e-9);
    }

    [Fact]
    public void A_regulator_holds_its_set_pressure_while_the_bottle_can_deliver_it()
    {
        var result = Solve(Document(""", "outlet": { "valveKv": "3 m3/h", "regulator": { "setPressure": "6 bar", "kv": "3 m3/h" } }"""));

        Assert.Equal(6e5, Gauge(result.Supply!.Pressure), tolerance: 1e-6);
        Assert.Equal(14e5, Gauge(result.Supply.ReservoirPressure), tolerance: 1e-6);
        Assert.Equal(8e5, result.Nozzles[0].Losses.Outlet.Pascals, tolerance: 1e-3);
    }

    [Fact]
    public void A_regulator_too_small_for_the_flow_stands_open_and_loses_by_its_Kv()
    {
        var result = Solve(Document(""", "outlet": { "regulator": { "setPressure": "13 bar", "kv": "0.5 m3/h" } }"""));

        var flow = result.Supply!.VolumeFlow.CubicMetersPerSecond;
        Assert.InRange(Gauge(result.Supply.Pressure), 1e5, 12.9e5);
        Assert.Equal(1e5 * 0.99821 * Math.Pow(flow * 3600 / 0.5, 2), result.Nozzles[0].Losses.Outlet.Pascals, tolerance: 100);
    }

    [Theory]
    [InlineData("95 °C", "4.9 kg", "fills the whole bottle")]
    [InlineData("20 °C", "3 kg", "below the burst pressure", """, "outlet": { "burstPressure": "30 bar" }""")]
    public void A_bottle_that_cannot_deliver_says_why(string temperature, string fill, string why, string outlet = "")
    {
        var result = SteadyFlow.Solve(Documents.Read(Document(outlet, temperature: temperature, fill: fill)), TestContext.Current.CancellationToken);

        Assert.False(result.Report.Converged);
        Assert.Contains(why, result.Report.Failure, StringComparison.Ordinal);
        Assert.Empty(result.Nozzles);
    }

    [Fact]
    public void A_cushion_denser_than_the_data_of_its_gas_is_not_said_to_be_full_of_liquid()
    {
        var layout = Documents.Read(Document(temperature: "90 °C", fill: "4.75 kg").Replace("14 bar", "900 bar", StringComparison.Ordinal));

        var result = SteadyFlow.Solve(layout, TestContext.Current.CancellationToken);

        Assert.False(result.Report.Converged);
        Assert.Contains("no state within the data of its gas", result.Report.Failure, StringComparison.Ordinal);
    }
}
