using FlowCalc.Losses;

namespace FlowCalc.Tests.Published.Losses;

/// <summary>Short-tube orifices. A. Lichtarowicz, R. K. Duggins and E. Markland 1965 for the asymptotes, V. L. Streeter and common textbooks for the short tube at high Reynolds number; from memory.</summary>
public class LichtarowiczTests
{
    [Fact]
    public void Short_tube_of_two_to_three_diameters_has_the_classical_discharge_coefficient() =>
        Assert.Equal(0.81, Lichtarowicz.DischargeCoefficient(1e5, 2.5), tolerance: 0.02 * 0.81); // textbooks: 0.80 to 0.82

    [Theory]
    [InlineData(2, 0.81, TestDisplayName = "Hole two diameters long tends to the published 0.81")]
    [InlineData(10, 0.742, TestDisplayName = "Hole ten diameters long tends to the published 0.742")]
    public void Long_hole_tends_to_the_published_discharge_coefficient(double lengthOverDiameter, double published) =>
        Assert.Equal(published, Lichtarowicz.UltimateDischargeCoefficient(lengthOverDiameter), tolerance: 0.001 * published);
}
