using FlowCalc.Networks;
using FlowCalc.Tests.Networks;

namespace FlowCalc.Tests.Properties.Networks;

/// <summary>Whatever the tree, an answer for a gas or a flashing liquid satisfies the equations that it claims to solve.</summary>
public sealed class CompressibleSolverLawTests
{
    [Theory]
    [InlineData(false, false, false, 0)]
    [InlineData(false, true, false, 0)]
    [InlineData(true, true, false, 0)]
    [InlineData(false, true, true, 1)]
    [InlineData(true, true, true, 2)]
    public void Random_trees_of_gas_settle(bool hasRises, bool hasTees, bool isWild, int mostStatedFailures) =>
        Try(hasRises, hasTees, isWild, mostStatedFailures, random => new IsothermalPath(296.8, 288, 1.4, RandomNetwork.Ambient, Pressure(random), hasHeads: true));

    [Theory]
    [InlineData(false, false, false, 0)]
    [InlineData(false, true, false, 0)]
    [InlineData(true, true, false, 0)]
    [InlineData(false, true, true, 1)]
    [InlineData(true, true, true, 2)]
    public void Random_trees_of_flashing_liquid_settle(bool hasRises, bool hasTees, bool isWild, int mostStatedFailures) =>
        Try(hasRises, hasTees, isWild, mostStatedFailures, random => new OmegaPath(1300, 1.5, Pressure(random), RandomNetwork.Ambient, Pressure(random), hasHeads: true));

    [Theory]
    [InlineData(0.3)]
    [InlineData(0.9)]
    [InlineData(1.0)]
    public void A_start_from_another_answer_ends_at_the_same_flows(double part)
    {
        for (var seed = 0; seed < 60; seed++)
        {
            var random = new RandomNetwork(seed, hasRises: false, hasTees: true, isWild: false);
            var pressure = Pressure(random);
            var path = new IsothermalPath(296.8, 288, 1.4, RandomNetwork.Ambient, pressure, hasHeads: true);
            var (cold, warm) = (new CompressibleState(random.Network, random.Area), new CompressibleState(random.Network, random.Area));
            var token = TestContext.Current.CancellationToken;

            Assert.True(CompressibleSolver.Solve(cold, path, pressure, CompressibleSolver.Tight, token).Converged);
            Assert.True(CompressibleSolver.Solve(warm, path, RandomNetwork.Ambient + part * (pressure - RandomNetwork.Ambient), CompressibleSolver.Tight, token).Converged);
            Assert.True(CompressibleSolver.Solve(warm, path, pressure, CompressibleSolver.Tight, token).Converged);

            for (var j = 0; j < random.Network.Count; j++)
                Assert.Equal(cold.Steady.Flow[j], warm.Steady.Flow[j], tolerance: 1e-6 * cold.Steady.Flow[0]);
        }
    }

    static double Pressure(RandomNetwork random) => Math.Max(random.Pressure, 3e5);

    static void Try<TPath>(bool hasRises, bool hasTees, bool isWild, int mostStatedFailures, Func<RandomNetwork, TPath> path) where TPath : struct, ICompressiblePath
    {
        var (failures, choked) = (0, 0);
        for (var seed = 0; seed < 400; seed++)
        {
            var random = new RandomNetwork(seed, hasRises, hasTees, isWild, rise: 1);
            var state = new CompressibleState(random.Network, random.Area);
            var report = CompressibleSolver.Solve(state, path(random), Pressure(random), CompressibleSolver.Tight, TestContext.Current.CancellationToken);
            if (!report.Converged)
            {
                failures++;
                Assert.NotNull(report.Failure);
                continue;
            }
            Assert.InRange(report.MassResidual, 0, 3e-6);
            Assert.InRange(report.PressureResidual, 0, 1e-6 * Pressure(random));
            Assert.InRange(ScalarResidual.Mass(state.Steady), 0, 1e-13);
            if (Array.Exists(state.IsChoked, isChoked => isChoked)) choked++;
        }
        Assert.InRange(failures, 0, mostStatedFailures);
        if (isWild) Assert.NotEqual(0, choked);
    }
}
