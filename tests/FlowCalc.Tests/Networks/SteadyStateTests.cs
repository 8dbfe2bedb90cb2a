using FlowCalc.Networks;

namespace FlowCalc.Tests.Networks;

public sealed class SteadyStateTests
{
    [Fact]
    public void A_state_that_starts_from_another_goes_on_where_that_one_ended()
    {
        for (var seed = 0; seed < 20; seed++)
        {
            var random = new RandomNetwork(seed, hasRises: true, hasTees: false, isWild: false);
            var (first, _) = random.Solve();
            var second = new SteadyState(random.Network);

            second.StartFrom(first);
            var again = SteadySolver.Solve(second, random.Path, random.Pressure, TestContext.Current.CancellationToken);
            var once = SteadySolver.Solve(first, random.Path, random.Pressure, TestContext.Current.CancellationToken);

            // The friction's roots go along: from its start, they alone would take more steps.
            Assert.Equal(once.Iterations, again.Iterations);
            Assert.Equal(first.Flow, second.Flow);
            Assert.Equal(first.Potential, second.Potential);
            Assert.Equal(first.IsClosed, second.IsClosed);
        }
    }

    [Fact]
    public void A_state_without_an_answer_passes_none_on()
    {
        var random = new RandomNetwork(3, hasRises: false, hasTees: true, isWild: false);
        var (first, _) = random.Solve();
        var second = new SteadyState(random.Network);
        first.IsWarm = false;

        second.StartFrom(first);

        Assert.False(second.IsWarm);
    }
}
