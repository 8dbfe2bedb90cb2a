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
