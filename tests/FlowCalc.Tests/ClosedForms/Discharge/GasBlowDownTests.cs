using FlowCalc.Discharge;
using FlowCalc.Networks;

namespace FlowCalc.Tests.ClosedForms.Discharge;

/// <summary>An 80 L bottle of ideal nitrogen at 200 bar and 288.15 K empties through 8 mm, discharge coefficient 0.85: closed forms derived for the purpose, and two separate integrators for the wall.</summary>
public sealed class GasBlowDownTests
{
    const double Volume = 0.08, Start = 2e7, Kelvin = 288.15, Ambient = 101_325;
    const double Charge = Start * Volume / (296.8 * Kelvin);

    // What the table of a step leaves.
    const double Within = 1e-3;

    [Theory]
    [InlineData(0.6095068271, 4.866499126, false)]
    [InlineData(0.1930697729, 18.21009068, false)]
    [InlineData(0.07172514498, 32.43789897, false)]
    [InlineData(0.05, 38.36385469, false)]
    [InlineData(0.6095068271, 4.866499126, true)]
    [InlineData(0.1930697729, 18.21009068, true)]
    [InlineData(0.07172514498, 32.43789897, true)]
    [InlineData(0.05, 38.36385469, true)]
    public void An_insulated_bottle(double massLeft, double seconds, bool isGas) =>
        Near(seconds, Run(0, (1 - massLeft) * Charge, isGas).Thresholds[0], Within);

    // p = p0·exp(−t/τ) while it is choked: to 100 bar and to 5 bar.
    [Theory]
    [InlineData(0.5, 6.481344815, false)]
    [InlineData(0.025, 34.49325106, false)]
    [InlineData(0.5, 6.481344815, true)]
    [InlineData(0.025, 34.49325106, true)]
    public void A_bottle_at_constant_temperature(double massLeft, double seconds, bool isGas) =>
        Near(seconds, Run(double.PositiveInfinity, (1 - massLeft) * Charge, isGas).Thresholds[0], Within);

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void A_bottle_with_a_wall(bool isGas) => Near(27.45165549, Run(60, (1 - 0.09097098735) * Charge, isGas).Thresholds[0], Within);

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void An_insulated_bottle_ends_when_it_is_at_the_pressure_outside(bool isGas)
    {
        var course = Run(0, Charge, isGas);
        Assert.Equal(StopReason.Equalised, course.Reason);
        Near(55.37704796, course.End, 0.04);
        Assert.InRange(course.MassDefect, 0, 1e-9);
    }

    static DischargeCourse Run(double conductance, double threshold, bool isGas)
    {
        var builder = new NetworkBuilder(1);
        builder.AddNozzle(builder.AddRun(-1, new(0.1, 0, 0, 0, 0)), 0.85 * Math.PI / 4 * 0.008 * 0.008);
        var problem = new ExpandingProblem
        {
            Network = builder.Build(),
            Volume = [0],
            Area = [Math.PI / 4 * 0.01],
            Ambient = Ambient,
            Bottle = new IdealGasBottle(296.8, 1.4, Volume, Start, Kelvin, conductance) { IsGas = isGas },
            Thresholds = [threshold],
        };
        var course = ExpandingRun.Of(problem, TestContext.Current.CancellationToken);
        Assert.Null(course.Failure);
        return course;
    }

    static void Near(double expected, double actual, double within) => Assert.Equal(expected, actual, tolerance: within * expected);
}
