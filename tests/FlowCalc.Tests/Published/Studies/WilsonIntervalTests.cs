using FlowCalc.Studies.Sampling;

namespace FlowCalc.Tests.Published.Studies;

/// <summary>R. G. Newcombe, Statistics in Medicine 17 (1998) 857–872, table I, method 3 (score without continuity correction), 95 % (from memory): printed to four decimals.</summary>
public class WilsonIntervalTests
{
    const double Print = 0.00005;

    [Theory]
    [InlineData(81, 263, 0.2553, 0.3662)]
    [InlineData(15, 148, 0.0624, 0.1605)]
    [InlineData(0, 20, 0.0000, 0.1611)]
    [InlineData(1, 29, 0.0061, 0.1718)]
    public void Interval_is_the_printed_one(int count, int samples, double low, double high)
    {
        var chance = Chance.Of(count, samples);

        Assert.Equal(low, chance.Low, tolerance: Print);
        Assert.Equal(high, chance.High, tolerance: Print);
        Assert.Equal((double)count / samples, chance.Part, tolerance: 1e-15);
    }

    [Fact]
    public void What_is_always_so_has_the_mirrored_interval_of_what_never_is()
    {
        var (never, always) = (Chance.Of(0, 20), Chance.Of(20, 20));

        Assert.Equal(1, always.High);
        Assert.Equal(0, never.Low);
        Assert.Equal(1 - never.High, always.Low, tolerance: 1e-15);
    }
}
