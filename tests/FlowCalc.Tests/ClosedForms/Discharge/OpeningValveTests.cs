using FlowCalc.Discharge;
using FlowCalc.Networks;

namespace FlowCalc.Tests.ClosedForms.Discharge;

/// <summary>A valve whose area grows evenly, before a nozzle, at constant pressure: 1/√(1/(at)² + 1/A²) integrates to a root.</summary>
public class OpeningValveTests
{
    [Fact]
    public void The_volume_that_an_opening_valve_lets_through_is_the_closed_form()
    {
        // Area of the valve 0.0002 m²/s · t for 0.05 s, nozzle 1.005e-5 m², 8 bar, 1000 kg/m³; derived here, checked by quadrature.
        const double rate = 0.0002, opening = 0.05, area = 1.005e-5;
        var discharge = new TestDischarge { GasVolume = 2000, Pressure = 901_325, LiquidVolume = 0.001 };
        var valve = Resistance.OfArea(rate * opening);
        var problem = discharge.Nozzle(0, Math.Sqrt(area / 0.8 * 4 / Math.PI), 0.8).Problem(CushionProcess.Isothermal) with
        {
            OpeningTime = opening,
            ValveResistance = valve,
            Network = discharge.Resisted(valve),
        };
        var course = TestDischarge.Run(problem);

        var open = course.Samples.First(sample => sample.Time == opening);
        Near(8.296345444e-6, open.Delivered[0] / 1000);
        Near(0.2835471742, open.Flow[0]);
    }

    static void Near(double expected, double actual) => Assert.True(Math.Abs(actual / expected - 1) <= 1e-6, $"{actual:R} where {expected:R} is right");
}
