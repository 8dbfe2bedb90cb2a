using FlowCalc.Losses;

namespace FlowCalc.Tests.Published.Losses;

/// <summary>L. F. Moody, Friction factors for pipe flow, Trans. ASME 66 (1944) 671–684: points read off the chart. From memory.</summary>
public class MoodyChartTests
{
    // Moody claims ±5 % for smooth and ±10 % for rough pipe; the narrower serves.
    [Theory]
    [InlineData(1e5, 1e-4, 0.0185, TestDisplayName = "Moody chart at Re 1e5 and e/D 0.0001 reads 0.0185")]
    [InlineData(1e5, 1e-3, 0.0222, TestDisplayName = "Moody chart at Re 1e5 and e/D 0.001 reads 0.0222")]
    [InlineData(2e4, 5e-3, 0.0345, TestDisplayName = "Moody chart at Re 2e4 and e/D 0.005 reads 0.0345")]
    public void Friction_factor_agrees_with_the_chart(double reynolds, double relativeRoughness, double read) =>
        Assert.Equal(read, DarcyFriction.Factor(reynolds, relativeRoughness), tolerance: 0.05 * read);
}
