using FlowCalc.Losses;

namespace FlowCalc.Tests.Published.Losses;

/// <summary>IEC 60534-1: Kv is the flow of water in m³/h at 1 bar, and 0.865 Cv. From memory.</summary>
public class FlowCoefficientTests
{
    [Fact]
    public void Kv_of_1_on_a_bore_of_1_metre_has_the_coefficient_of_its_definition()
    {
        var coefficient = FlowCoefficientLoss.EquivalentCoefficient(FlowCoefficientLoss.FromCubicMetresPerHour(1), 1);

        Assert.Equal(1.598876e9, coefficient, tolerance: 1e-5 * 1.598876e9); // 200 π² 3600²/16, exact
    }

    [Fact]
    public void Kv_lets_its_own_number_of_cubic_metres_an_hour_pass_at_1_bar()
    {
        var drop = FlowCoefficientLoss.PressureDrop(2.5 / 3600, 1000, FlowCoefficientLoss.FromCubicMetresPerHour(2.5)).PressureDrop;

        Assert.Equal(1e5, drop, tolerance: 1e-9 * 1e5);
    }

    [Fact]
    public void Printed_ratio_of_Kv_to_Cv_is_that_of_the_units()
    {
        const double gallon = 3.785411784e-3, psi = 6894.757293168361, waterAt60Fahrenheit = 999.0;

        var kv = 60 * gallon * Math.Sqrt(1e5 / psi * waterAt60Fahrenheit / 1000);

        Assert.Equal(FlowCoefficientLoss.MetricPerUs, kv, tolerance: 0.001); // printed to 3 figures
    }
}
