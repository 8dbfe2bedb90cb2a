using FlowCalc.Bottles;
using FlowCalc.Tests.Properties.Bottles;

namespace FlowCalc.Tests.ClosedForms.Bottles;

/// <summary>Liquid in a cylinder, where geometry gives the number.</summary>
public class LiquidLevelClosedFormTests
{
    const double Radius = 0.065, Length = 0.4;

    // Derived here: adaptive quadrature of the column of liquid over the base; lying, half of the cylinder.
    [Theory]
    [InlineData(0, 0, 1.592787475e-4)]
    [InlineData(8, 0, 1.592787475e-4)]
    [InlineData(30, 0, 2.014149907e-4)]
    [InlineData(71.565, 0, 6.320067627e-4)]
    [InlineData(30, -0.050, 2.524065542e-5)]
    [InlineData(30, 0.050, 5.424438632e-4)]
    [InlineData(90, 0, 2.654645792e-3)]
    public void Liquid_under_an_inlet_12_mm_over_the_floor_stays(double tiltDegrees, double offsetToTheHighSide, double volume)
    {
        var tilt = tiltDegrees * Math.PI / 180;
        var level = new LiquidLevel(Radius, Length, new(Math.Sin(tilt), 0, Math.Cos(tilt)));

        var below = level.VolumeBelow(level.HeightAt(offsetToTheHighSide, 0, 0.012));

        Assert.Equal(volume, below, tolerance: 1e-9 * volume); // ten digits are given
    }

    [Theory]
    [InlineData(1)]
    [InlineData(-1)]
    public void Upright_and_on_its_head_the_height_goes_with_the_volume(int sign)
    {
        var level = new LiquidLevel(Radius, Length, new(0, 0, sign));

        var above = level.HeightOf(0.3 * level.Volume) - level.Lowest;

        Assert.Equal(0.3 * Length, above, tolerance: 1e-15);
        Assert.Equal(Math.PI * Radius * Radius, level.SurfaceArea(level.Lowest + 0.1), tolerance: 1e-15);
        Assert.Equal(2 * Math.PI * Radius * 0.7 * Length + Math.PI * Radius * Radius, level.WallAreaAbove(level.Lowest + above), tolerance: 1e-14);
    }

    [Fact]
    public void A_plane_that_misses_both_ends_has_the_ellipse_of_the_cut_as_its_surface()
    {
        var level = new LiquidLevel(Radius, Length, LiquidLevelLawTests.Towards(0.3, 2));

        var height = level.HeightOf(level.Volume / 2);

        Assert.Equal(level.HeightAt(0, 0, Length / 2), height, tolerance: 1e-15);
        Assert.Equal(Math.PI * Radius * Radius / Math.Cos(0.3), level.SurfaceArea(height), tolerance: 1e-15);
        Assert.Equal(Math.PI * Radius * Length + Math.PI * Radius * Radius, level.WallAreaAbove(height), tolerance: 1e-14);
    }

    // A segment of half angle 60° has the area R²(π/3 − √3/4).
    [Fact]
    public void Lying_it_holds_a_segment_over_its_length()
    {
        var level = new LiquidLevel(Radius, Length, new(0, 1, 0));

        var volume = Radius * Radius * (Math.PI / 3 - Math.Sqrt(3) / 4) * Length;

        Assert.Equal(-Radius, level.Lowest, tolerance: 1e-16);
        Assert.Equal(volume, level.VolumeBelow(-Radius / 2), tolerance: 1e-14 * volume);
        Assert.Equal(-Radius / 2, level.HeightOf(volume), tolerance: 1e-15);
        Assert.Equal(Math.Sqrt(3) * Radius * Length, level.SurfaceArea(-Radius / 2), tolerance: 1e-15);
        var wet = Radius * 2 * Math.PI / 3 * Length + 2 * volume / Length;
        Assert.Equal(2 * Math.PI * Radius * (Radius + Length) - wet, level.WallAreaAbove(-Radius / 2), tolerance: 1e-14);
    }

    // The hoof of Archimedes: a plane through a diameter of the base that reaches height H at the wall cuts off ⅔R²H.
    [Fact]
    public void A_plane_through_a_diameter_of_the_base_cuts_off_the_hoof_of_Archimedes()
    {
        var tilt = Math.Atan(0.2 / Radius);
        var level = new LiquidLevel(Radius, Length, new(-Math.Sin(tilt), 0, Math.Cos(tilt)));

        Assert.Equal(2.0 / 3 * Radius * Radius * 0.2, level.VolumeBelow(0), tolerance: 1e-17);
    }

    [Fact]
    public void Volumes_that_rounding_puts_outside_the_bottle_stand_at_its_ends()
    {
        var level = new LiquidLevel(Radius, Length, LiquidLevelLawTests.Towards(1, 1));

        Assert.Equal(level.Lowest, level.HeightOf(-1e-20));
        Assert.Equal(level.Highest, level.HeightOf(level.Volume * (1 + 1e-15)));
        Assert.Equal((0, level.Volume), (level.VolumeBelow(level.Lowest - 1), level.VolumeBelow(level.Highest + 1)));
        Assert.Equal((0, 0), (level.SurfaceArea(level.Lowest), level.SurfaceArea(level.Highest)));
    }

    [Theory]
    [InlineData(0, 1, 1)]
    [InlineData(1, double.NaN, 1)]
    [InlineData(1, 1, 1.1)]
    public void A_size_that_is_none_is_refused(double radius, double length, double up) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => new LiquidLevel(radius, length, new(0, 0, up)));
}
