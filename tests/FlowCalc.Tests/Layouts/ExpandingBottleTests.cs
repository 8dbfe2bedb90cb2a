using FlowCalc.Agents;
using FlowCalc.Layouts;
using FlowCalc.Tests.Flows;

namespace FlowCalc.Tests.Layouts;

/// <summary>Bottles of gases and liquefied gases: what each agent's bottle states, and what does not fit it.</summary>
public class ExpandingBottleTests
{
    const string Halocarbon = """ "volume": "8 L", "fill": "7 kg", "chargePressure": "25 bar" """;

    [Theory]
    [MemberData(nameof(GasDocuments.Agents), MemberType = typeof(GasDocuments))]
    public void A_bottle_that_suits_its_agent_is_read_and_the_schema_takes_it(string agent)
    {
        var json = GasDocuments.Tree(agent);
        var layout = Documents.Read(json);

        Assert.Equal(agent, layout.Agent.Id);
        Assert.True(layout.Agent.IsExpanding);
        Assert.True(BuiltSchema.Accepts(json));
    }

    // kg/m³ at 200 bar absolute and 15 °C, by a separate evaluation of the same equations; an ideal gas would have 233.9 and 333.5.
    [Theory]
    [InlineData("nitrogen", 223.2)]
    [InlineData("argon", 356.0)]
    public void A_bottle_of_gas_holds_what_its_real_density_says(string agent, double density)
    {
        var json = GasDocuments.Tree(agent).Replace("\"200 bar\"", "\"200 bara\", \"chargeTemperature\": \"15 °C\"", StringComparison.Ordinal);

        Assert.Equal(0.008 * density, ((BottleSupply)Documents.Read(json).Supply).Bottle.Fill.Kilograms, tolerance: 5e-4);
    }

    [Fact]
    public void A_gas_liquefied_alone_has_its_vapour_pressure()
    {
        var bottle = ((BottleSupply)Documents.Read(GasDocuments.Tree("carbon-dioxide")).Supply).Bottle;

        // Vapour pressure of carbon dioxide at 20 °C: R. Span, W. Wagner (1996), table 34, 5.7291 MPa (from memory).
        Assert.Equal(57.291e5, bottle.ChargePressure.Pascals, tolerance: 0.01e5);
    }

    [Fact]
    public void A_fill_may_be_a_volume_of_saturated_liquid()
    {
        string With(string fill) => GasDocuments.Tree("HFC-227ea").Replace("\"7 kg\"", $"\"{fill}\"", StringComparison.Ordinal);
        var (byVolume, byDensity) = (((BottleSupply)Documents.Read(With("5 L")).Supply).Bottle, ((BottleSupply)Documents.Read(With("900 kg/m3")).Supply).Bottle);

        // 1408.4 kg/m³ at 20 °C, by a separate evaluation of the same equation.
        Assert.Equal(5 * 1.4084, byVolume.Fill.Kilograms, tolerance: 1e-3);
        Assert.Equal(7.2, byDensity.Fill.Kilograms, tolerance: 1e-9);
    }

    [Theory]
    [InlineData("nitrogen", """ "volume": "8 L", "chargePressure": "200 bar", "fill": "2 kg" """, "/supply/bottle/fill", "leave the fill out")]
    [InlineData("nitrogen", """ "volume": "8 L", "chargePressure": "200 bar", "cushionGas": "nitrogen" """, "/supply/bottle/cushionGas", "no cushion of another gas")]
    [InlineData("IG-541", """ "volume": "8 L" """, "/supply/bottle/chargePressure", "missing: the pressure to which the bottle was charged")]
    [InlineData("argon", """ "volume": "8 L", "chargePressure": "0 bar" """, "/supply/bottle/chargePressure", "over the ambient pressure")]
    [InlineData("carbon-dioxide", """ "volume": "8 L", "fill": "5 kg", "chargePressure": "58 bar" """, "/supply/bottle/chargePressure", "its pressure follows from fill and temperature")]
    [InlineData("carbon-dioxide", """ "volume": "8 L", "fill": "5 kg", "cushionGas": "air" """, "/supply/bottle/cushionGas", "leave it out")]
    [InlineData("HFC-23", """ "volume": "8 L" """, "/supply/bottle/fill", "missing: the agent in the bottle")]
    [InlineData("carbon-dioxide", """ "volume": "8 L", "fill": "12 kg" """, "/supply/bottle/fill", "up to 750 kg/m3 is usual")]
    [InlineData("carbon-dioxide", """ "volume": "8 L", "fill": "1 g" """, "/supply/bottle/fill", "more is right")]
    [InlineData("carbon-dioxide", """ "volume": "8 L", "fill": "4 L", "chargeTemperature": "40 °C" """, "/supply/bottle/fill", "give a mass or a fill density")]
    [InlineData("HFC-227ea", """ "volume": "8 L", "fill": "12 kg", "chargePressure": "25 bar" """, "/supply/bottle/fill", "leave no room for the nitrogen")]
    [InlineData("HFC-227ea", """ "volume": "8 L", "fill": "7 kg", "chargePressure": "2 bar" """, "/supply/bottle/chargePressure", "a charge pressure is over that")]
    [InlineData("FK-5-1-12", """ "volume": "8 L", "fill": "7 kg", "chargePressure": "25 bar", "cushionGas": "argon" """, "/supply/bottle/cushionGas", "only nitrogen is answered")]
    [InlineData("HFC-125", """ "volume": "8 L", "fill": "7 kg" """, "/supply/bottle/chargePressure", "missing")]
    [InlineData("HFC-125", """ "volume": "8 L", "fill": "7 kg", "chargePressure": "25 bar", "chargeTemperature": "60 °C" """, "/supply/bottle/chargeTemperature", "-53.15 °C to 52.456 °C")]
    [InlineData("HFC-236fa", """ "volume": "8 L", "fill": "20 bar", "chargePressure": "25 bar" """, "/supply/bottle/fill", "a fill is a mass")]
    public void A_bottle_that_does_not_suit_its_agent_is_one_fault(string agent, string bottle, string pointer, string words)
    {
        var json = GasDocuments.Tree("HFC-227ea").Replace("HFC-227ea", agent, StringComparison.Ordinal).Replace(Halocarbon, bottle, StringComparison.Ordinal);

        Specimen.HasOneFault(json, pointer, words);
    }

    [Theory]
    [InlineData("nitrogen", "-60 °C", "outside what is answered for Nitrogen; -53.15 °C to 126.85 °C is right")]
    [InlineData("carbon-dioxide", "150 °C", "outside what is answered for Carbon dioxide")]
    [InlineData("HFC-227ea", "100 °C", "outside what is answered for HFC-227ea")]
    public void A_temperature_outside_what_is_answered_is_a_fault_with_the_range(string agent, string temperature, string words) =>
        Specimen.HasOneFault(GasDocuments.Tree(agent).Replace("\"temperature\": \"20 °C\"", $"\"temperature\": \"{temperature}\"", StringComparison.Ordinal), "/temperature", words);

    [Fact]
    public void The_model_is_read_and_has_its_usual_values_where_it_is_left_out()
    {
        var stated = Documents.Read(GasDocuments.Tree("HFC-227ea", """ "model": { "nozzles": "frozen", "nitrogenLag": "frozen" }, """));
        var lagging = Documents.Read(GasDocuments.Tree("HFC-227ea", """ "model": { "nozzles": "equilibrium", "nitrogenLag": "0.1 s" }, """));
        var usual = Documents.Read(GasDocuments.Tree("HFC-227ea"));

        Assert.Equal((NozzleModel.Frozen, null), (stated.NozzleModel, stated.NitrogenLag));
        Assert.Equal((NozzleModel.Equilibrium, 0.1), (lagging.NozzleModel, lagging.NitrogenLag?.Seconds));
        Assert.Equal((NozzleModel.Delayed, 0.3), (usual.NozzleModel, usual.NitrogenLag?.Seconds));
    }
}
