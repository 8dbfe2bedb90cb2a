using System.Collections.Immutable;
using System.Runtime.Intrinsics;
using System.Text;
using FlowCalc.Agents;
using FlowCalc.Calibration;
using FlowCalc.Examples;
using FlowCalc.Flows;
using FlowCalc.Layouts;
using FlowCalc.Studies.Sampling;
using MathNet.Numerics.Distributions;
using UnitsNet;

namespace FlowCalc.Tests.Calibration;

/// <summary>Tests of a system that was built in a known way: readings are the steady flow of the changed layout, as another part of the library solves it, with errors of a known size.</summary>
static class Planted
{
    /// <summary>Standard uncertainty of a flow, as a part.</summary>
    public const double Part = 0.02;

    /// <summary>The demo without its own readings.</summary>
    public static Layout Demo { get; } = Flows.Documents.Read(Encoding.UTF8.GetString(ExampleCatalogue.Find("raid-pickup")!.Value.Span)) with { Measured = null };

    /// <summary>The layout with a test in which it was built otherwise.</summary>
    /// <param name="layout">The layout as drawn.</param>
    /// <param name="build">What was built of it.</param>
    /// <param name="seed">Seed of the errors; null for none.</param>
    /// <param name="pressureFactor">Gauge pressure of the test over that which was read.</param>
    /// <param name="points">Points whose static pressure is read too.</param>
    public static Layout Tested(Layout layout, Func<Layout, Layout> build, ulong? seed = null, double pressureFactor = 1, params string[] points)
    {
        var water = AgentCatalogue.Find("water")!;
        var (held, warm) = (Pressure.FromPascals(layout.AmbientPressure.Pascals + 8e5), Temperature.FromDegreesCelsius(15));
        var test = build(layout) with { Agent = water, Temperature = warm, Supply = new HeldSupply(Pressure.FromPascals(layout.AmbientPressure.Pascals + pressureFactor * 8e5)) };
        var flow = SteadyFlow.Solve(test, TestContext.Current.CancellationToken);
        Assert.True(flow.Report.Converged, flow.Report.Failure);
        var readings = ImmutableArray.CreateBuilder<MeasuredReading>();
        var mean = flow.Nozzles.Average(nozzle => nozzle.MassFlow.KilogramsPerSecond);
        foreach (var nozzle in flow.Nozzles)
        {
            var sigma = Math.Max(Part * nozzle.MassFlow.KilogramsPerSecond, 0.005 * mean);
            readings.Add(new(MeasuredKind.Flow, nozzle.Point, Math.Max(0, nozzle.MassFlow.KilogramsPerSecond + Error(seed, readings.Count) * sigma), 2 * sigma));
        }
        foreach (var id in points)
        {
            var point = test.Points.IndexOf(test.Points.Single(one => one.Id == id));
            var run = test.Runs.Single(one => one.To == point);
            var velocity = flow.Runs[test.Runs.IndexOf(run)].Velocity.MetersPerSecond;
            var pressure = flow.PointPressures[point].Pascals - water.Density(warm.Kelvins) * velocity * velocity / 2;
            readings.Add(new(MeasuredKind.Pressure, point, pressure + Error(seed, readings.Count) * 5e3, 1e4));
        }
        return layout with { Measured = new Measured { Agent = water, Temperature = warm, SupplyPressure = held, Readings = readings.ToImmutable() } };
    }

    /// <summary>A loss in a run, by its id.</summary>
    public static Func<Layout, Layout> Kink(string run, double coefficient) => layout => BuiltLayout.WithLoss(layout, RunOf(layout, run), coefficient);

    public static int RunOf(Layout layout, string id) => layout.Runs.IndexOf(layout.Runs.Single(run => run.Id == id));

    public static CalibrationResult Solve(Layout layout)
    {
        var result = LayoutCalibration.Of(layout, TestContext.Current.CancellationToken);
        Assert.Null(result.Failure);
        return result;
    }

    public static CauseFit Of(CalibrationResult result, CauseKind kind, int run = -1) => result.Causes.Single(cause => cause.Kind == kind && cause.Run == run);

    // A normal number of a seed and a place.
    static double Error(ulong? seed, int place)
    {
        if (seed is not { } key) return 0;
        var bits = Philox.Block(Vector128.Create((uint)place, 0, 0, 0), key)[0];
        return Normal.InvCDF(0, 1, (bits + 0.5) / 4294967296.0);
    }
}
