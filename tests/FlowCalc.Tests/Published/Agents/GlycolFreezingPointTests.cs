using FlowCalc.Agents;

namespace FlowCalc.Tests.Published.Agents;

/// <summary>
/// Freezing points of glycol solutions by mass as in the ASHRAE Handbook, Fundamentals, chapter on secondary coolants (from memory, text not seen).
/// That collection rests on other measurements than ours, and the two part company as solutions get stronger: hence 1 K up to 30 %, 2.5 K above.
/// </summary>
public class GlycolFreezingPointTests
{
    [Theory]
    [InlineData("water-ethylene-glycol", 0.1, -3.2)]
    [InlineData("water-ethylene-glycol", 0.2, -7.8)]
    [InlineData("water-ethylene-glycol", 0.3, -14.1)]
    [InlineData("water-ethylene-glycol", 0.4, -22.3)]
    [InlineData("water-ethylene-glycol", 0.5, -33.8)]
    [InlineData("water-propylene-glycol", 0.1, -3.3)]
    [InlineData("water-propylene-glycol", 0.2, -7.1)]
    [InlineData("water-propylene-glycol", 0.3, -12.7)]
    [InlineData("water-propylene-glycol", 0.4, -21.1)]
    [InlineData("water-propylene-glycol", 0.5, -33.4)]
    public void Freezing_point_lies_near_the_other_collection(string mixture, double massFraction, double expectedCelsius)
    {
        Assert.True(AgentCatalogue.TryMixture(mixture, massFraction, out var agent, out var fault), fault);

        Assert.Equal(expectedCelsius, agent.FreezingPoint!.Value - 273.15, tolerance: massFraction > 0.3 ? 2.5 : 1);
    }
}
