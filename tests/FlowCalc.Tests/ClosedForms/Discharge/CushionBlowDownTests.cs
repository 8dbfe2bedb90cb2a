using FlowCalc.Discharge;

namespace FlowCalc.Tests.ClosedForms.Discharge;

/// <summary>A bottle of 6 L with 4 L of liquid at 15 bara and one nozzle of 4 mm, without a line: t = ∫dV / (C_d A u(V)).</summary>
/// <remarks>Derived here: closed forms and quadrature with 30 digits, checked by an independent integrator of order 8 to 1e-12.</remarks>
public class CushionBlowDownTests
{
    static DischargeProblem Bottle(CushionProcess process, double exponent = 1, double conductance = 0)
    {
        var discharge = new TestDischarge();
        return discharge.Nozzle(0, 0.004, 0.8).Problem(process, exponent, conductance);
    }

    [Theory]
    [InlineData(1.0, 10.9706757, 10.27350921, 500_000.0)]
    [InlineData(1.2, 11.95049283, 11.1492101, 401_370.7809)]
    [InlineData(1.4, 13.08894244, 12.15838269, 322_197.0075)]
    public void An_imposed_exponent_gives_the_closed_form(double exponent, double liquidEnd, double time95, double pressure)
    {
        var course = TestDischarge.Run(Bottle(CushionProcess.Polytropic, exponent));

        Near(liquidEnd, course.LiquidEnd, 1e-6);
        Near(time95, course.Thresholds[0], 1e-6);
        Near(pressure, At(course, course.LiquidEnd).BottlePressure, 1e-6);
        Near(0.5317080739, course.PeakFlow, 1e-6);
        Near(exponent, course.EffectiveExponent, 1e-6);
    }

    [Theory]
    [InlineData(CushionProcess.Isothermal, 0, 10.9706757, 293.15, 500_000.0, 1e-6)]
    [InlineData(CushionProcess.Adiabatic, 0, 13.08894244, 188.9041055, 322_197.0075, 1e-6)]
    [InlineData(CushionProcess.Conductance, 0, 13.08894244, 188.9041055, 322_197.0075, 1e-6)]
    [InlineData(CushionProcess.Conductance, 5, 11.84854281, 260.7421616, 444_724.8194, 1e-5)]
    [InlineData(CushionProcess.Conductance, 1e7, 10.9706757, 293.15, 500_000.0, 1e-5)]
    public void Heat_from_the_wall_lies_between_its_two_limits(int process, double conductance, double liquidEnd, double temperature, double pressure, double within)
    {
        var course = TestDischarge.Run(Bottle((CushionProcess)process, 1, conductance));

        Near(liquidEnd, course.LiquidEnd, within);
        Near(temperature, At(course, course.LiquidEnd).GasTemperature, within);
        Near(pressure, At(course, course.LiquidEnd).BottlePressure, within);
    }

    [Fact]
    public void An_endless_cushion_drains_at_constant_speed()
    {
        var problem = new TestDischarge { GasVolume = 2000 }.Nozzle(0, 0.004, 0.8).Problem(CushionProcess.Isothermal);

        Near(7.522925072, TestDischarge.Run(problem).LiquidEnd, 1e-6);
    }

    [Fact]
    public void Too_small_a_cushion_stops_with_liquid_left()
    {
        var problem = new TestDischarge { LiquidVolume = 0.005, GasVolume = 0.0002 }.Nozzle(0, 0.004, 0.8).Problem(CushionProcess.Polytropic, 1.4);
        var course = TestDischarge.Run(problem);

        Assert.Equal(StopReason.FlowStopped, course.Reason);
        Near(0.003829080714, course.LeftInBottle / 1000, 1e-5);
        Near(11.95111886, course.End, 1e-5);
        Assert.True(double.IsNaN(course.Thresholds[0]));
    }

    [Fact]
    public void The_gas_tail_ends_when_the_closed_form_says()
    {
        var course = TestDischarge.Run(Bottle(CushionProcess.Adiabatic));

        Assert.Equal(StopReason.Equalised, course.Reason);
        Near(16.60589278, course.End, 1e-6);
        Near(0.01562579195, course.GasLeft, 1e-6);
    }

    static DischargeSample At(DischargeCourse course, double time) => course.Samples.First(sample => sample.Time == time);

    static void Near(double expected, double actual, double within) =>
        Assert.True(Math.Abs(actual / expected - 1) <= within, $"{actual:R} where {expected:R} is right");
}
