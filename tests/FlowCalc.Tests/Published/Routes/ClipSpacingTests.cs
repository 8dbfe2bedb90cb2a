using FlowCalc.Stock;
using UnitsNet;

namespace FlowCalc.Tests.Published.Routes;

/// <summary>
/// MIL-H-8891A table II for corrosion-resistant steel, seen in a second-hand extract: 16, 18, 20 and 23 in for tubes of 1/4, 5/16, 3/8 and 1/2 in. The column of aluminium alloy from
/// aircraft handbooks, from memory. Metric sizes lie between; they were interpolated beside the code, and rounded to a millimetre.
/// </summary>
public class ClipSpacingTests
{
    [Theory]
    [InlineData("stainless steel", 0.25, 16)]
    [InlineData("stainless steel", 0.3125, 18)]
    [InlineData("stainless steel", 0.375, 20)]
    [InlineData("stainless steel", 0.5, 23)]
    [InlineData("stainless steel", 0.625, 25.5)]
    [InlineData("stainless steel", 0.75, 27.5)]
    [InlineData("stainless steel", 1, 30)]
    public void Spacing_of_an_inch_size_is_the_tables(string material, double outsideInches, double inches) =>
        Assert.Equal(inches, ClipSpacings.Of(TubeMaterial.Of(material), Length.FromInches(outsideInches)).Inches, tolerance: 0.03);

    [Theory]
    [InlineData("steel", 6, 395)]
    [InlineData("steel", 8, 459)]
    [InlineData("steel", 10, 519)]
    [InlineData("steel", 12, 567)]
    [InlineData("aluminium", 6, 334)]
    [InlineData("aluminium", 8, 382)]
    [InlineData("aluminium", 10, 429)]
    [InlineData("aluminium", 12, 469)]
    [InlineData("copper, annealed coil", 8, 300)]
    [InlineData("polyamide PA12", 8, 300)]
    public void Spacing_of_a_metric_size_lies_between(string material, double outside, double spacing) =>
        Assert.Equal(spacing, ClipSpacings.Of(TubeMaterial.Of(material), Length.FromMillimeters(outside)).Millimeters, tolerance: 1);

    [Fact]
    public void Unknown_material_takes_the_least_of_all()
    {
        foreach (var outside in (double[])[2, 4, 8, 20])
            Assert.Equal(
                ((string[])["steel", "aluminium", "copper"]).Min(material => ClipSpacings.Of(TubeMaterial.Of(material), Length.FromMillimeters(outside)).Millimeters),
                ClipSpacings.Of(null, Length.FromMillimeters(outside)).Millimeters, tolerance: 1e-9);
        Assert.Throws<ArgumentOutOfRangeException>(() => ClipSpacings.Of(null, Length.Zero));
    }
}
