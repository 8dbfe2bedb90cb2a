using FlowCalc.Losses;
using FlowCalc.Networks;

namespace FlowCalc.Tests.Networks;

/// <summary>A hundred thousand points in every shape: no recursion, no loss of digits, no allocation in a second solve.</summary>
public class LargeNetworkTests
{
    const int Points = 100_000;

    static readonly LiquidPath Water = new(998.2, 1.0016e-3, 101_325);

    static RunGeometry Tube(double bore, double length) => new(bore, length, 1e-4, 0, 0);

    static Network Chain()
    {
        var builder = new NetworkBuilder(Points);
        builder.AddRun(-1, Tube(0.05, 0));
        for (var j = 1; j < Points; j++) builder.AddRun(j - 1, Tube(0.05, 0.01));
        builder.AddNozzle(Points - 1, Orifice.EffectiveArea(0.02, 0.8));
        return builder.Build();
    }

    static Network Star()
    {
        var builder = new NetworkBuilder(Points);
        builder.AddRun(-1, Tube(0.9, 0));
        builder.AddRun(0, Tube(0.9, 1));
        for (var j = 2; j < Points; j++)
        {
            builder.AddRun(1, Tube(0.004, 0.5 + j % 7));
            builder.AddNozzle(j, Orifice.EffectiveArea(1e-3, 0.8));
        }
        return builder.Build();
    }

    static Network Comb()
    {
        var builder = new NetworkBuilder(Points);
        builder.AddRun(-1, Tube(0.6, 0));
        var spine = 0;
        for (var j = 1; j + 1 < Points; j += 2)
        {
            spine = builder.AddRun(spine, Tube(0.6, 0.02));
            builder.AddNozzle(builder.AddRun(spine, Tube(0.004, 1)), Orifice.EffectiveArea(1e-3, 0.8));
        }
        return builder.Build();
    }

    static Network Binary()
    {
        var builder = new NetworkBuilder(Points);
        builder.AddRun(-1, Tube(0.6, 0));
        for (var j = 1; j < Points; j++)
        {
            var level = Math.Floor(Math.Log2(j + 1));
            builder.AddRun((j - 1) / 2, Tube(0.6 * Math.Pow(0.72, level), 0.2 + j % 3));
            if (2 * j + 1 >= Points) builder.AddNozzle(j, Orifice.EffectiveArea(1e-3, 0.8));
        }
        return builder.Build();
    }

    public static TheoryData<string> Shapes => new("chain", "star", "comb", "binary");

    [Theory]
    [MemberData(nameof(Shapes))]
    public void A_hundred_thousand_points_settle_in_any_shape(string shape)
    {
        var network = shape switch { "chain" => Chain(), "star" => Star(), "comb" => Comb(), _ => Binary() };
        var state = new SteadyState(network);

        var report = SteadySolver.Solve(state, Water, 1_301_325, TestContext.Current.CancellationToken);

        Assert.True(report.Converged, report.Failure);
        Assert.InRange(report.Iterations, 1, 12);
        Assert.InRange(ScalarResidual.Mass(state), 0, 1e-10);
        Assert.InRange(ScalarResidual.Pressure(state, 998.2, 1.0016e-3, 1_200_000), 0, 1e-9);
    }

    [Fact]
    public void A_second_solve_allocates_nothing()
    {
        var state = new SteadyState(Binary());
        SteadySolver.Solve(state, Water, 1_301_325, TestContext.Current.CancellationToken);
        var least = long.MaxValue;

        // The runtime may allocate when it first meets or recompiles a method; what the solve itself allocates it does each time.
        for (var turn = 0; turn < 8; turn++)
        {
            var before = GC.GetAllocatedBytesForCurrentThread();
            Assert.True(SteadySolver.Solve(state, Water, 1_201_325 + 1_000 * turn, TestContext.Current.CancellationToken).Converged);
            least = Math.Min(least, GC.GetAllocatedBytesForCurrentThread() - before);
        }

        // The report itself is the one object.
        Assert.InRange(least, 0, 200);
    }

    [Fact]
    public void A_cancelled_solve_stops()
    {
        using var source = new CancellationTokenSource();
        source.Cancel();

        Assert.Throws<OperationCanceledException>(() => SteadySolver.Solve(new SteadyState(Chain()), Water, 1_301_325, source.Token));
    }
}
