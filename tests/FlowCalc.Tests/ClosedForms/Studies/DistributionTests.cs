using FlowCalc.Studies.Sampling;

namespace FlowCalc.Tests.ClosedForms.Studies;

/// <summary>Quantiles and moments that follow from the densities.</summary>
public class DistributionTests
{
    [Theory]
    [InlineData(0.1)]
    [InlineData(0.5)]
    [InlineData(0.93)]
    public void Uniform_has_a_straight_line_of_quantiles(double part) =>
        Assert.Equal(3 + 4 * part, Distribution.Uniform(5, 3, 7).At(part), tolerance: 1e-14);

    // Below the top the part is (x − a)² / ((b − a)(c − a)), above it 1 − (b − x)² / ((b − a)(b − c)).
    [Theory]
    [InlineData(0.1)]
    [InlineData(0.4)]
    [InlineData(0.41)]
    [InlineData(0.95)]
    public void Triangle_has_the_quantiles_of_its_two_sides(double part)
    {
        const double a = 10, c = 14, b = 20;

        var x = Distribution.Triangular(c, a, b).At(part);

        var back = x <= c ? (x - a) * (x - a) / ((b - a) * (c - a)) : 1 - (b - x) * (b - x) / ((b - a) * (b - c));
        Assert.Equal(part, back, tolerance: 1e-14);
    }

    // Of a normal cut at ±c the variance is 1 − 2 c φ(c) / (2 Φ(c) − 1).
    [Fact]
    public void Normal_has_the_moments_of_one_cut_at_four()
    {
        const int n = 200_000;
        const double cut = Distribution.Cut;
        var normal = Distribution.Normal(10, 2);
        double sum = 0, square = 0;
        for (var i = 0; i < n; i++)
        {
            var off = (normal.At((i + 0.5) / n) - 10) / 2;
            sum += off;
            square += off * off;
        }

        var density = Math.Exp(-0.5 * cut * cut) / Math.Sqrt(2 * Math.PI);
        var inside = MathNet.Numerics.SpecialFunctions.Erf(cut / Math.Sqrt(2));

        Assert.Equal(0, sum / n, tolerance: 1e-12);
        Assert.Equal(1 - 2 * cut * density / inside, square / n, tolerance: 1e-6);
    }

    [Fact]
    public void Normal_stays_between_its_cuts_and_comes_to_them()
    {
        var normal = Distribution.Normal(10, 2);

        Assert.Equal(2, normal.Low);
        Assert.Equal(18, normal.High);
        Assert.Equal(2, normal.At(1e-12), tolerance: 1e-6);
        Assert.Equal(18, normal.At(1 - 1e-12), tolerance: 1e-6);
        Assert.InRange(normal.At(1e-12), 2, 18);
    }

    [Theory]
    [InlineData(5, 5, 5)]
    [InlineData(5, 6, 7)]
    [InlineData(5, 3, 4)]
    [InlineData(double.NaN, 3, 4)]
    public void Ends_that_do_not_hold_the_design_value_are_refused(double design, double low, double high)
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => Distribution.Uniform(design, low, high));
        Assert.Throws<ArgumentOutOfRangeException>(() => Distribution.Triangular(design, low, high));
    }
}
