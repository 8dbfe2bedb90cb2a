using FlowCalc.Networks;

namespace FlowCalc.Tests.ClosedForms.Networks;

/// <summary>Networks whose flow can be written down.</summary>
public class ClosedFormNetworkTests
{
    const double Density = 998.2, Viscosity = 1.0016e-3, Ambient = 101_325, Gravity = 9.80665;

    static SteadyState Solve(NetworkBuilder builder, double gauge, double viscosity = Viscosity)
    {
        var state = new SteadyState(builder.Build());
        var report = SteadySolver.Solve(state, new LiquidPath(Density, viscosity, Ambient), Ambient + gauge, TestContext.Current.CancellationToken);
        Assert.True(report.Converged, report.Failure);
        return state;
    }

    static RunGeometry Constant(double coefficient, double bore) =>
        new(bore, 0, 0, 0, coefficient / (2 * Math.Pow(Math.PI / 4 * bore * bore, 2)));

    [Fact]
    public void A_nozzle_on_a_free_supply_follows_Torricelli()
    {
        var builder = new NetworkBuilder(2);
        builder.AddRun(-1, Constant(0, 0.01));
        builder.AddNozzle(builder.AddRun(0, Constant(0, 0.01)), 2e-6);

        var state = Solve(builder, 7e5);

        Assert.Equal(2e-6 * Math.Sqrt(2 * Density * 7e5), state.Flow[0], tolerance: 1e-13);
    }

    [Fact]
    public void Constant_coefficients_add_as_squares_along_and_as_conductances_across()
    {
        var builder = new NetworkBuilder(4);
        builder.AddRun(-1, Constant(0, 0.01));
        builder.AddRun(0, Constant(3, 0.008));
        builder.AddNozzle(builder.AddRun(1, Constant(10, 0.004)), 1.5e-6);
        builder.AddNozzle(builder.AddRun(1, Constant(2, 0.006)), 4e-6);

        var state = Solve(builder, 9e5);

        double Conductance(double area, double coefficient, double bore)
        {
            var tube = Math.PI / 4 * bore * bore;
            return 1 / Math.Sqrt(1 / (2 * Density * area * area) + coefficient / (2 * Density * tube * tube));
        }
        var (left, right) = (Conductance(1.5e-6, 10, 0.004), Conductance(4e-6, 2, 0.006));
        var trunk = Math.PI / 4 * 0.008 * 0.008;
        var total = Math.Sqrt(9e5 / (1 / Math.Pow(left + right, 2) + 3 / (2 * Density * trunk * trunk)));
        Assert.Equal(total, state.Flow[0], tolerance: 1e-12 * total);
        Assert.Equal(total * left / (left + right), state.Flow[2], tolerance: 1e-12 * total);
    }

    [Fact]
    public void Four_times_the_pressure_gives_twice_the_flow_with_constant_coefficients()
    {
        var builder = new NetworkBuilder(3);
        builder.AddRun(-1, Constant(1, 0.01));
        builder.AddNozzle(builder.AddRun(0, Constant(4, 0.005)), 2e-6);

        Assert.Equal(2 * Solve(builder, 2e5).Flow[0], Solve(builder, 8e5).Flow[0], tolerance: 1e-13);
    }

    [Fact]
    public void A_long_thin_tube_in_laminar_flow_follows_Hagen_and_Poiseuille()
    {
        const double bore = 0.004, length = 30, viscosity = 0.05;
        var builder = new NetworkBuilder(2);
        builder.AddRun(-1, Constant(0, bore));
        builder.AddNozzle(builder.AddRun(0, new RunGeometry(bore, length, 0, 0, 0)), 1e-3);

        var state = Solve(builder, 1e5, viscosity);

        // The nozzle is a thousand times too wide to matter beyond 1e-9.
        var expected = Density * Math.PI * Math.Pow(bore, 4) * 1e5 / (128 * viscosity * length);
        Assert.Equal(expected, state.Flow[0], tolerance: 1e-8 * expected);
    }

    [Fact]
    public void Height_adds_to_the_pressure_below_and_takes_from_that_above()
    {
        var builder = new NetworkBuilder(3);
        builder.AddRun(-1, Constant(0, 0.01));
        builder.AddNozzle(builder.AddRun(0, Constant(0, 0.01) with { Rise = 5 }), 2e-6);
        builder.AddNozzle(builder.AddRun(0, Constant(0, 0.01) with { Rise = -5 }), 2e-6);

        var state = Solve(builder, 1e5);

        Assert.Equal(1e5 - Density * Gravity * 5, state.Potential[1], tolerance: 1e-9);
        Assert.Equal(1e5 + Density * Gravity * 5, state.Potential[2], tolerance: 1e-9);
    }

    [Fact]
    public void A_nozzle_higher_than_the_pressure_can_lift_stays_dry_and_the_rest_flows_as_if_it_were_capped()
    {
        var builder = new NetworkBuilder(3);
        builder.AddRun(-1, Constant(2, 0.006));
        builder.AddNozzle(builder.AddRun(0, new RunGeometry(0.006, 12, 0, 12, 0)), 2e-6);
        builder.AddNozzle(builder.AddRun(0, Constant(0, 0.006)), 2e-6);
        var capped = new NetworkBuilder(2);
        capped.AddRun(-1, Constant(2, 0.006));
        capped.AddNozzle(capped.AddRun(0, Constant(0, 0.006)), 2e-6);

        var state = Solve(builder, 1e5);

        Assert.Equal([true, false], state.IsClosed);
        Assert.Equal(0, state.Flow[1]);
        Assert.Equal(Solve(capped, 1e5).Flow[0], state.Flow[0], tolerance: 1e-15);
    }

    [Fact]
    public void A_network_in_which_nothing_can_leave_stands_still()
    {
        var builder = new NetworkBuilder(2);
        builder.AddRun(-1, Constant(0, 0.01));
        builder.AddNozzle(builder.AddRun(0, new RunGeometry(0.006, 20, 0, 20, 0)), 2e-6);

        var state = Solve(builder, 1e5);

        Assert.Equal(0, state.Flow[0]);
        Assert.Equal(1e5 - Density * Gravity * 20, state.Potential[1], tolerance: 1e-9);
    }

    [Fact]
    public void Equal_outlets_side_by_side_share_the_flow()
    {
        var single = new NetworkBuilder(2);
        single.AddRun(-1, new RunGeometry(0.008, 0.3, 1e-4, 0, 1e8));
        single.AddNozzle(single.AddRun(0, Constant(0, 0.01)), 2e-6);
        var three = new NetworkBuilder(2);
        three.AddRun(-1, new RunGeometry(0.008, 0.3, 1e-4, 0, 1e8, Parallel: 3));
        three.AddNozzle(three.AddRun(0, Constant(0, 0.01)), 6e-6);

        Assert.Equal(3 * Solve(single, 1e6).Flow[0], Solve(three, 1e6).Flow[0], tolerance: 1e-13);
    }
}
