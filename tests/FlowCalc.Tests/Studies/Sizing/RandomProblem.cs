using System.Collections.Immutable;
using FlowCalc.Flows;
using FlowCalc.Layouts;
using FlowCalc.Studies.Sizing;
using FlowCalc.Tests.Flows;
using UnitsNet;

namespace FlowCalc.Tests.Studies.Sizing;

/// <summary>A random layout with a small stock, of which some runs and nozzles are free, some of them in groups.</summary>
internal static class RandomProblem
{
    public static SizingProblem Of(int seed, SizingObjective objective, int mostChoices, string? bottle = null)
    {
        var random = new Random(seed);
        var reading = LayoutReader.Read(System.Text.Encoding.UTF8.GetBytes(new RandomLayout(seed).Document(bottle: bottle)));
        var layout = reading.Layout ?? throw new InvalidOperationException(reading.Faults[0].Message);
        var tubes = Enumerable.Range(0, 1 + random.Next(3)).Select(at => Tube(random, at)).ToImmutableArray();
        var nozzles = Enumerable.Range(0, 1 + random.Next(3)).Select(_ => new NozzleOption
        {
            Diameter = Length.FromMillimeters(0.8 + 1.4 * random.NextDouble()),
            DischargeCoefficient = random.Next(2) == 0 ? null : 0.7 + 0.2 * random.NextDouble(),
        }).ToImmutableArray();
        var ids = Enumerable.Range(0, layout.Runs.Length).Select(run => (Run: run, Point: -1))
            .Concat(Enumerable.Range(0, layout.Points.Length).Where(point => layout.Points[point] is Nozzle).Select(point => (Run: -1, Point: point))).ToArray();
        random.Shuffle(ids);
        var groups = ImmutableArray.CreateBuilder<SizingGroup>();
        var choices = 1.0;
        foreach (var (run, point) in ids)
        {
            var more = 1 + (run >= 0 ? tubes.Length : nozzles.Length);
            var last = groups.Count - 1;
            // Now and then one more of the same kind joins the last group.
            if (last >= 0 && random.Next(5) == 0 && run >= 0 == groups[last].Nozzles.IsEmpty)
            {
                groups[last] = run >= 0 ? groups[last] with { Runs = groups[last].Runs.Add(run) } : groups[last] with { Nozzles = groups[last].Nozzles.Add(point) };
                continue;
            }
            if (choices * more > mostChoices) continue;
            choices *= more;
            groups.Add(run >= 0 ? new([run], []) : new([], [point]));
        }
        double[] deviations = [0.03, 0.06, 0.1, 0.2, 0.4];
        return new()
        {
            Layout = layout,
            Tubes = tubes,
            Nozzles = nozzles,
            Groups = groups.ToImmutable(),
            Objective = objective,
            Wish = new()
            {
                Deviation = random.Next(5) == 0 ? null : deviations[random.Next(deviations.Length)],
                LeastPressure = random.Next(2) == 0 ? null : Pressure.FromBars(2 + 6 * random.NextDouble()),
            },
        };
    }

    static TubeOption Tube(Random random, int at) => new(
        new() { Name = $"stock-{at}", Bore = Length.FromMillimeters(2.5 + 5 * random.NextDouble()), Roughness = Length.FromMicrometers(2) },
        1 + random.NextDouble(), 0.05 + 0.1 * random.NextDouble());

    /// <summary>Every choice of every group, each solved by itself.</summary>
    public static IEnumerable<(Layout Layout, double Worst, double Least, double Sum, int Changes)> All(SizingProblem problem)
    {
        var model = ModelBuilder.Of(problem, (problem.Layout.Supply as HeldSupply)?.Pressure);
        var wanted = WantedShares.Of(problem.Layout);
        var choices = new byte[model.Count.Length];
        while (true)
        {
            var layout = model.Apply(choices);
            var flow = SteadyFlow.Solve(layout);
            if (flow.Report.Converged)
                yield return (
                    layout,
                    flow.Nozzles.Max(nozzle => wanted[nozzle.Point] > 0 ? Math.Abs(nozzle.Share / wanted[nozzle.Point] - 1) : 0),
                    flow.Nozzles.Min(nozzle => nozzle.Pressure.Pascals), model.Sum(choices), model.Changes(choices));
            var at = 0;
            while (at < choices.Length && ++choices[at] == model.Count[at]) choices[at++] = 0;
            if (at == choices.Length) yield break;
        }
    }
}
