using FlowCalc.Agents;
using FlowCalc.Coverage;

namespace FlowCalc.Tests.Published.Coverage;

/// <summary>
/// NFPA 2001, table A.5.5.1 for HFC-227ea in SI units, kg of agent per m³ by temperature and concentration: seen second-hand.
/// The table is printed to four digits and follows a slightly other vapour; the formula with the constants of ISO 14520 meets it within 0.3 %.
/// </summary>
public class FloodingTableTests
{
    [Theory]
    [InlineData(-10, 6, 0.5254)]
    [InlineData(0, 6, 0.5034)]
    [InlineData(20, 6, 0.4650)]
    [InlineData(-10, 7, 0.6196)]
    [InlineData(0, 7, 0.5936)]
    [InlineData(20, 7, 0.5483)]
    [InlineData(-10, 8, 0.7158)]
    [InlineData(0, 8, 0.6858)]
    [InlineData(20, 8, 0.6335)]
    [InlineData(0, 9, 0.7800)]
    [InlineData(20, 9, 0.7205)]
    [InlineData(0, 10, 0.8763)]
    [InlineData(20, 10, 0.8094)]
    public void Mass_for_a_cubic_metre_is_that_of_the_table(double celsius, double percent, double printed)
    {
        var agent = FloodingAgent.Of(AgentCatalogue.FindExpanding("HFC-227ea")!)!;

        var mass = agent.Mass(1, percent / 100, celsius + 273.15, 101_325);

        Assert.Equal(printed, mass, tolerance: 0.003 * printed);
    }

    // EN 15004-4 (seen second-hand), EN 15004 part on IG-100 (seen second-hand), ISO 14520-5 and NFPA 2001 (from memory): constants and class B figures, worked by the formula.
    [Theory]
    [InlineData("HFC-125", 0.70054162)]
    [InlineData("FK-5-1-12", 0.87225253)]
    [InlineData("nitrogen", 0.75297525)]
    public void Mass_for_class_B_at_20_degrees_is_that_worked_from_the_standards_constants(string id, double expected)
    {
        var agent = FloodingAgent.Of(AgentCatalogue.FindExpanding(id)!)!;

        Assert.Equal(expected, agent.Mass(1, agent.ClassB!.Value, 293.15, 101_325), tolerance: 1e-6 * expected);
    }

    // French order of 23 November 1987 on the safety of ships, articles 227-4.05 and 230-4.05 (open data, seen): Q = (V + p·v)·0.714.
    [Fact]
    public void Carbon_dioxide_for_a_small_vessel_is_that_of_the_order() =>
        Assert.Equal(3.2844, Flooding.SmallVesselCarbonDioxide(4, 0.02, 30), tolerance: 1e-6);
}
