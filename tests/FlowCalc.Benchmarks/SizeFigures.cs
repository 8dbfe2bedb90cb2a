using System.Collections.Immutable;
using System.Diagnostics;
using FlowCalc.Layouts;
using FlowCalc.Studies.Sizing;
using UnitsNet;

namespace FlowCalc.Benchmarks;

/// <summary>Times of searches for sizes: five bores for every run and five orifices for every nozzle of a tree of tees with equal wanted shares.</summary>
internal static class SizeFigures
{
    static readonly double[] Bores = [3, 4, 5, 6, 8], Holes = [1.0, 1.2, 1.4, 1.6, 1.8];

    public static void Print()
    {
        // What is small enough has to come with its proof.
        foreach (var objective in (SizingObjective[])[SizingObjective.FewestChanges, SizingObjective.LeastCost, SizingObjective.BestBalance])
            Print(10, objective, Problem(11, objective), isProof: true);
        Print(40, SizingObjective.LeastCost, Problem(41, SizingObjective.LeastCost), isProof: false);
    }

    static void Print(int runs, SizingObjective objective, SizingProblem problem, bool isProof)
    {
        var times = new double[isProof ? 5 : 1];
        for (var at = 0; at < times.Length; at++)
        {
            var watch = Stopwatch.StartNew();
            var result = LayoutSizing.Solve(problem);
            times[at] = watch.Elapsed.TotalMicroseconds;
            if (!result.IsPossible || (isProof && !result.IsProven)) throw new InvalidOperationException($"{runs} runs, {objective}: possible {result.IsPossible}, proven {result.IsProven}.");
        }
        Array.Sort(times);
        QuickFigures.Line($"size-{runs}-{objective.ToString().ToLowerInvariant()}", times[times.Length / 2]);
    }

    static SizingProblem Problem(int points, SizingObjective objective)
    {
        var tree = RandomTree.Tees(points, seed: points);
        var shares = new double[points];
        var leaves = Enumerable.Range(1, points - 1).Count(point => tree.Children[point] == 0);
        for (var point = 1; point < points; point++)
            if (tree.Children[point] == 0) shares[point] = 1.0 / leaves;
        var layout = LayoutReader.Read(TreeDocument.Of(tree, shares)).Layout!;
        return new()
        {
            Layout = layout,
            Tubes = [.. Bores.Select((bore, at) => new TubeOption(new Tube { Name = $"{bore}", Bore = Length.FromMillimeters(bore), Roughness = Length.FromMicrometers(1.5) }, 1 + 0.5 * at, null))],
            Nozzles = [.. Holes.Select(hole => new NozzleOption { Diameter = Length.FromMillimeters(hole) })],
            Groups = Free(layout),
            Objective = objective,
            Wish = new() { Deviation = 0.1, LeastPressure = layout.AmbientPressure + Pressure.FromBars(3) },
        };
    }

    static ImmutableArray<SizingGroup> Free(Layout layout) =>
    [
        .. Enumerable.Range(0, layout.Runs.Length).Select(run => new SizingGroup([run], [])),
        .. Enumerable.Range(0, layout.Points.Length).Where(point => layout.Points[point] is Nozzle).Select(point => new SizingGroup([], [point])),
    ];
}
