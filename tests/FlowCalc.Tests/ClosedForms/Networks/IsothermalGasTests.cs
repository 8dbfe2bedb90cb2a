using FlowCalc.Networks;
using FlowCalc.Tests.Networks;

namespace FlowCalc.Tests.ClosedForms.Networks;

/// <summary>The solver knows a fluid only by its path: an ideal gas goes through it as a liquid does.</summary>
public class IsothermalGasTests
{
    [Fact]
    public void Gas_through_a_tube_and_a_choked_nozzle_follows_the_isothermal_square_law()
    {
        const double rt = 296.8 * 293.15, ambient = 101_325, charge = 2_000_000, bore = 0.006, coefficient = 40, nozzleArea = 3e-6;
        var area = Math.PI / 4 * bore * bore;
        var builder = new NetworkBuilder(2);
        builder.AddRun(-1, new RunGeometry(bore, 0, 0, 0, 0));
        builder.AddNozzle(builder.AddRun(0, new RunGeometry(bore, 0, 0, 0, coefficient / (2 * area * area))), nozzleArea);
        var state = new SteadyState(builder.Build());

        var report = SteadySolver.Solve(state, new IsothermalGas(rt, 1.76e-5, ambient), charge, TestContext.Current.CancellationToken);

        // p1² − p2² = K RT G², G = m / A (the textbook form without its logarithm), and m = A_n p2 / √RT.
        var end = charge / Math.Sqrt(1 + coefficient * nozzleArea * nozzleArea / (area * area));
        Assert.True(report.Converged, report.Failure);
        Assert.Equal(nozzleArea * end / Math.Sqrt(rt), state.Flow[0], tolerance: 1e-12);
    }

    [Fact]
    public void Gas_at_rest_under_its_own_weight_thins_out_exponentially()
    {
        const double rt = 296.8 * 293.15, ambient = 101_325, height = 400;
        var builder = new NetworkBuilder(401);
        var point = builder.AddRun(-1, new RunGeometry(0.01, 0, 0, 0, 0));
        for (var i = 0; i < 400; i++) point = builder.AddRun(point, new RunGeometry(0.01, 1, 0, height / 400, 0));
        var state = new SteadyState(builder.Build());

        SteadySolver.Solve(state, new IsothermalGas(rt, 1.76e-5, ambient), 1_000_000, TestContext.Current.CancellationToken);

        // The barometric formula; the weight is taken at each metre's middle potential, an error of the second order.
        var pressure = new IsothermalGas(rt, 1.76e-5, ambient).Pressure(state.Potential[point]);
        Assert.Equal(1_000_000 * Math.Exp(-9.80665 * height / rt), pressure, tolerance: 1);
    }
}
