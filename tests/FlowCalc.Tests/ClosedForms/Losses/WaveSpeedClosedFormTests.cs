using FlowCalc.Losses;

namespace FlowCalc.Tests.ClosedForms.Losses;

/// <summary>Korteweg's wave speed and Joukowsky's rise; the figures were obtained a second way, from the compliance of liquid and wall.</summary>
public class WaveSpeedClosedFormTests
{
    [Fact]
    public void Water_stopped_in_a_steel_tube_rises_by_the_bound()
    {
        var speed = WaveSpeed.Of(2.18e9, 998.2, 0.008, 0.001, 200e9);

        Assert.Equal(1417.309644, speed, tolerance: 1e-6);
        Assert.Equal(16_977_101.84, WaveSpeed.Surge(998.2, speed, 12), tolerance: 0.01);
    }

    [Fact]
    public void A_rigid_tube_leaves_the_speed_of_sound() =>
        Assert.Equal(Math.Sqrt(2.18e9 / 998.2), WaveSpeed.Of(2.18e9, 998.2, 0.008, double.PositiveInfinity, double.PositiveInfinity));

    [Theory]
    [InlineData(0, 998, 0.01, 0.001, 1e11)]
    [InlineData(2e9, 0, 0.01, 0.001, 1e11)]
    [InlineData(2e9, 998, double.NaN, 0.001, 1e11)]
    [InlineData(2e9, 998, 0.01, -1, 1e11)]
    [InlineData(2e9, 998, 0.01, 0.001, 0)]
    public void Arguments_outside_their_range_are_refused(double bulk, double density, double bore, double wall, double modulus) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => WaveSpeed.Of(bulk, density, bore, wall, modulus));
}
