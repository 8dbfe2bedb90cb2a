using FlowCalc.Discharge;

namespace FlowCalc.Tests.ClosedForms.Discharge;

/// <summary>Ideal nitrogen (γ 1.4, R 296.8) at 60 bara and 293.15 K through 2 mm with C_d 0.85; closed forms, checked by quadrature of ∫v dp.</summary>
public class GasNozzleTests
{
    const double Before = 6e6, Density = Before / (296.8 * 293.15), Area = 0.85 * Math.PI / 4 * 0.002 * 0.002;

    [Theory]
    [InlineData(101_325, 0.03719319019)]
    [InlineData(4.5e6, 0.03287074307)]
    public void Choked_and_subsonic_flow_are_the_closed_forms(double outside, double flow) =>
        Assert.Equal(flow, Area * GasNozzle.Flux(Before, Density, 1.4, outside), tolerance: 1e-9 * flow);

    [Fact]
    public void Flow_joins_smoothly_where_choking_begins()
    {
        var critical = Before * Math.Pow(2 / 2.4, 3.5);
        double Slope(double outside) => (GasNozzle.Flux(Before, Density, 1.4, outside + 1) - GasNozzle.Flux(Before, Density, 1.4, outside - 1)) / 2;

        Assert.Equal(0, Slope(critical - 10));
        Assert.InRange(Math.Abs(Slope(critical + 10)), 0, 1e-5 * Math.Abs(Slope(critical + 1e6)) * 10);
    }

    [Fact]
    public void Nothing_flows_against_a_pressure() => Assert.Equal(0, GasNozzle.Flux(1e5, 1.2, 1.4, 1e5));
}
