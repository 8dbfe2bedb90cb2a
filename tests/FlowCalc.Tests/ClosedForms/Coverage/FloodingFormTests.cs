using FlowCalc.Agents;
using FlowCalc.Coverage;
using FlowCalc.Layouts;

namespace FlowCalc.Tests.ClosedForms.Coverage;

/// <summary>Worked examples of flooding by the formulas of ISO 14520-1 (from memory), done apart by hand; each to the digits that were worked.</summary>
public class FloodingFormTests
{
    static readonly FloodingAgent Halocarbon = FloodingAgent.Of(AgentCatalogue.FindExpanding("HFC-227ea")!)!;

    const double Cold = 273.15, Hot = 313.15, Sea = 101_325;

    // 2.5 m³, 9 % at 0 °C, then 40 °C; the two temperatures after IMO MSC/Circ.848, paragraphs 5 and 6 (seen second-hand).
    [Fact]
    public void Mass_for_the_cold_makes_more_in_the_heat()
    {
        var mass = Halocarbon.Mass(2.5, 0.09, Cold, Sea);
        var hot = Halocarbon.Concentration(2.5, mass, Hot, Sea);

        Assert.Equal(1.9484062, mass, tolerance: 1e-6);
        Assert.Equal(0.10305594, hot, tolerance: 1e-7);
        Assert.True(hot > Halocarbon.Agent.HighestUnharmed);
        Assert.False(hot > Halocarbon.Agent.LowestHarmful);
    }

    [Fact]
    public void No_mass_is_enough_in_the_cold_and_harmless_in_the_heat()
    {
        var (least, most) = (Halocarbon.Mass(2.5, 0.09, Cold, Sea), Halocarbon.Mass(2.5, 0.09, Hot, Sea));

        Assert.Equal(1.677154, most, tolerance: 1e-6);
        Assert.True(least > most);
    }

    // Nitrogen at 47.6 %: m³ of gas at 20 °C for a m³ at 20 and at 0 °C, and the oxygen left.
    [Fact]
    public void Nitrogen_for_class_B_takes_more_in_the_cold_and_leaves_eleven_percent_of_oxygen()
    {
        var agent = FloodingAgent.Of(AgentCatalogue.FindExpanding("nitrogen")!)!;
        var standard = agent.SpecificVolume(293.15, Sea);

        Assert.Equal(0.64626359, agent.Mass(1, 0.476, 293.15, Sea) * standard, tolerance: 1e-7);
        Assert.Equal(0.69362135, agent.Mass(1, 0.476, 273.15, Sea) * standard, tolerance: 1e-7);
        Assert.Equal(0.109778, Flooding.Oxygen(0.476), tolerance: 1e-7);
    }

    // ISO 2533 (from memory).
    [Fact]
    public void At_1500_metres_every_mass_is_less_by_the_pressure()
    {
        var part = StandardAtmosphere.PartAt(1500);

        Assert.Equal(0.83450274, part, tolerance: 1e-7);
        Assert.Equal(part * Halocarbon.Mass(2.5, 0.09, Cold, Sea), Halocarbon.Mass(2.5, 0.09, Cold, Sea * part), tolerance: 1e-9);
    }

    // Mass balance: 0.2 kg/s into 0.2 m³/s of air.
    [Fact]
    public void Agent_in_a_stream_of_air_makes_what_its_volume_is_of_both() =>
        Assert.Equal(0.12061782, Flooding.ThroughFlow(0.2, 0.137162, 0.2), tolerance: 1e-7);

    // Mass balance, well mixed: 0.35 m³ with 0.20 m³/s.
    [Fact]
    public void A_bay_with_air_through_it_halves_its_concentration_in_a_second() =>
        Assert.Equal(1.2130076, Flooding.ThinningTime(0.35, 0.2, 0.5), tolerance: 1e-6);
}
