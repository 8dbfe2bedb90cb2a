using FlowCalc.Discharge;

namespace FlowCalc.Tests.ClosedForms.Discharge;

/// <summary>The stepper on y' = −y and on y' = 5t⁴, whose answers are known.</summary>
public class DormandPrinceTests
{
    static bool Decay(double time, Span<double> y, Span<double> rates)
    {
        rates[0] = -y[0];
        return true;
    }

    [Fact]
    public void The_error_of_a_step_falls_with_the_sixth_power_of_its_size()
    {
        double Error(double step) => Math.Abs(Taken(step).End[0] - Math.Exp(-step));

        Assert.InRange(Math.Log2(Error(0.4) / Error(0.2)), 5.7, 6.4);
    }

    [Fact]
    public void The_polynomial_within_a_step_is_of_order_four()
    {
        double Error(double step) => Math.Abs(Taken(step).At(0, 0.37) - Math.Exp(-0.37 * step));
        double SlopeError(double step) => Math.Abs(Taken(step).RateAt(0, 0.37) + Math.Exp(-0.37 * step));

        Assert.InRange(Math.Log2(Error(0.4) / Error(0.2)), 4.6, 5.6);
        Assert.InRange(Math.Log2(SlopeError(0.4) / SlopeError(0.2)), 3.6, 4.8);
    }

    [Fact]
    public void A_fifth_power_of_time_is_exact()
    {
        var stepper = new DormandPrince(1);
        static bool Power(double time, Span<double> y, Span<double> rates)
        {
            rates[0] = 5 * Math.Pow(time, 4);
            return true;
        }
        Power(0, [0], stepper.StartRates);
        stepper.Try(Power, 0, [0], 2, [1]);

        Assert.Equal(32, stepper.End[0], tolerance: 1e-12);
    }

    [Fact]
    public void A_taken_step_goes_on_with_the_rates_of_its_end()
    {
        var stepper = Taken(0.1);
        stepper.Take();

        Assert.Equal(-stepper.End[0], stepper.StartRates[0]);
    }

    [Fact]
    public void Rates_that_cannot_be_had_refuse_the_step()
    {
        var stepper = new DormandPrince(1);

        Assert.True(double.IsNaN(stepper.Try((_, _, _) => false, 0, [0], 1, [1])));
    }

    static DormandPrince Taken(double step)
    {
        var stepper = new DormandPrince(1);
        Decay(0, [1], stepper.StartRates);
        stepper.Try(Decay, 0, [1], step, [1]);
        return stepper;
    }
}
