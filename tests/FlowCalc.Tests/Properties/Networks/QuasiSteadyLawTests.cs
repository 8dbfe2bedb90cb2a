using FlowCalc.Networks;
using FlowCalc.Tests.Networks;

namespace FlowCalc.Tests.Properties.Networks;

/// <summary>Following a flow from call to call ends where the steady solver ends, to the step that was asked for.</summary>
public sealed class QuasiSteadyLawTests
{
    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void From_no_answer_it_ends_at_the_steady_flow(bool hasTees)
    {
        for (var seed = 0; seed < 200; seed++)
        {
            var random = new RandomNetwork(seed, hasRises: false, hasTees, isWild: false);
            var (steady, _) = random.Solve();
            var state = new SteadyState(random.Network);

            var failure = QuasiSteadySolver.Solve(state, random.Path, random.Pressure, 1e-6, TestContext.Current.CancellationToken);

            Assert.Null(failure);
            Assert.True(state.IsWarm);
            Assert.InRange(ScalarResidual.Mass(state), 0, 1e-13);
            // Newton squares the error of its last step.
            AssertFlows(steady, state, 1e-9);
        }
    }

    [Fact]
    public void From_an_answer_nearby_a_coarse_step_ends_close_to_the_steady_flow_though_bends_are_recalled()
    {
        for (var seed = 0; seed < 200; seed++)
        {
            var random = new RandomNetwork(seed, hasRises: false, hasTees: true, isWild: false);
            var state = new SteadyState(random.Network);
            var gauge = random.Pressure - RandomNetwork.Ambient;
            foreach (var part in new[] { 1.0, 1.004, 1.002, 0.97 })
            {
                var pressure = RandomNetwork.Ambient + part * gauge;

                Assert.Null(QuasiSteadySolver.Solve(state, random.Path, pressure, 3e-3, TestContext.Current.CancellationToken));

                // A step of 3e-3 leaves about 1e-5; ten times that for trees whose slopes bend more.
                AssertFlows(random.Solve(pressure).State, state, 1e-4);
                Assert.InRange(ScalarResidual.Mass(state), 0, 1e-13);
            }
        }
    }

    [Fact]
    public void A_nozzle_that_would_draw_air_is_closed_as_the_steady_solver_closes_it()
    {
        var closed = 0;
        for (var seed = 0; seed < 200; seed++)
        {
            var random = new RandomNetwork(seed, hasRises: true, hasTees: false, isWild: false);
            var (steady, _) = random.Solve();
            var state = new SteadyState(random.Network);
            foreach (var _ in Enumerable.Range(0, 2))
            {
                Assert.Null(QuasiSteadySolver.Solve(state, random.Path, random.Pressure, 1e-6, TestContext.Current.CancellationToken));

                Assert.Equal(steady.IsClosed, state.IsClosed);
                AssertFlows(steady, state, 1e-9);
            }
            if (Array.Exists(state.IsClosed, isClosed => isClosed)) closed++;
        }
        Assert.NotEqual(0, closed);
    }

    [Fact]
    public void A_closed_nozzle_opens_again_as_the_pressure_lifts_it()
    {
        // Of 20 m of water 1 bar lifts about 10 and 4 bar about 40.
        var builder = new NetworkBuilder(3);
        builder.AddRun(-1, new(0.006, 0.5, 0.001, 0, 0));
        builder.AddNozzle(builder.AddRun(0, new(0.006, 20, 0.001, 20, 0)), 2e-6);
        builder.AddNozzle(builder.AddRun(0, new(0.006, 1, 0.001, 0, 0)), 2e-6);
        var (state, path) = (new SteadyState(builder.Build()), new LiquidPath(998.2, 1.0016e-3, 101_325));

        Assert.Null(QuasiSteadySolver.Solve(state, path, 201_325, 1e-6, TestContext.Current.CancellationToken));
        Assert.Equal([true, false], state.IsClosed);
        Assert.Null(QuasiSteadySolver.Solve(state, path, 501_325, 1e-6, TestContext.Current.CancellationToken));
        Assert.Equal([false, false], state.IsClosed);
        Assert.True(state.Flow[1] > 0);
    }

    [Fact]
    public void A_tree_that_the_steady_solver_gives_up_is_given_up_with_its_reason()
    {
        var tried = 0;
        for (var seed = 0; seed < 4_000 && tried < 2; seed++)
        {
            var random = new RandomNetwork(seed, hasRises: true, hasTees: true, isWild: true);
            var (_, report) = random.Solve();
            if (report.Converged) continue;
            var state = new SteadyState(random.Network);

            var failure = QuasiSteadySolver.Solve(state, random.Path, random.Pressure, 1e-6, TestContext.Current.CancellationToken);

            tried++;
            Assert.Equal(report.Failure, failure);
            Assert.False(state.IsWarm);
        }
        Assert.NotEqual(0, tried);
    }

    [Fact]
    public void A_cancelled_call_stops()
    {
        var random = new RandomNetwork(1, false, false, false);

        Assert.Throws<OperationCanceledException>(() => QuasiSteadySolver.Solve(new(random.Network), random.Path, random.Pressure, 1e-6, new(true)));
    }

    static void AssertFlows(SteadyState expected, SteadyState actual, double part)
    {
        for (var j = 0; j < expected.Network.Count; j++)
            Assert.Equal(expected.Flow[j], actual.Flow[j], part * Math.Abs(expected.Flow[0]) + 1e-15);
    }
}
