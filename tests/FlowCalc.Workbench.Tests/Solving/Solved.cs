using System.Collections.Concurrent;
using System.Collections.Immutable;
using FlowCalc.Checks;
using FlowCalc.Discharge;
using FlowCalc.Examples;
using FlowCalc.Layouts;
using FlowCalc.Workbench.Figures;
using FlowCalc.Workbench.Solving;
using UnitsNet;

namespace FlowCalc.Workbench.Tests.Solving;

/// <summary>Layouts with their answers, worked out once for all tests.</summary>
static class Solved
{
    static readonly ConcurrentDictionary<(string, Quantities.UnitSystem), Lazy<SolvedLayout>> Known = new();

    static readonly ConcurrentDictionary<(string, DateOnly?), Lazy<LayoutCheck>> Checks = new();

    public static TheoryData<string> Examples => [.. ExampleCatalogue.All.Select(example => example.Name)];

    public static SolvedLayout Demo => Of("raid-pickup");

    public static SolvedLayout Of(string example, Quantities.UnitSystem units = Quantities.UnitSystem.Metric) =>
        Known.GetOrAdd((example, units), key => new(() => Solve(Layout(key.Item1), key.Item2))).Value;

    public static Layout Layout(string example) => LayoutReader.Read(ExampleCatalogue.Find(example)!.Value).Layout!;

    public static SolvedLayout Solve(Layout layout, Quantities.UnitSystem units = Quantities.UnitSystem.Metric) =>
        SolvedLayout.OfFlow(layout, units, CancellationToken.None).WithDischarge(TaskScheduler.Default, CancellationToken.None);

    /// <summary>An example with everything that it has data for.</summary>
    public static LayoutCheck Check(string example, DateOnly? today = null) =>
        Checks.GetOrAdd((example, today), key => new(() => LayoutCheck.Of(Layout(key.Item1), new(Quantities.UnitSystem.Metric, key.Item2), TaskScheduler.Default, CancellationToken.None))).Value;

    public static Shown Shown(this SolvedLayout solved) => new(solved.Units, solved.Layout.AmbientPressure);

    /// <summary>The demo with other names of its points.</summary>
    public static SolvedLayout Renamed(Func<int, string> name) =>
        Demo with { Layout = Demo.Layout with { Points = [.. Demo.Layout.Points.Select((point, at) => point with { Id = name(at) })] } };

    /// <summary>A discharge of many nozzles, each of which follows one of the demo's.</summary>
    public static (Layout Layout, DischargeCase Case) Many(int nozzles)
    {
        var (layout, one) = (Demo.Layout, Demo.Discharge!.Cases[1]);
        var points = ImmutableArray.CreateBuilder<LayoutPoint>();
        List<NozzleDischarge> gives = [];
        List<NozzleSeries> series = [];
        for (var at = 0; at < nozzles; at++)
        {
            var like = at % one.Nozzles.Length;
            var factor = 0.5 + 0.5 * at / nozzles;
            points.Add(layout.Points[one.Nozzles[like].Point] with { Id = $"nozzle-{at}" });
            gives.Add(one.Nozzles[like] with { Point = at, Share = one.Nozzles[like].WantedShare * (0.8 + 0.4 * at / nozzles) });
            series.Add(one.Series!.Nozzles[like] with { Point = at, MassFlow = [.. one.Series.Nozzles[like].MassFlow.Select(flow => MassFlow.FromKilogramsPerSecond(flow.KilogramsPerSecond * factor))] });
        }
        return (layout with { Points = points.ToImmutable() }, one with { Nozzles = [.. gives], Series = one.Series! with { Nozzles = [.. series] } });
    }
}
