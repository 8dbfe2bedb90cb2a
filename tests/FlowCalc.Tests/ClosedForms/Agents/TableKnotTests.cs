using FlowCalc.Agents;
using FlowCalc.Discharge;

namespace FlowCalc.Tests.ClosedForms.Agents;

/// <summary>Tables kept at places, of ideal gases whose place is R·T: what lies between is known.</summary>
public sealed class TableKnotTests
{
    const double Ambient = 101_325, Everywhere = double.PositiveInfinity;

    static TableKnot Knot(double rt) =>
        new(rt, ExpansionTable.TryBuild(new IdealGasStream(296.8, 1.4, rt / 296.8, 1.8e-5), 6e6, Ambient, NozzleModel.Delayed)!, rt / 296.8, 0, false);

    static TableKnots Inserted(params double[] places)
    {
        var knots = new TableKnots { BeyondFirst = 0.1 };
        foreach (var place in places) knots.Insert(Knot(place), 8);
        return knots;
    }

    [Theory]
    [InlineData(71_000)]
    [InlineData(84_000)]
    [InlineData(99_500)]
    public void In_whatever_order_they_come_they_give_the_gas_between(double rt)
    {
        var between = Inserted(90_000, 70_000, 100_000, 80_000).Between(rt, hasLiquid: false, Everywhere)!.Value;
        Assert.Equal(1e6 / rt, between.Table.At(Math.Log(1e6)).Density, tolerance: 1e-9 * 1e6 / rt);
        Assert.Equal(rt / 296.8, between.Temperature, tolerance: 1e-9 * rt);
    }

    [Fact]
    public void They_serve_a_little_beyond_both_ends_and_no_further()
    {
        var knots = Inserted(80_000, 70_000, 90_000);
        Assert.True(knots.IsWithin(69_100));
        Assert.True(knots.IsWithin(90_900));
        Assert.False(knots.IsWithin(68_900));
        Assert.False(knots.IsWithin(91_100));
        Assert.Null(knots.Between(91_100, hasLiquid: false, Everywhere));
    }

    [Fact]
    public void Places_that_fall_serve_ahead_and_not_behind()
    {
        var knots = new TableKnots();
        foreach (var place in (double[])[90_000, 80_000, 70_000]) knots.Add(Knot(place), 8);
        Assert.Equal(-1, knots.Direction);
        Assert.True(knots.IsWithin(69_100));
        Assert.False(knots.IsWithin(90_100));
    }

    [Fact]
    public void Two_give_none_between_nor_three_too_far_apart_nor_others_beside_liquid()
    {
        Assert.Null(Inserted(70_000, 80_000).Between(75_000, hasLiquid: false, Everywhere));
        var knots = Inserted(70_000, 80_000, 90_000);
        Assert.Null(knots.Between(75_000, hasLiquid: false, farthest: 0.1));
        Assert.NotNull(knots.Between(75_000, hasLiquid: false, farthest: 0.13));
        Assert.Null(knots.Between(75_000, hasLiquid: true, Everywhere));
    }

    [Fact]
    public void A_place_is_kept_once_and_of_too_many_the_farthest_goes()
    {
        var knots = Inserted(70_000, 80_000, 80_000 * (1 + 1e-12));
        Assert.Equal(2, knots.Count);
        knots.Insert(Knot(90_000), kept: 2);
        Assert.Equal(2, knots.Count);
        Assert.False(knots.IsWithin(70_000));
        Assert.Equal(90_000, knots.Last.Place);
        knots.Insert(Knot(60_000), kept: 2);
        Assert.Equal(80_000, knots.Last.Place);
    }
}
