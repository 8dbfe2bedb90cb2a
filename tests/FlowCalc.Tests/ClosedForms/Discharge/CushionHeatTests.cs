using FlowCalc.Discharge;

namespace FlowCalc.Tests.ClosedForms.Discharge;

/// <summary>Gas shut in and its wall as two lumps: their difference fades as an exponential.</summary>
public class CushionHeatTests
{
    [Fact]
    public void Gas_and_wall_come_together_as_two_lumps_do()
    {
        // 20 L of ideal nitrogen at 40 bara and 220 K, wall 285 K, 9000 J/K, 25 W/K; closed form, checked by an integrator of order 8.
        var gas = TestDischarge.Gas;
        var density = 4e6 / (gas.GasConstant * 220);
        var cushion = new Cushion { Gas = gas, Process = CushionProcess.Conductance, Temperature = 220, Density = density, Conductance = 25, WallHeatCapacity = 9000 };
        bool Rates(double time, Span<double> y, Span<double> rates)
        {
            var state = new CushionState(y[0], density, density * 0.02, y[1], 0, 0);
            // The cushion gives heat to its liquid at the start temperature, which a constant conductance leaves out.
            rates[0] = cushion.Rates(state, cushion.At(y[0], density), 0, out var wall);
            rates[1] = wall;
            return true;
        }
        var stepper = new EmbeddedStep(RungeKuttaPair.DormandPrince, 2);
        double[] y = [220, 285], scale = [1e-9, 1e-9];
        for (var i = 0; i < 300; i++)
        {
            stepper.Restart();
            Rates(0, y, stepper.StartRates);
            Assert.InRange(stepper.Try(Rates, 0, y, 0.1, scale), 0, 1);
            stepper.End.CopyTo(y);
        }

        Assert.Equal(255.2333573, y[0], tolerance: 1e-7 * 255);
        Assert.Equal(4_640_606.496, cushion.At(y[0], density).Pressure, tolerance: 1e-7 * 4.6e6);
    }
}
