using CsCheck;
using FlowCalc.Losses;

namespace FlowCalc.Tests.Properties.Losses;

public class FrictionLawTests
{
    // Even in the logarithm, so that every decade is met.
    private static readonly Gen<double> TurbulentReynolds = Gen.Double[Math.Log10(4000), 9].Select(decade => Math.Pow(10, decade));

    private static readonly Gen<double> AnyReynolds = Gen.Double[-3, 9].Select(decade => Math.Pow(10, decade));

    private static readonly Gen<double> Roughness = Gen.OneOf(Gen.Const(0.0), Gen.Double[0, 0.05], Gen.Double[-7, -2].Select(decade => Math.Pow(10, decade)));

    [Fact]
    public void Turbulent_factor_satisfies_the_equation_it_solves() =>
        Gen.Select(TurbulentReynolds, Roughness).Sample((reynolds, roughness) =>
        {
            var x = 1 / Math.Sqrt(DarcyFriction.Turbulent(reynolds, roughness));
            return Math.Abs(x + 2 * Math.Log10(roughness / 3.7 + 2.51 * x / reynolds)) < 1e-12 * x;
        }, iter: 20_000);

    [Fact]
    public void Turbulent_factor_satisfies_its_equation_up_to_a_wall_as_rough_as_the_bore() =>
        Gen.Select(TurbulentReynolds, Gen.Double[0.05, 1]).Sample((reynolds, roughness) =>
        {
            var x = 1 / Math.Sqrt(DarcyFriction.Turbulent(reynolds, roughness));
            return Math.Abs(x + 2 * Math.Log10(roughness / 3.7 + 2.51 * x / reynolds)) < 1e-12;
        }, iter: 5_000);

    [Theory]
    [InlineData(2000)]
    [InlineData(4000)]
    public void Factor_and_slope_are_continuous_where_the_regimes_meet(double limit) =>
        Gen.Double[0, 0.1].Sample(roughness =>
        {
            var below = DarcyFriction.FactorWithSlope(Math.BitDecrement(limit), roughness);
            var above = DarcyFriction.FactorWithSlope(Math.BitIncrement(limit), roughness);
            return Math.Abs(below.Factor - above.Factor) < 1e-13 && Math.Abs(below.Slope - above.Slope) < 1e-15;
        }, iter: 1_000);

    [Fact]
    public void Transition_starts_from_the_laminar_value_and_slope() =>
        Gen.Double[0, 0.1].Sample(roughness =>
        {
            var (factor, slope) = DarcyFriction.FactorWithSlope(Math.BitIncrement(2000), roughness);
            return Math.Abs(factor - 0.032) < 1e-13 && Math.Abs(slope + 1.6e-5) < 1e-15;
        }, iter: 1_000);

    [Fact]
    public void Slope_of_the_factor_is_that_of_differences() =>
        Gen.Select(Gen.Double[1, 8].Select(decade => Math.Pow(10, decade)), Roughness).Sample((reynolds, roughness) =>
        {
            var step = 1e-3 * reynolds;
            if (Math.Abs(reynolds - 2000) < 3 * step || Math.Abs(reynolds - 4000) < 3 * step)
                return true; // the second derivative jumps there

            var differences = Slope.Of(re => DarcyFriction.Factor(re, roughness), reynolds, step);
            var (factor, slope) = DarcyFriction.FactorWithSlope(reynolds, roughness);
            return Math.Abs(slope - differences) < 1e-8 * factor / reynolds;
        }, iter: 5_000);

    [Fact]
    public void Slope_of_the_pressure_group_is_that_of_differences() =>
        Gen.Select(Gen.Double[-20_000, 20_000], Roughness).Sample((reynolds, roughness) =>
        {
            const double step = 1;
            if (Math.Abs(Math.Abs(reynolds) - 2000) < 3 * step || Math.Abs(Math.Abs(reynolds) - 4000) < 3 * step)
                return true;

            var differences = Slope.Of(re => DarcyFriction.PressureGroup(re, roughness).Group, reynolds, step);
            return Math.Abs(DarcyFriction.PressureGroup(reynolds, roughness).Slope - differences) < 1e-6 * differences;
        }, iter: 5_000);

    [Fact]
    public void Pressure_group_is_factor_times_Reynolds_number_squared() =>
        Gen.Select(AnyReynolds, Roughness).Sample((reynolds, roughness) =>
        {
            var expected = DarcyFriction.Factor(reynolds, roughness) * reynolds * reynolds;
            return Math.Abs(DarcyFriction.PressureGroup(reynolds, roughness).Group - expected) <= 1e-14 * expected;
        }, iter: 2_000);

    [Theory]
    [InlineData(0)]
    [InlineData(1e-4)]
    [InlineData(1e-3)]
    [InlineData(0.01)]
    [InlineData(0.03)]
    [InlineData(0.05)]
    [InlineData(0.1)]
    [InlineData(0.3)]
    [InlineData(1)]
    public void Pressure_group_rises_with_the_flow_at_every_roughness(double roughness)
    {
        var last = DarcyFriction.PressureGroup(0, roughness).Group;
        for (var reynolds = 1.0; reynolds < 1e8; reynolds *= 1.001)
        {
            var (group, slope) = DarcyFriction.PressureGroup(reynolds, roughness);
            Assert.True(group > last && slope > 0, $"Re {reynolds}");
            last = group;
        }
    }

    [Fact]
    public void Factor_falls_rises_and_falls_again_in_the_transition_of_a_smooth_tube()
    {
        // So nobody may take f itself for monotone: it dips to 0.0289 near Re 2416.
        Assert.Equal(0.0289, DarcyFriction.Factor(2416, 0), tolerance: 5e-5);
        Assert.True(DarcyFriction.FactorWithSlope(2300, 0).Slope < 0);
        Assert.True(DarcyFriction.FactorWithSlope(3000, 0).Slope > 0);
        Assert.True(DarcyFriction.FactorWithSlope(3990, 0).Slope < 0);
    }

    [Fact]
    public void Reverse_flow_turns_the_sign_of_the_pressure_group_and_keeps_its_slope() =>
        Gen.Select(AnyReynolds, Roughness).Sample((reynolds, roughness) =>
        {
            var forward = DarcyFriction.PressureGroup(reynolds, roughness);
            var back = DarcyFriction.PressureGroup(-reynolds, roughness);
            return back.Group == -forward.Group && back.Slope == forward.Slope;
        }, iter: 1_000);

    [Fact]
    public void Rougher_wall_never_loses_less() =>
        Gen.Select(AnyReynolds, Gen.Double[0, 0.5], Gen.Double[0, 0.5]).Sample((reynolds, one, other) =>
            DarcyFriction.Factor(reynolds, Math.Min(one, other)) <= DarcyFriction.Factor(reynolds, Math.Max(one, other)) * (1 + 1e-14), iter: 2_000);
}
