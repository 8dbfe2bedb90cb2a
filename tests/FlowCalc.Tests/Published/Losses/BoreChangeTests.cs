using FlowCalc.Losses;

namespace FlowCalc.Tests.Published.Losses;

/// <summary>
/// Sudden expansion: Borda and Carnot, also White, Fluid Mechanics, fig. 6.22 (from memory); exact. Sudden contraction: I. E. Idelchik, 0.5 (1 − F0/F1)^0.75 (from memory), a comparison only.
/// </summary>
public class BoreChangeTests
{
    [Theory]
    [InlineData(0.5, 0.5625, TestDisplayName = "Borda–Carnot expansion of d/D 0.5 has K 0.5625")]
    [InlineData(0.7, 0.2601, TestDisplayName = "Borda–Carnot expansion of d/D 0.7 has K 0.2601")]
    [InlineData(0.9, 0.0361, TestDisplayName = "Borda–Carnot expansion of d/D 0.9 has K 0.0361")]
    public void Expansion_has_the_coefficient_of_Borda_and_Carnot(double boreRatio, double published) =>
        Assert.Equal(published, BoreChange.Expansion(boreRatio), tolerance: 1e-12 * published);

    // Handbooks spread by 30 % and more, and by 0.06 where the coefficient is small.
    [Theory]
    [InlineData(0.1, 0.462011, TestDisplayName = "Idelchik contraction of area ratio 0.1 lies within the stated spread")]
    [InlineData(0.3, 0.382643, TestDisplayName = "Idelchik contraction of area ratio 0.3 lies within the stated spread")]
    [InlineData(0.5, 0.297302, TestDisplayName = "Idelchik contraction of area ratio 0.5 lies within the stated spread")]
    [InlineData(0.7, 0.20268, TestDisplayName = "Idelchik contraction of area ratio 0.7 lies within the stated spread")]
    [InlineData(0.9, 0.088914, TestDisplayName = "Idelchik contraction of area ratio 0.9 lies within the stated spread")]
    public void Contraction_stays_within_the_stated_spread_of_Idelchik(double areaRatio, double other) =>
        Assert.Equal(other, BoreChange.SharpContraction(Math.Sqrt(areaRatio)), tolerance: Math.Max(0.3 * other, 0.06));
}
