using FlowCalc.Discharge;

namespace FlowCalc.Tests.ClosedForms.Discharge;

/// <summary>Both pairs on y' = −y and on y' = 5t⁴, whose answers are known.</summary>
public class EmbeddedStepTests
{
    static bool Decay(double time, Span<double> y, Span<double> rates)
    {
        rates[0] = -y[0];
        return true;
    }

    [Theory]
    [InlineData(5)]
    [InlineData(3)]
    public void The_error_of_a_step_falls_with_the_power_of_its_size_above_the_order(int order)
    {
        double Error(double step) => Math.Abs(Taken(step, order).End[0] - Math.Exp(-step));

        Assert.InRange(Math.Log2(Error(0.4) / Error(0.2)), order + 0.7, order + 1.4);
    }

    [Theory]
    [InlineData(5)]
    [InlineData(3)]
    public void The_error_that_a_step_is_measured_by_falls_with_the_power_of_its_size_that_stretches_it(int order)
    {
        double Measured(double step) => Of(step, order).Error;

        Assert.InRange(Math.Log2(Measured(0.4) / Measured(0.2)), order - 0.5, order + 0.5);
    }

    [Theory]
    [InlineData(5, 5)]
    [InlineData(3, 4)]
    public void The_polynomial_within_a_step_is_as_good_as_its_order_says(int order, int power)
    {
        double Error(double step) => Math.Abs(Taken(step, order).At(0, 0.37) - Math.Exp(-0.37 * step));
        double SlopeError(double step) => Math.Abs(Taken(step, order).RateAt(0, 0.37) + Math.Exp(-0.37 * step));

        Assert.InRange(Math.Log2(Error(0.4) / Error(0.2)), power - 0.4, power + 0.6);
        Assert.InRange(Math.Log2(SlopeError(0.4) / SlopeError(0.2)), power - 1.4, power - 0.2);
    }

    [Fact]
    public void A_third_power_of_time_is_exact_by_the_pair_of_order_three_within_the_step_too()
    {
        var stepper = new EmbeddedStep(RungeKuttaPair.BogackiShampine, 1);
        static bool Power(double time, Span<double> y, Span<double> rates)
        {
            rates[0] = 3 * time * time;
            return true;
        }
        Power(0, [0], stepper.StartRates);
        stepper.Try(Power, 0, [0], 2, [1]);

        Assert.Equal(8, stepper.End[0], tolerance: 1e-12);
        Assert.Equal(1, stepper.At(0, 0.5), tolerance: 1e-12);
    }

    [Fact]
    public void A_fifth_power_of_time_is_exact()
    {
        var stepper = new EmbeddedStep(RungeKuttaPair.DormandPrince, 1);
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
        var stepper = Taken(0.1, 5);
        stepper.Take();

        Assert.Equal(-stepper.End[0], stepper.StartRates[0]);
    }

    [Fact]
    public void Rates_that_cannot_be_had_refuse_the_step()
    {
        var stepper = new EmbeddedStep(RungeKuttaPair.DormandPrince, 1);

        Assert.True(double.IsNaN(stepper.Try((_, _, _) => false, 0, [0], 1, [1])));
    }

    static EmbeddedStep Taken(double step, int order) => Of(step, order).Step;

    static (EmbeddedStep Step, double Error) Of(double step, int order)
    {
        var stepper = new EmbeddedStep(order == 5 ? RungeKuttaPair.DormandPrince : RungeKuttaPair.BogackiShampine, 1);
        Decay(0, [1], stepper.StartRates);
        return (stepper, stepper.Try(Decay, 0, [1], step, [1]));
    }
}
