using System.Globalization;
using FlowCalc.Flows;
using FlowCalc.Layouts;
using FlowCalc.Routes;
using FlowCalc.Workbench.Figures;
using UnitsNet;

namespace FlowCalc.Workbench.Charts;

/// <summary>A leg of the way to a nozzle: the bottle's outlet, a run, or several runs that matter little.</summary>
/// <param name="Name">What it is.</param>
/// <param name="From">Absolute pressure before it.</param>
/// <param name="Drop">What is lost in it, by kind.</param>
sealed record PathLeg(string Name, Pressure From, LossBreakdown Drop)
{
    // A way of more legs than this is told in parts: those that lose most stand alone, the others between them together.
    const int MostAlone = 16;

    /// <summary>The way from the supply to a nozzle.</summary>
    /// <param name="layout">The layout.</param>
    /// <param name="flow">Its flow, converged.</param>
    /// <param name="nozzle">Index of the nozzle in the flow's list.</param>
    /// <param name="shown">How numbers are shown.</param>
    public static List<PathLeg> Of(Layout layout, FlowResult flow, int nozzle, Shown shown)
    {
        var feeding = new int[layout.Points.Length];
        Array.Fill(feeding, -1);
        for (var at = 0; at < layout.Runs.Length; at++) feeding[layout.Runs[at].To] = at;
        List<int> runs = [];
        for (var point = flow.Nozzles[nozzle].Point; feeding[point] >= 0; point = layout.Runs[feeding[point]].From) runs.Add(feeding[point]);
        runs.Reverse();

        List<PathLeg> legs = [];
        var supply = flow.Supply!;
        var outlet = flow.Nozzles[nozzle].Losses.Outlet;
        if (outlet.Pascals != 0) legs.Add(new("bottle's outlet", supply.ReservoirPressure, default(LossBreakdown) with { Outlet = outlet }));
        var alone = runs.Count <= MostAlone ? runs.ToHashSet() : [.. runs.OrderByDescending(run => Math.Abs(flow.Runs[run].Losses.Total.Pascals)).Take(MostAlone)];
        for (int at = 0, next; at < runs.Count; at = next)
        {
            for (next = at + 1; next < runs.Count && !alone.Contains(runs[at]) && !alone.Contains(runs[next]); next++) ;
            var together = runs[at..next];
            var drop = together.Select(run => flow.Runs[run].Losses).Aggregate(Sum);
            legs.Add(new(together.Count == 1 ? Named(layout.Runs[together[0]], shown) : string.Create(CultureInfo.InvariantCulture, $"{together.Count} runs that lose less"), flow.PointPressures[layout.Runs[together[0]].From], drop));
        }
        return legs;
    }

    static string Named(Run run, Shown shown) => $"{run.Id}, {TubeLabel.Of(run.Tube)}, {shown.Of(run.Length)}";

    static LossBreakdown Sum(LossBreakdown a, LossBreakdown b) =>
        new(a.Outlet + b.Outlet, a.Tube + b.Tube, a.Bends + b.Bends, a.Tees + b.Tees, a.Fittings + b.Fittings, a.BoreChanges + b.BoreChanges, a.Rise + b.Rise);
}
