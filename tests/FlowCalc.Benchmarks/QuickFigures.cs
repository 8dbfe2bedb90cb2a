using System.Diagnostics;
using System.Globalization;
using FlowCalc.Networks;

namespace FlowCalc.Benchmarks;

/// <summary>One line a figure, <c>name value unit</c>: the median of many timed solves in this process.</summary>
internal static class QuickFigures
{
    static readonly LiquidPath Water = new(998.2, 1.0016e-3, 101_325);

    const double Charge = 1_301_325;

    /// <summary>Whether figures are only to be seen to come: fewer samples over a shorter time, so that they scatter more.</summary>
    public static bool IsBrief { get; set; }

    static int Samples => IsBrief ? 5 : 15;

    // The runtime is done compiling anew what a whole discharge calls after about a second.
    static int WarmUpMilliseconds => IsBrief ? 200 : 1_500;

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

    /// <summary>Median time of one call, microseconds, over about as long as the warm-up before it and 15 samples; where it is to be brief, less of both.</summary>
    internal static double Time(Action action)
    {
        var watch = Stopwatch.StartNew();
        var calls = 0;
        while (watch.ElapsedMilliseconds < WarmUpMilliseconds) { action(); calls++; }
        var perSample = Math.Max(1, calls / Samples);
        var samples = new double[Samples];
        for (var s = 0; s < samples.Length; s++)
        {
            watch.Restart();
            for (var i = 0; i < perSample; i++) action();
            samples[s] = watch.Elapsed.TotalMicroseconds / perSample;
        }
        Array.Sort(samples);
        return samples[samples.Length / 2];
    }

    /// <summary>Median time of three calls, microseconds, after one to warm up: for what takes seconds. Of one where it is to be brief.</summary>
    internal static double Once(Action action)
    {
        action();
        var samples = new double[IsBrief ? 1 : 3];
        for (var s = 0; s < samples.Length; s++)
        {
            var watch = Stopwatch.StartNew();
            action();
            samples[s] = watch.Elapsed.TotalMicroseconds;
        }
        Array.Sort(samples);
        return samples[samples.Length / 2];
    }

    internal static void Line(string name, double microseconds) =>
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{name} {microseconds:G5} us"));
}
