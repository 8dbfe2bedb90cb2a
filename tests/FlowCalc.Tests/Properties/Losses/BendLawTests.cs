using CsCheck;
using FlowCalc.Losses;

namespace FlowCalc.Tests.Properties.Losses;

public class BendLawTests
{
    private static readonly Gen<double> Reynolds = Gen.Double[0, 7].Select(decade => Math.Pow(10, decade));

    private static readonly Gen<double> Roughness = Gen.OneOf(Gen.Const(0.0), Gen.Double[0, 0.05]);

    private static readonly Gen<BendShape> Shape = Gen.Select(Gen.Double[0.01, Math.PI], Gen.Double[0.5, 20]).Select(SmoothBend.Shape);

    [Fact]
    public void Slope_of_the_coefficient_is_that_of_differences() =>
        Gen.Select(Reynolds, Roughness, Shape).Sample((reynolds, roughness, shape) =>
        {
            var step = 1e-3 * reynolds;
            if (AtOnset(reynolds, shape, step))
                return true;

            var differences = Slope.Of(re => SmoothBend.Coefficient(re, roughness, shape), reynolds, step);
            var (coefficient, slope) = SmoothBend.CoefficientWithSlope(reynolds, roughness, shape);
            return Math.Abs(slope - differences) < 1e-7 * coefficient / reynolds;
        }, iter: 5_000);

    [Fact]
    public void Slope_of_the_loss_group_is_that_of_differences() =>
        Gen.Select(Reynolds, Gen.Bool, Roughness, Shape).Sample((size, reversed, roughness, shape) =>
        {
            var reynolds = reversed ? -size : size;
            var step = 1e-3 * size;
            if (AtOnset(size, shape, step))
                return true;

            var differences = Slope.Of(re => SmoothBend.LossGroup(re, roughness, shape).Group, reynolds, step);
            return Math.Abs(SmoothBend.LossGroup(reynolds, roughness, shape).Slope - differences) < 1e-7 * differences;
        }, iter: 5_000);

    [Fact]
    public void Slope_of_the_curved_tubes_friction_is_that_of_differences() =>
        Gen.Select(Reynolds, Gen.Double[0.5, 50]).Sample((reynolds, radius) =>
        {
            var step = 1e-3 * reynolds;
            if (Math.Abs(CurvedTube.DeanNumber(reynolds, radius) - 11.6) < 0.6)
                return true;

            var differences = Slope.Of(re => CurvedTube.Factor(re, radius), reynolds, step);
            var (factor, slope) = CurvedTube.FactorWithSlope(reynolds, radius);
            return Math.Abs(slope - differences) < 1e-7 * factor / reynolds;
        }, iter: 2_000);

    [Fact]
    public void Loss_group_is_coefficient_times_Reynolds_number_squared_and_odd() =>
        Gen.Select(Reynolds, Roughness, Shape).Sample((reynolds, roughness, shape) =>
        {
            var forward = SmoothBend.LossGroup(reynolds, roughness, shape);
            var back = SmoothBend.LossGroup(-reynolds, roughness, shape);
            var expected = SmoothBend.Coefficient(reynolds, roughness, shape) * reynolds * reynolds;
            return Math.Abs(forward.Group - expected) <= 1e-13 * expected && back.Group == -forward.Group && back.Slope == forward.Slope;
        }, iter: 2_000);

    [Theory]
    [InlineData(90, 1.5, 0)]
    [InlineData(90, 3, 0)]
    [InlineData(90, 5, 0)]
    [InlineData(45, 1.5, 0)]
    [InlineData(30, 3, 0.01)]
    [InlineData(180, 3, 0.001)]
    [InlineData(90, 0.5, 0)]
    [InlineData(90, 10, 0.05)]
    public void Coefficient_falls_and_the_pressure_loss_rises_with_the_flow(double degrees, double radiusOverBore, double roughness)
    {
        var shape = SmoothBend.Shape(degrees * Math.PI / 180, radiusOverBore);
        var lastCoefficient = double.PositiveInfinity;
        var lastGroup = SmoothBend.LossGroup(0, roughness, shape).Group;
        for (var reynolds = 0.1; reynolds < 1e6; reynolds *= 1.002)
        {
            var coefficient = SmoothBend.Coefficient(reynolds, roughness, shape);
            var (group, slope) = SmoothBend.LossGroup(reynolds, roughness, shape);
            Assert.True(coefficient < lastCoefficient, $"K at Re {reynolds}");
            Assert.True(group > lastGroup && slope > 0, $"K·Re² at Re {reynolds}");
            (lastCoefficient, lastGroup) = (coefficient, group);
        }
    }

    [Fact]
    public void Sharper_turn_of_the_same_radius_loses_more() =>
        Gen.Select(Gen.Double[0.01, 1.5], Gen.Double[1.05, 2], Gen.Double[1.5, 20], Reynolds).Sample((angle, factor, radius, reynolds) =>
            SmoothBend.Coefficient(reynolds, 0, SmoothBend.Shape(angle, radius)) < SmoothBend.Coefficient(reynolds, 0, SmoothBend.Shape(angle * factor, radius)), iter: 2_000);

    [Fact]
    public void Sharper_mitre_loses_more() =>
        Gen.Select(Gen.Double[0, 2.6], Gen.Double[0, 2.6]).Sample((one, other) =>
            one == other || Mitre.Coefficient(Math.Min(one, other)) < Mitre.Coefficient(Math.Max(one, other)), iter: 1_000);

    // White's form has its kink of the second derivative at a Dean number of 11.6.
    private static bool AtOnset(double reynolds, BendShape shape, double step) =>
        Math.Abs(CurvedTube.DeanNumber(reynolds, shape.RadiusOverBore) - 11.6) < 0.6 + CurvedTube.DeanNumber(3 * step, shape.RadiusOverBore);
}
