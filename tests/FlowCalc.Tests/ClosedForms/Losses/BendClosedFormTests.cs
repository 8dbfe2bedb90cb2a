using FlowCalc.Losses;

namespace FlowCalc.Tests.ClosedForms.Losses;

public class BendClosedFormTests
{
    private const double RightAngle = Math.PI / 2;

    [Fact]
    public void Bend_at_rest_has_the_laminar_slope_of_its_arc()
    {
        var (group, slope) = SmoothBend.LossGroup(0, 0.001, SmoothBend.Shape(RightAngle, 3));

        Assert.Equal(0, group, tolerance: 0);
        Assert.Equal(64 * RightAngle * 3, slope, tolerance: 1e-9);
    }

    [Fact]
    public void Bend_of_no_angle_loses_nothing()
    {
        var shape = SmoothBend.Shape(0, 3);

        Assert.Equal(0, SmoothBend.Coefficient(1e4, 0, shape), tolerance: 0);
        Assert.Equal((0, 0), SmoothBend.LossGroup(1e4, 0, shape));
        Assert.Equal((0, 0), SmoothBend.LossGroup(1e4, 0, default));
    }

    [Theory]
    [InlineData(1, 13.5)]
    [InlineData(1.5, 8.6)]
    [InlineData(3, 7.5)]
    [InlineData(5, 10.0)]
    public void Right_angle_bend_gains_so_much_coefficient_per_friction_factor(double radiusOverBore, double expected) =>
        Assert.Equal(expected, SmoothBend.Shape(RightAngle, radiusOverBore).PerFriction, tolerance: 0.05); // worked by hand to 3 figures

    [Fact]
    public void Right_angle_bend_loses_least_at_a_radius_of_2_point_35_bores()
    {
        // Where the derivative of θ x + 6.6 (√s + s)/x² vanishes.
        var s = Math.Sqrt(0.5);
        var least = Math.Cbrt(2 * 6.6 * (Math.Sqrt(s) + s) / RightAngle);
        double PerFriction(double radiusOverBore) => SmoothBend.Shape(RightAngle, radiusOverBore).PerFriction;

        Assert.Equal(2.35, least, tolerance: 0.005);
        Assert.True(PerFriction(least) < PerFriction(least - 0.001));
        Assert.True(PerFriction(least) < PerFriction(least + 0.001));
    }

    [Theory]
    [InlineData(50)]
    [InlineData(500)]
    [InlineData(1900)]
    [InlineData(4000)]
    [InlineData(10000)]
    [InlineData(1e6)]
    public void Bend_is_the_blend_of_its_two_published_forms(double reynolds)
    {
        const double radiusOverBore = 3, roughness = 0.0003;
        var s = Math.Sin(RightAngle / 2);
        var f = 0.02;
        for (var pass = 0; pass < 60; pass++)
            f = Math.Pow(-2 * Math.Log10(roughness / 3.7 + 2.51 / (Math.Sqrt(reynolds * reynolds + 250_000) * Math.Sqrt(f))), -2);
        var turbulent = f * RightAngle * radiusOverBore + (0.10 + 2.4 * f) * s + 6.6 * f * (Math.Sqrt(s) + s) / Math.Pow(radiusOverBore, 2);
        var dean = reynolds * Math.Sqrt(1 / (2 * radiusOverBore));
        var white = 64 / reynolds / (1 - Math.Pow(1 - Math.Pow(11.6 / dean, 0.45), 1 / 0.45));
        var expected = Math.Pow(Math.Pow(turbulent, 8) + Math.Pow(white * RightAngle * radiusOverBore, 8), 1.0 / 8);

        Assert.Equal(expected, SmoothBend.Coefficient(reynolds, roughness, SmoothBend.Shape(RightAngle, radiusOverBore)), tolerance: 1e-12 * expected);
    }

    [Theory]
    [InlineData(90, 0.5, true)]
    [InlineData(90, 0.49, false)]
    [InlineData(5, 0.5, true)]
    [InlineData(91, 1.49, false)]
    [InlineData(91, 1.5, true)]
    [InlineData(180, 1.5, true)]
    [InlineData(181, 3, false)]
    [InlineData(0, 3, false)]
    public void Correlation_covers_what_it_says(double degrees, double radiusOverBore, bool expected) =>
        Assert.Equal(expected, SmoothBend.IsInRange(degrees * Math.PI / 180, radiusOverBore));

    [Theory]
    [InlineData(90, 1.2020815280171306)] // 0.42 √½ + 2.56 √⅛
    [InlineData(60, 0.53)]
    [InlineData(0, 0)]
    public void Mitre_follows_its_form(double degrees, double expected) =>
        Assert.Equal(expected, Mitre.Coefficient(degrees * Math.PI / 180), tolerance: 1e-14);
}
