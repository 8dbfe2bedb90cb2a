using FlowCalc.Bottles;
using FlowCalc.Discharge;

namespace FlowCalc.Tests.ClosedForms.Discharge;

/// <summary>Bottles behind whole lines with fixed coefficients; derived here by quadrature of equivalent areas, checked by an integrator of order 8.</summary>
public class BranchedBlowDownTests
{
    // Three levels, four nozzles; the line is filled before, so that its volume is as good as none.
    [Fact]
    public void A_tree_of_four_nozzles_empties_the_bottle_as_its_equivalent_area_does()
    {
        var discharge = new TestDischarge();
        int Run(int parent, double bore, double length, double friction, double coefficient) =>
            discharge.Tube(parent, bore, 0, 0, coefficient + friction * length / bore);
        var root = Run(0, 0.010, 1.5, 0.020, 1.0);
        var a = Run(root, 0.008, 1, 0.021, 1.2);
        var b = Run(root, 0.008, 3, 0.021, 1.2);
        var course = TestDischarge.Run(discharge
            .Nozzle(Run(a, 0.006, 0.8, 0.024, 1.3), 0.003, 0.8).Nozzle(Run(a, 0.006, 2, 0.024, 1.3), 0.003, 0.8)
            .Nozzle(Run(b, 0.006, 0.5, 0.024, 1.3), 0.0025, 0.8).Nozzle(Run(b, 0.005, 1, 0.026, 1.3), 0.003, 0.7)
            .Problem(CushionProcess.Polytropic, 1.2));

        Near(7.882114034, course.LiquidEnd);
        var end = course.Samples.First(sample => sample.Time == course.LiquidEnd);
        Near(1.172842582, end.Delivered[0]);
        Near(0.8309753248, end.Delivered[2]);
    }

    [Fact]
    public void The_head_of_the_falling_surface_and_the_climb_to_the_nozzle_count()
    {
        // A standing bottle of 140 mm, inlet at its floor, the nozzle 0.6 m above that.
        var discharge = new TestDischarge { Density = 998, Pressure = 1.2e6 };
        var tube = discharge.Tube(0, 0.008, 0, 0, 2.5 + 0.022 * 3 / 0.008, rise: 0.6);
        var course = TestDischarge.Run(discharge.Nozzle(tube, 0.004, 0.8).Problem(CushionProcess.Polytropic, 1.2) with
        {
            Level = new LiquidLevel(0.07, 0.006 / TestDischarge.Disc(0.14), new(0, 0, 1)),
            HasHead = true,
        });

        Near(16.50651019, course.LiquidEnd);
        Near(0.0003938738976 * 998, course.PeakFlow);
    }

    [Fact]
    public void Air_shut_in_behind_a_closed_end_keeps_its_isothermal_volume()
    {
        // p·V of the air stays what it was, 30 mL at 101 325 Pa, until it is at the line's pressure of 12 bara.
        var discharge = new TestDischarge { GasVolume = 2000, Pressure = 1.2e6, LiquidVolume = 0.1, Tolerance = 1e-8 };
        var bore = Math.Sqrt(3e-5 / 2 * 4 / Math.PI);
        var spare = discharge.Tube(0, bore, 2, 0.02, 1);
        Assert.True(spare > 0);
        var course = TestDischarge.Run(discharge.Nozzle(discharge.Tube(0, 0.01, 0, 0, 0), 0.001, 0.8).Problem(CushionProcess.Isothermal));

        // What the branch holds never leaves: its liquid is 30 mL less the air.
        Near(3e-5 - 2.533125e-6, course.LeftInTubes / 1000, 1e-4);
    }

    static void Near(double expected, double actual, double within = 1e-6) =>
        Assert.True(Math.Abs(actual / expected - 1) <= within, $"{actual:R} where {expected:R} is right");
}
