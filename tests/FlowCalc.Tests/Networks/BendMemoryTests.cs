using System.Numerics;
using FlowCalc.Losses;
using FlowCalc.Networks;

namespace FlowCalc.Tests.Networks;

/// <summary>What is recalled of a bend stays near the law of bends, and is refused where it would not.</summary>
public sealed class BendMemoryTests
{
    const double Roughness = 0.005;

    static readonly BendShape Shape = SmoothBend.Shape(1.5, 3);

    [Theory]
    [InlineData(20_000)]
    [InlineData(400_000)]
    public void A_turbulent_flow_within_half_a_percent_is_recalled_to_a_millionth(double reynolds) => AssertRecalled(Shape, reynolds, 1e-6, 2e-4);

    [Theory]
    [InlineData(0.3, 50)]
    [InlineData(1.0, 0.6)]
    [InlineData(1.5, 3)]
    [InlineData(3.1, 1.5)]
    public void No_flow_within_half_a_percent_is_recalled_worse_than_to_three_hundred_thousandths(double angle, double radiusOverBore)
    {
        // Worst where secondary flow sets in: there the slope of the laminar law turns within a few percent of the flow.
        for (var decade = 0.0; decade < 7; decade += 0.01)
            AssertRecalled(SmoothBend.Shape(angle, radiusOverBore), Math.Pow(10, decade), 3e-5, 1e-2);
    }

    [Theory]
    [InlineData(1.006)]
    [InlineData(0.994)]
    public void A_flow_farther_off_is_not_recalled(double factor) => Assert.False(Kept(900).TryRecall(0, new(900 * factor), out _, out _));

    [Fact]
    public void One_bend_of_a_vector_that_is_farther_off_lets_none_be_recalled()
    {
        var now = new double[Vector<double>.Count];
        Array.Fill(now, 900.0);
        now[^1] = 950;

        Assert.False(Kept(900).TryRecall(0, new(now), out _, out _));
    }

    [Fact]
    public void Nothing_is_recalled_where_it_is_not_allowed()
    {
        var memory = Kept(900);
        memory.IsAllowed = false;

        Assert.False(memory.TryRecall(0, new(900.0), out _, out _));
    }

    [Theory]
    [InlineData(2, false)]
    [InlineData(3, true)]
    public void Nothing_is_recalled_before_the_friction_has_settled(int steps, bool isRecalled)
    {
        var memory = Kept(900);
        memory.Steps = steps;

        Assert.Equal(isRecalled, memory.TryRecall(0, new(900.0), out _, out _));
    }

    [Fact]
    public void A_bend_at_rest_is_recalled_as_it_was()
    {
        var memory = new BendMemory(Vector<double>.Count) { IsAllowed = true, Steps = 3 };
        memory.Keep(0, Vector<double>.Zero, Vector<double>.Zero, new(64.0));

        Assert.True(memory.TryRecall(0, Vector<double>.Zero, out var value, out var rate));

        Assert.Equal(0, value[0]);
        Assert.Equal(64, rate[0]);
    }

    static void AssertRecalled(BendShape shape, double reynolds, double ofValue, double ofRate)
    {
        var memory = Kept(reynolds, shape);
        foreach (var change in new[] { -4.9e-3, -1e-3, 0, 2e-3, 4.9e-3 })
        {
            var now = reynolds * (1 + change);

            Assert.True(memory.TryRecall(0, new(now), out var value, out var rate));

            var (group, slope) = SmoothBend.LossGroup(now, Roughness, shape);
            Assert.Equal(group, value[0], ofValue * group);
            Assert.Equal(slope, rate[0], ofRate * slope);
        }
    }

    static BendMemory Kept(double reynolds, BendShape? shape = null)
    {
        var (group, slope) = SmoothBend.LossGroup(reynolds, Roughness, shape ?? Shape);
        var memory = new BendMemory(Vector<double>.Count) { IsAllowed = true, Steps = 3 };
        memory.Keep(0, new(reynolds), new(group), new(slope));
        return memory;
    }
}
