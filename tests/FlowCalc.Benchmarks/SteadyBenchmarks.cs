using BenchmarkDotNet.Attributes;
using FlowCalc.Networks;

namespace FlowCalc.Benchmarks;

/// <summary>The steady solve in BenchmarkDotNet, with what it allocates.</summary>
[MemoryDiagnoser]
public class SteadyBenchmarks
{
    readonly LiquidPath _water = new(998.2, 1.0016e-3, 101_325);
    SteadyState? _plain;
    SteadyState? _tees;
    bool _isHigh;

    [Params(10, 1_000, 100_000)]
    public int Points { get; set; }

    [GlobalSetup]
    public void Prepare()
    {
        _plain = new(TreeNetwork.Of(RandomTree.Plain(Points, seed: Points)));
        _tees = new(TreeNetwork.Of(RandomTree.Tees(Points, seed: Points)));
    }

    [Benchmark(Baseline = true)]
    public double Cold() => Solve(_plain!, isWarm: false);

    [Benchmark]
    public double Warm() => Solve(_plain!, isWarm: true);

    [Benchmark]
    public double Tees() => Solve(_tees!, isWarm: false);

    double Solve(SteadyState state, bool isWarm)
    {
        state.IsWarm &= isWarm;
        _isHigh = !_isHigh;
        SteadySolver.Solve(state, _water, _isHigh ? 1_314_338 : 1_301_325, CancellationToken.None);
        return state.Flow[0];
    }
}
