using FlowCalc.Networks;

namespace FlowCalc.Tests.Networks;

/// <summary>What an answer leaves over is told as it is: from flows and potentials that do not fit, by hand.</summary>
public sealed class BalanceTests
{
    const double Density = 998.2, Resistance = 3e8, Area = 2e-6, Reservoir = 7e5;

    static readonly LiquidPath Water = new(Density, 1e-3, 101_325);

    [Theory]
    [InlineData(0.05, 3e5)]
    [InlineData(0.05, 6e5)]
    [InlineData(0.08, 3e5)]
    [InlineData(0.08, 9e5)]
    public void Settle_tells_what_a_run_and_a_nozzle_miss(double flow, double potential)
    {
        var state = State(1);
        (state.Flow[1], state.Potential[0], state.Potential[1]) = (flow, Reservoir, potential);

        var left = Balance.Settle(state, Water, Reservoir);

        var (run, nozzle) = (Reservoir - Resistance * flow * flow / Density - potential, potential - flow * flow / (2 * Density * Area * Area));
        Assert.Equal(flow, state.Flow[0]);
        Assert.Equal(Math.Abs(run), left.Pressure, 1e-6);
        Assert.Equal(Math.Abs(run) / Math.Max(Reservoir, potential), left.RelativePressure, 1e-12);
        // A nozzle's miss in flow is that in pressure over the slope 2Δp/m of its square law.
        Assert.Equal(Math.Abs(nozzle) / (flow * flow / (Density * Area * Area)), left.Mass, 1e-12);
    }

    [Fact]
    public void Settle_tells_the_worst_of_several_whichever_place_it_has()
    {
        foreach (var worst in new[] { 1, 2, 3 })
        {
            var state = State(3);
            const double flow = 0.05;
            var fitting = flow * flow / (2 * Density * Area * Area);
            state.Potential[0] = Reservoir;
            for (var j = 1; j <= 3; j++) (state.Flow[j], state.Potential[j]) = (flow, fitting * (j == worst ? 1.2 : 1.1));

            var left = Balance.Settle(state, Water, Reservoir);

            Assert.Equal(3 * flow, state.Flow[0], 1e-15);
            Assert.Equal(0.2 / 2 / 3, left.Mass, 1e-12);
        }
    }

    [Theory]
    [InlineData(1e-13, 1e-12, true)]
    [InlineData(1.1e-13, 1e-12, false)]
    [InlineData(1e-13, 1.1e-12, false)]
    [InlineData(double.NaN, 0, false)]
    [InlineData(0, double.NaN, false)]
    public void A_mismatch_is_small_enough_in_both_of_its_parts_or_not_at_all(double mass, double pressure, bool isWithin) =>
        Assert.Equal(isWithin, new Mismatch(mass, 0, pressure).IsWithin(1e-13));

    static SteadyState State(int nozzles)
    {
        var builder = new NetworkBuilder(1 + nozzles);
        builder.AddRun(-1, new(0.01, 0, 0, 0, 0));
        for (var i = 0; i < nozzles; i++) builder.AddNozzle(builder.AddRun(0, new(0.01, 0, 0, 0, Resistance)), Area);
        return new(builder.Build());
    }
}
