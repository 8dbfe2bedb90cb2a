using FlowCalc.Discharge;
using FlowCalc.Layouts;
using FlowCalc.Studies.Sizing;
using UnitsNet;

namespace FlowCalc.Tests.Studies.Sizing;

/// <summary>Times of discharges in searches for sizes, against every choice followed by itself.</summary>
public class SizingTimeTests
{
    [Fact]
    public void Shortest_time_is_that_of_every_choice_followed_in_turn()
    {
        var possible = 0;

        for (var seed = 1; seed <= 8; seed++)
        {
            var problem = RandomProblem.Of(seed, SizingObjective.ShortestTime, 16, SizingLawTests.Bottle);
            var meeting = Times(problem).ToArray();

            var result = LayoutSizing.Solve(problem, TestContext.Current.CancellationToken);

            Assert.Equal(meeting.Length > 0, result.IsPossible);
            if (result.Best is not { } best) continue;
            possible++;
            Assert.Equal(meeting.Min(), best.Times!.Value.Most, tolerance: 1e-9);
            Assert.True(result.Bound <= best.Value);
            Assert.True(result.IsProven, $"seed {seed}");
        }

        Assert.True(possible >= 3, $"{possible} possible problems only");
    }

    [Fact]
    public void A_time_that_is_wished_is_kept_in_every_case_by_the_fewest_changes()
    {
        var possible = 0;

        for (var seed = 1; seed <= 8; seed++)
        {
            var problem = RandomProblem.Of(seed, SizingObjective.FewestChanges, 16, SizingLawTests.Bottle);
            var times = Times(problem with { Wish = new() }).Where(double.IsFinite).Order().ToArray();
            if (times.Length < 2) continue;
            // A time that some choices keep and others do not.
            var latest = times[times.Length / 3] + 1e-6;
            problem = problem with { Wish = new() { Latest = Duration.FromSeconds(latest) } };

            var result = LayoutSizing.Solve(problem, TestContext.Current.CancellationToken);

            var least = Choices(problem).Where(choice => Longest(choice.Layout) <= latest).Min(choice => choice.Changes);
            possible++;
            Assert.True(result.IsProven, $"seed {seed}");
            Assert.Equal(least, result.Best!.Value);
            Assert.True(result.Best.Times!.Value.Most <= latest);
            Assert.Equal(Longest(result.Best.Layout), result.Best.Times.Value.Most, tolerance: 1e-9);
        }

        Assert.True(possible >= 3, $"{possible} possible problems only");
    }

    [Fact]
    public void An_agent_that_boils_is_sized_by_trying_every_choice_where_they_are_few()
    {
        var layout = SizingClosedFormTests.Read("""
            { "format": 1, "agent": "carbon-dioxide", "supply": { "bottle": { "volume": "8 L", "fill": "5.4 kg" } },
              "points": [ { "id": "S", "kind": "supply" }, { "id": "T", "kind": "tee", "fedThrough": "branch", "body": "smooth" },
                { "id": "a", "kind": "nozzle", "share": 0.5, "orifice": { "diameter": "2 mm", "dischargeCoefficient": 0.8 } }, { "id": "b", "kind": "nozzle", "share": 0.5, "orifice": { "diameter": "2.6 mm", "dischargeCoefficient": 0.8 } } ],
              "runs": [ { "from": "S", "to": "T", "bore": "10 mm", "length": "2 m" }, { "from": "T", "to": "a", "bore": "8 mm", "length": "1 m" }, { "from": "T", "to": "b", "bore": "8 mm", "length": "1 m" } ] }
            """);
        var problem = new SizingProblem
        {
            Layout = layout,
            Nozzles = [new() { Diameter = Length.FromMillimeters(2.3) }],
            Groups = [new([], [2]), new([], [3])],
            Wish = new() { Deviation = 0.01 },
            Objective = SizingObjective.FewestChanges,
        };

        var result = LayoutSizing.Solve(problem, TestContext.Current.CancellationToken);

        Assert.True(result.IsProven);
        Assert.Equal(4, result.Choices);
        Assert.Equal(2, result.Best!.Value);
    }

    static IEnumerable<double> Times(SizingProblem problem) =>
        from choice in Choices(problem)
        where !(choice.Worst > problem.Wish.Deviation) && !(choice.Least < problem.Wish.LeastPressure?.Pascals)
        select Longest(choice.Layout) into time
        where double.IsFinite(time)
        select time;

    static IEnumerable<(Layout Layout, double Worst, double Least, int Changes)> Choices(SizingProblem problem) =>
        RandomProblem.All(problem).Select(choice => (choice.Layout, choice.Worst, choice.Least, choice.Changes));

    static double Longest(Layout layout) => LayoutDischarge.Solve(layout).Cases.Max(one => one.Time95?.Seconds ?? double.PositiveInfinity);
}
