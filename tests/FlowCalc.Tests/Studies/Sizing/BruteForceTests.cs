using FlowCalc.Studies.Sizing;

namespace FlowCalc.Tests.Studies.Sizing;

/// <summary>The search against every choice there is, each solved by itself, on random layouts with tees, bullheads, bends, fittings and rises.</summary>
public class BruteForceTests
{
    const int Problems = 60;

    [Theory]
    [InlineData(SizingObjective.FewestChanges)]
    [InlineData(SizingObjective.LeastCost)]
    [InlineData(SizingObjective.LeastMass)]
    [InlineData(SizingObjective.BestBalance)]
    public void A_search_finds_the_same_optimum_as_every_choice_in_turn_and_proves_it(SizingObjective objective)
    {
        var (possible, impossible) = (0, 0);

        for (var seed = 1; seed <= Problems; seed++)
        {
            var problem = RandomProblem.Of(seed, objective, mostChoices: 400);
            var meeting = RandomProblem.All(problem).Where(choice =>
                !(problem.Wish.Deviation is { } deviation && choice.Worst > deviation) && !(problem.Wish.LeastPressure is { } least && choice.Least < least.Pascals)).ToArray();

            var result = LayoutSizing.Solve(problem, TestContext.Current.CancellationToken);

            AssertProofAlone(seed, problem, meeting.Length == 0 ? double.PositiveInfinity : meeting.Min(choice => objective == SizingObjective.BestBalance ? choice.Worst : choice.Sum));
            Assert.True(result.IsProven, $"seed {seed}: no proof");
            Assert.True(result.IsPossible == meeting.Length > 0, $"seed {seed}: {meeting.Length} choices meet the wish");
            if (result.Best is not { } best)
            {
                impossible++;
                continue;
            }
            possible++;
            var optimum = meeting.Min(choice => objective == SizingObjective.BestBalance ? choice.Worst : choice.Sum);
            Assert.True(Math.Abs(optimum - best.Value!.Value) <= 1e-8 * Math.Max(1e-3, optimum), $"seed {seed}: {optimum} by every choice, {best.Value} by the search");
            Assert.Equal(optimum, result.Bound, tolerance: 1e-8 * Math.Max(1, optimum));
        }

        Assert.True(possible > Problems / 4, $"{possible} possible problems only");
        Assert.True(impossible > Problems / 20, $"{impossible} impossible problems only");
    }

    // The part that proves has to find the optimum without what the part that is only quick has found.
    static void AssertProofAlone(int seed, SizingProblem problem, double optimum)
    {
        var search = SizingSearch.Of(problem, TaskScheduler.Default, TestContext.Current.CancellationToken);
        search.RunExact();
        var found = search.Finds.Best is { } best ? search.Finds.Value(best) : double.PositiveInfinity;
        Assert.True(search.IsProven, $"seed {seed}: no proof");
        Assert.True(found == optimum || Math.Abs(found - optimum) <= 1e-8 * Math.Max(1e-3, optimum), $"seed {seed}: {optimum} by every choice, {found} by the proof alone");
    }
}
