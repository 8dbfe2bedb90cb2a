using FlowCalc.Discharge;
using MathNet.Numerics.Integration;

namespace FlowCalc.Tests.ClosedForms.Discharge;

/// <summary>Fronts through an empty line, quasi-steady, with fixed friction factors; derived here by quadrature and two integrators to 1e-12.</summary>
public class LineFillingTests
{
    [Theory]
    [InlineData(0, 0.42)]
    [InlineData(1.5, 0.4616993683)]
    public void One_tube_fills_in_the_time_of_the_closed_form(double coefficient, double arrival)
    {
        var discharge = new TestDischarge { GasVolume = 2000, Pressure = 901_325, LiquidVolume = 0.1 };
        var tube = discharge.Tube(0, 0.008, 6, 0.02, coefficient);
        var course = TestDischarge.Run(discharge.Nozzle(tube, 0.004, 0.8).Problem(CushionProcess.Isothermal));

        Near(arrival, course.Arrival[0]);
    }

    [Fact]
    public void Two_branches_fill_at_their_own_times()
    {
        var discharge = new TestDischarge { GasVolume = 2000, Pressure = 901_325, LiquidVolume = 0.1 };
        var main = discharge.Tube(0, 0.008, 2, 0.02, 1.0);
        var near = discharge.Tube(main, 0.006, 1, 0.022, 1.3);
        var far = discharge.Tube(main, 0.006, 3, 0.022, 2.0);
        var course = TestDischarge.Run(discharge.Nozzle(near, 0.003, 0.8).Nozzle(far, 0.003, 0.8).Problem(CushionProcess.Isothermal));

        Near(0.1882791273, course.Arrival[0]);
        Near(0.3873232467, course.Arrival[1]);
    }

    [Fact]
    public void A_tube_is_filled_emptied_and_swept()
    {
        var discharge = new TestDischarge();
        var tube = discharge.Tube(0, 0.008, 5, 0.02, 2.0);
        var course = TestDischarge.Run(discharge.Nozzle(tube, 0.004, 0.8).Problem(CushionProcess.Polytropic, 1.2));

        Near(0.2940768749, course.Arrival[0]);
        Near(14.69769924, course.LiquidEnd);
        Near(15.85534635, course.NozzleLiquidEnd[0]);
        Near(382_085.5021, course.Samples.First(sample => sample.Time == course.NozzleLiquidEnd[0]).BottlePressure);
    }

    [Fact]
    public void A_whole_system_runs_through_all_its_events()
    {
        var discharge = new TestDischarge();
        var main = discharge.Tube(0, 0.008, 2, 0.02, 2.0);
        var first = discharge.Tube(main, 0.006, 1, 0.022, 1.3);
        var second = discharge.Tube(main, 0.006, 3, 0.022, 2.0);
        var course = TestDischarge.Run(discharge.Nozzle(first, 0.003, 0.8).Nozzle(second, 0.0025, 0.8).Problem(CushionProcess.Isothermal));

        Near(0.08915491372, Nearest(course, 0.08915491372));
        Near(14.11007889, Nearest(course, 14.11007889));
        Near(0.1579591063, course.Arrival[0]);
        Near(0.3206856486, course.Arrival[1]);
        Near(13.68261531, course.LiquidEnd);
        Near(13.74202058, course.Thresholds[0]);
        Near(14.29586145, course.NozzleLiquidEnd[0]);
        Near(0.002355866752, course.Delivered[0] / 1000);
        Near(14.953226, course.NozzleLiquidEnd[1]);
        Near(0.001644133248, course.Delivered[1] / 1000);
        Near(19.80045762, course.End);
        Near(0.007597966713, course.GasLeft);
        Near(1_334_798.521, PressureAt(course, course.Arrival[1]));
        Near(500_000, PressureAt(course, course.LiquidEnd));
        Near(488_006.5448, PressureAt(course, course.NozzleLiquidEnd[0]));
        Near(427_581.0656, PressureAt(course, course.NozzleLiquidEnd[1]));
    }

    // Without inertia a front is late by no more than this: the worst is at f·L/D = 3.301, where
    // the inertial front has u² = (2Δp/ρ)(1 − exp(−f·x/D)) / (f·x/D).
    [Fact]
    public void A_front_without_inertia_is_at_most_twelve_per_cent_late()
    {
        const double worst = 3.301227024, bore = 0.008, friction = 0.02;
        var length = worst * bore / friction;
        var discharge = new TestDischarge { GasVolume = 2000, Pressure = 901_325, LiquidVolume = 0.1 };
        var tube = discharge.Tube(0, bore, length, friction, 0);
        var course = TestDischarge.Run(discharge.Nozzle(tube, 0.004, 0.8).Problem(CushionProcess.Isothermal));

        var inertial = length / Math.Sqrt(2 * 8e5 / 1000) * GaussLegendreRule.Integrate(
            part => Math.Sqrt(worst * part / (1 - Math.Exp(-worst * part))), 0, 1, 64);
        Assert.Equal(1.120232504, course.Arrival[0] / inertial, tolerance: 1e-6);
    }

    [Fact]
    public void A_full_line_starts_late_by_its_inertia()
    {
        // u = u∞·tanh(t/τ): 6 m of 8 mm at 8 bar, f 0.02 and K 4 with the exit, τ 0.0688 s, late by τ·ln 2.
        var discharge = new TestDischarge { GasVolume = 2000, Pressure = 901_325, LiquidVolume = 0.1 };
        var tube = discharge.Tube(0, 0.008, 6, 0.02, 3);
        var problem = discharge.Nozzle(tube, 0.008, 1).Problem(CushionProcess.Isothermal);

        var scales = TimeScales.Of(problem, [0, 6], TestDischarge.Run(problem))!;

        Near(0.06882472016, scales.Inertia.Seconds);
        Near(0.04770566073, scales.Lag.Seconds);
    }

    static double Nearest(DischargeCourse course, double time) => course.Samples.MinBy(sample => Math.Abs(sample.Time - time))!.Time;

    static double PressureAt(DischargeCourse course, double time) => course.Samples.First(sample => sample.Time == time).BottlePressure;

    static void Near(double expected, double actual) => Assert.True(Math.Abs(actual / expected - 1) <= 1e-6, $"{actual:R} where {expected:R} is right");
}
