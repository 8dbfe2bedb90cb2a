using FlowCalc.Losses;

namespace FlowCalc.Tests.ClosedForms.Losses;

public class FrictionClosedFormTests
{
    [Theory]
    [InlineData(0)]
    [InlineData(1e-9)]
    [InlineData(2e-6)]
    [InlineData(-2e-6)]
    public void Laminar_tube_follows_Hagen_and_Poiseuille_down_to_rest(double volumeFlow)
    {
        const double bore = 0.004, length = 1.5, density = 1000, viscosity = 0.002;
        var perFlow = 128 * viscosity * length / (Math.PI * Math.Pow(bore, 4));
        var reynoldsPerFlow = 4 * density / (Math.PI * bore * viscosity);

        var (group, slope) = DarcyFriction.PressureGroup(reynoldsPerFlow * volumeFlow, 0.01);
        var scale = length * viscosity * viscosity / (2 * density * bore * bore * bore);

        Assert.Equal(perFlow * volumeFlow, scale * group, tolerance: 1e-12 * perFlow * Math.Abs(volumeFlow));
        Assert.Equal(perFlow, scale * slope * reynoldsPerFlow, tolerance: 1e-12 * perFlow);
    }

    [Fact]
    public void Laminar_factor_does_not_know_the_roughness() =>
        Assert.Equal(DarcyFriction.Factor(1999, 0), DarcyFriction.Factor(1999, 0.05), tolerance: 0);

    [Theory]
    [InlineData(0, FlowRegime.AtRest)]
    [InlineData(1e-9, FlowRegime.Laminar)]
    [InlineData(2000, FlowRegime.Laminar)]
    [InlineData(-2000, FlowRegime.Laminar)]
    [InlineData(2000.001, FlowRegime.Transition)]
    [InlineData(-3000, FlowRegime.Transition)]
    [InlineData(3999.999, FlowRegime.Transition)]
    [InlineData(4000, FlowRegime.Turbulent)]
    [InlineData(-1e6, FlowRegime.Turbulent)]
    public void Regime_is_told_by_the_size_of_the_Reynolds_number(double reynolds, FlowRegime expected) =>
        Assert.Equal(expected, DarcyFriction.Regime(reynolds));

    [Fact]
    public void Transition_passes_midway_as_its_end_values_and_slopes_demand()
    {
        var (end, endSlope) = DarcyFriction.TurbulentWithSlope(4000, 0.001);

        // A cubic's middle: the mean of the ends and an eighth of the span times the difference of the slopes.
        var middle = (0.032 + end) / 2 + 2000 * (-1.6e-5 - endSlope) / 8;

        Assert.Equal(middle, DarcyFriction.Factor(3000, 0.001), tolerance: 1e-15);
    }

    [Theory]
    [InlineData(2000, 0.05, true)]
    [InlineData(-1500, 0, true)]
    [InlineData(2000.1, 0, false)]
    [InlineData(3999, 0, false)]
    [InlineData(4000, 0.05, true)]
    [InlineData(1e8, 0, true)]
    [InlineData(1.01e8, 0, false)]
    [InlineData(1e5, 0.0501, false)]
    [InlineData(1e5, -0.001, false)]
    [InlineData(double.NaN, 0, false)]
    public void Factor_rests_on_data_where_it_says_so(double reynolds, double relativeRoughness, bool expected) =>
        Assert.Equal(expected, DarcyFriction.IsInRange(reynolds, relativeRoughness));

    [Fact]
    public void Curved_tube_is_a_straight_one_up_to_a_Dean_number_of_11_point_6()
    {
        const double radiusOverBore = 2; // De = Re/2
        Assert.Equal(11.6, CurvedTube.DeanNumber(23.2, radiusOverBore), tolerance: 1e-14);

        Assert.Equal(64 / 23.2, CurvedTube.Factor(23.2, radiusOverBore), tolerance: 1e-14);
        Assert.Equal((64 / 20.0, -64 / 400.0), CurvedTube.FactorWithSlope(20, radiusOverBore));
        Assert.Equal(-64 / (23.2 * 23.2), CurvedTube.FactorWithSlope(23.2, radiusOverBore).Slope, tolerance: 1e-14);
        Assert.True(CurvedTube.Factor(40, radiusOverBore) > 64 / 40.0);
    }
}
