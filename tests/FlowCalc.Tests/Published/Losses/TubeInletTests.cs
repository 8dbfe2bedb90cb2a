using FlowCalc.Losses;

namespace FlowCalc.Tests.Published.Losses;

/// <summary>
/// Tube mouths against I. E. Idelchik, Handbook of Hydraulic Resistance, diagram 3-1 (table held in the source of the open library fluids; two points seen in an ASHRAE reprint) and the classical 0.5:
/// comparisons, since the form used runs 0.06 to 0.14 above.
/// </summary>
public class TubeInletTests
{
    [Theory]
    [InlineData(0, 1, TestDisplayName = "Idelchik projecting knife edge lies within the stated 16 %")]
    [InlineData(0.012, 0.83, TestDisplayName = "Idelchik projecting wall of t/D 0.012 lies within the stated 16 %")]
    [InlineData(0.02, 0.72, TestDisplayName = "Idelchik projecting wall of t/D 0.02 lies within the stated 16 %")]
    [InlineData(0.03, 0.61, TestDisplayName = "Idelchik projecting wall of t/D 0.03 lies within the stated 16 %")]
    [InlineData(0.05, 0.5, TestDisplayName = "Idelchik projecting wall of t/D 0.05 lies within the stated 16 %")]
    public void Projecting_inlet_stays_within_the_stated_spread_of_Idelchik(double wallOverBore, double other) =>
        Assert.Equal(other, TubeInlet.Projecting(wallOverBore), tolerance: 0.16 * other);

    [Fact]
    public void Square_cut_inlet_stays_within_the_stated_spread_of_the_classical_value() =>
        Assert.Equal(0.5, TubeInlet.SquareCut, tolerance: 0.15 * 0.5);
}
