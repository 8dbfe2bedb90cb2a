using System.Diagnostics;
using System.Globalization;
using FlowCalc.Networks;

namespace FlowCalc.Benchmarks;

/// <summary>One line a figure, <c>name value unit</c>: the median of many timed solves in this process.</summary>
internal static class QuickFigures
{
    static readonly LiquidPath Water = new(998.2, 1.0016e-3, 101_325);

    const double Charge = 1_301_325;

    public static void Print(IEnumerable<int> sizes)
    {
        foreach (var points in sizes)
        {
            var plain = new SteadyState(TreeNetwork.Of(RandomTree.Plain(points, seed: points)));
            var tees = new SteadyState(TreeNetwork.Of(RandomTree.Tees(points, seed: points)));
            Line($"steady-cold-{points}", Time(() => Cold(plain)));
            Line($"steady-warm-{points}", Warm(plain));
            Line($"steady-tees-{points}", Time(() => Cold(tees)));
        }
    }

    static void Cold(SteadyState state)
    {
        state.IsWarm = false;
        Solve(state, Charge);
    }

    // From one pressure to another one a hundredth away, and back.
    static double Warm(SteadyState state)
    {
        Cold(state);
        var isHigh = false;
        return Time(() => Solve(state, (isHigh = !isHigh) ? Charge * 1.01 : Charge));
    }

    static void Solve(SteadyState state, double pressure)
    {
        var report = SteadySolver.Solve(state, Water, pressure, CancellationToken.None);
        if (!report.Converged) throw new InvalidOperationException(report.Failure);
    }

    /// <summary>Median time of one call, microseconds, over at least 0.4 s and 15 samples after a warm-up.</summary>
    internal static double Time(Action action)
    {
        var watch = Stopwatch.StartNew();
        var calls = 0;
        while (watch.ElapsedMilliseconds < 500) { action(); calls++; }
        var perSample = Math.Max(1, calls / 15);
        var samples = new double[15];
        for (var s = 0; s < samples.Length; s++)
        {
            watch.Restart();
            for (var i = 0; i < perSample; i++) action();
            samples[s] = watch.Elapsed.TotalMicroseconds / perSample;
        }
        Array.Sort(samples);
        return samples[samples.Length / 2];
    }

    /// <summary>Median time of three calls, microseconds, after one to warm up: for what takes seconds.</summary>
    internal static double Once(Action action)
    {
        action();
        var samples = new double[3];
        for (var s = 0; s < samples.Length; s++)
        {
            var watch = Stopwatch.StartNew();
            action();
            samples[s] = watch.Elapsed.TotalMicroseconds;
        }
        Array.Sort(samples);
        return samples[1];
    }

    internal static void Line(string name, double microseconds) =>
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{name} {microseconds:G5} us"));
}
