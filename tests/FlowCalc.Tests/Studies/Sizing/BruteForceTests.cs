using FlowCalc.Studies.Sizing;

namespace FlowCalc.Tests.Studies.Sizing;

/// <summary>The search against every choice there is, each solved by itself, on random layouts with tees, bullheads, bends, fittings and rises.</summary>
public class BruteForceTests
{
    const int Problems = 120;

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
            var problem = RandomProblem.Of(seed, objective, mostChoices: 500);
            var meeting = RandomProblem.All(problem).Where(choice =>
                !(problem.Wish.Deviation is { } deviation && choice.Worst > deviation) && !(problem.Wish.LeastPressure is { } least && choice.Least < least.Pascals)).ToArray();

            var result = LayoutSizing.Solve(problem);

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
}
