using FlowCalc.Losses;
using MathNet.Numerics.RootFinding;

namespace FlowCalc.Tests.Published.Losses;

/// <summary>
/// F. M. White, Fluid Mechanics, ch. 6, worked examples (numbering of editions 5 to 8). From memory, except the statement, Reynolds number and
/// friction factor of example 6.7, seen in a public copy.
/// </summary>
public class WhiteExampleTests
{
    // Example 6.7: oil in a cast-iron pipe.
    private const double OilFlow = 0.2, OilBore = 0.2, OilLength = 500, OilRoughness = 0.00026, OilViscosity = 1e-5, OilDensity = 900;

    [Fact]
    public void Example_6_4_oil_up_a_slope_flows_27_point_4_cubic_metres_an_hour()
    {
        var flow = FlowUpTheSlope();

        Assert.Equal(0.0076, flow, tolerance: 0.015 * 0.0076); // answer printed to 2 figures
    }

    [Fact]
    public void Example_6_4_oil_up_a_slope_loses_4_point_9_metres_of_head()
    {
        var head = StraightTube.HeadLoss(FlowUpTheSlope(), 0.06, 10, 0, 0.0002);

        Assert.Equal(4.9, head, tolerance: 0.01 * 4.9); // answer printed to 2 figures
    }

    [Fact]
    public void Example_6_5_capillary_viscometer_reads_the_printed_viscosity()
    {
        const double bore = 0.0012192, length = 0.3048, flow = 1.179868608e-6, weightDensity = 9111.072871824948, drop = 0.6096;
        const double laminarKineticFactor = 2;
        const double density = weightDensity / StraightTube.Gravity;
        var exitLoss = laminarKineticFactor * LossCoefficient.PressureDrop(1, density, StraightTube.Velocity(flow, bore));

        var viscosity = Brent.FindRoot(
            mu => StraightTube.PressureDrop(flow, bore, length, 0, density, mu) + exitLoss - weightDensity * drop, 5.8e-4, 1e-2, 1e-14); // laminar viscosities only

        Assert.Equal(0.000694264, viscosity, tolerance: 0.01 * 0.000694264); // 1.45e-5 slug/(ft s), 3 figures
    }

    [Fact]
    public void Example_6_6_asphalted_cast_iron_pipe_loses_4_point_5_feet_of_head()
    {
        const double bore = 0.1524, velocity = 1.8288;

        var head = StraightTube.HeadLoss(velocity * Math.PI / 4 * bore * bore, bore, 60.96, 0.00012192 / bore, 1.02193344e-6);

        Assert.Equal(1.3716, head, tolerance: 0.03 * 1.3716); // chart friction factor 0.020, answer to 2 figures
    }

    [Fact]
    public void Example_6_7_oil_in_cast_iron_has_the_printed_friction_factor()
    {
        var factor = DarcyFriction.Factor(128_000, 0.0013);

        Assert.Equal(0.0225, factor, tolerance: 0.01 * 0.0225); // read off a chart
    }

    [Fact]
    public void Example_6_7_oil_in_cast_iron_loses_117_metres_of_head()
    {
        var head = StraightTube.HeadLoss(OilFlow, OilBore, OilLength, OilRoughness / OilBore, OilViscosity);

        Assert.Equal(117, head, tolerance: 0.015 * 117); // velocity and factor rounded in the book
    }

    [Fact]
    public void Example_6_7_oil_falling_ten_degrees_needs_265_kilopascals()
    {
        var friction = StraightTube.PressureDrop(OilFlow, OilBore, OilLength, OilRoughness / OilBore, OilDensity, OilDensity * OilViscosity);
        var rise = HydrostaticRise.PressureDrop(OilDensity, -OilLength * Math.Sin(10 * Math.PI / 180));

        Assert.Equal(265_000, friction + rise, tolerance: 0.03 * 265_000); // difference of two larger, rounded numbers
    }

    [Fact]
    public void Example_6_8_flow_of_oil_follows_from_a_head_loss_of_8_metres()
    {
        var flow = Brent.FindRoot(q => StraightTube.HeadLoss(q, 0.3, 100, 0.0002, 2e-5) - 8, 0.01, 2);

        Assert.Equal(0.342, flow, tolerance: 0.005 * 0.342); // 3-figure answer
    }

    [Fact]
    public void Example_6_16_pump_between_reservoirs_needs_184_feet_of_head()
    {
        const double flow = 0.0056633693184, bore = 0.0508, sumOfCoefficients = 12.3, lift = 30.48, density = 999.834872;
        var fittings = LossCoefficient.PressureDrop(sumOfCoefficients, density, StraightTube.Velocity(flow, bore)) / (density * StraightTube.Gravity);

        var head = StraightTube.HeadLoss(flow, bore, 121.92, 0.001, 1.02193344e-6) + fittings + lift;

        Assert.Equal(56.0832, head, tolerance: 0.01 * 56.0832); // sum of coefficients and lift as recalled; rounding
    }

    [Fact]
    public void Example_6_17_three_pipes_in_series_carry_10_point_2_cubic_metres_an_hour()
    {
        const double head = 150_000 / (1000 * StraightTube.Gravity) + 5;

        var flow = Brent.FindRoot(q => ThreePipes.Sum(pipe => pipe.HeadLoss(q)) - head, 1e-4, 0.1);

        Assert.Equal(0.00283333, flow, tolerance: 0.01 * 0.00283333); // 3-figure answer
    }

    [Fact]
    public void Example_6_18_three_pipes_in_parallel_carry_99_point_8_cubic_metres_an_hour()
    {
        var flow = ThreePipes.Sum(pipe => pipe.FlowAt(20.3));

        Assert.Equal(0.0277222, flow, tolerance: 0.01 * 0.0277222); // 3-figure answer
    }

    [Theory]
    [InlineData(0, 0.0173611, TestDisplayName = "Example 6.18: the first parallel pipe carries 62.5 cubic metres an hour")]
    [InlineData(1, 0.00719444, TestDisplayName = "Example 6.18: the second parallel pipe carries 25.9 cubic metres an hour")]
    [InlineData(2, 0.00316667, TestDisplayName = "Example 6.18: the third parallel pipe carries 11.4 cubic metres an hour")]
    public void Example_6_18_each_parallel_pipe_carries_its_printed_flow(int pipe, double published) =>
        Assert.Equal(published, ThreePipes[pipe].FlowAt(20.3), tolerance: 0.01 * published); // 3-figure answers

    private static readonly Pipe[] ThreePipes = [new(100, 0.08, 0.003), new(150, 0.06, 0.002), new(80, 0.04, 0.005)];

    private static double FlowUpTheSlope()
    {
        const double density = 900, rise = 6.4278760968653925;
        var drive = 350_000 - 250_000 - HydrostaticRise.PressureDrop(density, rise);
        return Brent.FindRoot(q => StraightTube.PressureDrop(q, 0.06, 10, 0, density, density * 0.0002) - drive, 1e-5, 0.015, 1e-14);
    }

    private sealed record Pipe(double Length, double Bore, double RelativeRoughness)
    {
        private const double KinematicViscosity = 1.02e-6;

        public double HeadLoss(double flow) => StraightTube.HeadLoss(flow, Bore, Length, RelativeRoughness, KinematicViscosity);

        public double FlowAt(double head) => Brent.FindRoot(q => HeadLoss(q) - head, 1e-5, 0.1);
    }
}
