using System.Collections.Immutable;
using System.Text;
using FlowCalc.Layouts;
using FlowCalc.Studies.Sizing;
using FlowCalc.Tests.Flows;
using UnitsNet;

namespace FlowCalc.Tests.Studies.Sizing;

/// <summary>Laws of searches for sizes over random layouts.</summary>
public class SizingLawTests
{
    static readonly SizingObjective[] Objectives = [SizingObjective.FewestChanges, SizingObjective.LeastCost, SizingObjective.LeastMass, SizingObjective.BestBalance];

    [Fact]
    public void A_larger_stock_never_gives_a_worse_optimum()
    {
        foreach (var (seed, problem) in Problems(40))
        {
            var more = problem with { Tubes = problem.Tubes.Add(new(new() { Name = "more", Bore = Length.FromMillimeters(5.5), Roughness = Length.FromMicrometers(2) }, 1.2, 0.08)) };

            AssertNoWorse(seed, LayoutSizing.Solve(more, TestContext.Current.CancellationToken), LayoutSizing.Solve(problem, TestContext.Current.CancellationToken));
        }
    }

    [Fact]
    public void A_looser_wish_never_gives_a_worse_optimum()
    {
        foreach (var (seed, problem) in Problems(40))
        {
            var looser = problem with { Wish = problem.Wish with { Deviation = Math.Min(1, 1.5 * problem.Wish.Deviation ?? 1), LeastPressure = problem.Wish.LeastPressure * 0.9 } };

            AssertNoWorse(seed, LayoutSizing.Solve(looser, TestContext.Current.CancellationToken), LayoutSizing.Solve(problem, TestContext.Current.CancellationToken));
        }
    }

    [Fact]
    public void Names_and_order_of_points_and_runs_change_no_optimum()
    {
        foreach (var (seed, problem) in Problems(40))
        {
            var other = Renamed(problem, seed);

            var (one, two) = (LayoutSizing.Solve(problem, TestContext.Current.CancellationToken), LayoutSizing.Solve(other, TestContext.Current.CancellationToken));

            Assert.Equal(one.IsPossible, two.IsPossible);
            Assert.Equal(one.Bound, two.Bound, tolerance: 1e-8 * Math.Max(1, one.Bound));
            if (one.Best is { } best) Assert.Equal(best.Value!.Value, two.Best!.Value!.Value, tolerance: 1e-8 * Math.Max(1, best.Value.Value));
        }
    }

    [Fact]
    public void A_group_keeps_one_choice_for_all_of_it_and_what_is_not_free_stays()
    {
        var groups = 0;

        foreach (var (_, problem) in Problems(60))
        {
            if (LayoutSizing.Solve(problem, TestContext.Current.CancellationToken).Best is not { } best) continue;
            foreach (var group in problem.Groups.Where(group => group.Runs.Length > 1))
            {
                groups++;
                Assert.Single(group.Runs.Select(run => best.Layout.Runs[run].Tube.Bore.Meters).Distinct());
            }
            foreach (var group in problem.Groups.Where(group => group.Nozzles.Length > 1))
            {
                groups++;
                Assert.Single(group.Nozzles.Select(point => ((Nozzle)best.Layout.Points[point]).Orifice!.Diameter).Distinct());
            }
            var free = problem.Groups.SelectMany(group => group.Runs).ToHashSet();
            for (var run = 0; run < problem.Layout.Runs.Length; run++)
                if (!free.Contains(run)) Assert.Equal(problem.Layout.Runs[run], best.Layout.Runs[run]);
        }

        Assert.True(groups > 10, $"{groups} groups");
    }

    [Fact]
    public void Same_problem_has_the_same_answer_on_one_thread_and_on_many()
    {
        var problem = RandomProblem.Of(3, SizingObjective.ShortestTime, 40, Bottle);
        var one = new ConcurrentExclusiveSchedulerPair(TaskScheduler.Default, 1).ConcurrentScheduler;

        var (alone, many) = (LayoutSizing.Solve(problem, one, TestContext.Current.CancellationToken), LayoutSizing.Solve(problem, TaskScheduler.Default, TestContext.Current.CancellationToken));

        Assert.Equal(alone.Best?.Value, many.Best?.Value);
        Assert.Equal(alone.Solves, many.Solves);
        Assert.Equal(alone.Bound, many.Bound);
    }

    [Fact]
    public void Work_that_is_done_ends_a_search_with_a_bound_below_what_was_found()
    {
        var gaps = 0;

        foreach (var (seed, problem) in Problems(40))
        {
            var (brief, whole) = (LayoutSizing.Solve(problem with { Work = 12 }, TestContext.Current.CancellationToken), LayoutSizing.Solve(problem, TestContext.Current.CancellationToken));

            Assert.True(brief.Bound <= whole.Bound + 1e-8, $"seed {seed}: bound {brief.Bound} over the optimum {whole.Bound}");
            if (brief.Best is { } found) Assert.True(found.Value >= whole.Best!.Value - 1e-8, $"seed {seed}");
            if (brief.IsProven) Assert.Equal(whole.IsPossible, brief.IsPossible);
            else gaps++;
        }

        Assert.True(gaps > 5, $"{gaps} searches ended early");
    }

    [Fact]
    public void A_cancelled_search_ends()
    {
        var problem = RandomProblem.Of(5, SizingObjective.BestBalance, 100_000);
        using var soon = new CancellationTokenSource(TimeSpan.FromMilliseconds(20));

        void Search()
        {
            while (true) LayoutSizing.Solve(problem, soon.Token);
        }

        Assert.ThrowsAny<OperationCanceledException>(Search);
    }

    internal const string Bottle = """{ "volume": "2 L", "fill": "1.2 kg", "chargePressure": "12 bar" }""";

    static IEnumerable<(int Seed, SizingProblem Problem)> Problems(int count) =>
        Enumerable.Range(1, count).Select(seed => (seed, RandomProblem.Of(seed, Objectives[seed % Objectives.Length], 200)));

    static void AssertNoWorse(int seed, SizingResult result, SizingResult than)
    {
        if (than.Best is not { } best) return;
        Assert.True(result.Best is { } found && found.Value <= best.Value + 1e-8, $"seed {seed}: {result.Best?.Value} after {best.Value}");
    }

    static SizingProblem Renamed(SizingProblem problem, int seed)
    {
        var text = new RandomLayout(seed).Document(id => $"x{id}", shuffle: seed);
        var layout = LayoutReader.Read(Encoding.UTF8.GetBytes(text)).Layout!;
        ImmutableArray<SizingGroup> groups = [.. problem.Groups.Select(group => new SizingGroup([.. group.Runs.Select(Run)], [.. group.Nozzles.Select(Point)]))];
        return problem with { Layout = layout, Groups = [.. groups.Reverse()] };

        int Run(int run)
        {
            var (from, to) = (problem.Layout.Points[problem.Layout.Runs[run].From].Id, problem.Layout.Points[problem.Layout.Runs[run].To].Id);
            return layout.Runs.Index().Single(other => other.Item.Id == $"x{from}-x{to}").Index;
        }

        int Point(int point) => layout.Points.Index().Single(other => other.Item.Id == "x" + problem.Layout.Points[point].Id).Index;
    }
}
