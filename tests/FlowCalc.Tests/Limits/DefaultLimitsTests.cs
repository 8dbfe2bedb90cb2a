using FlowCalc.Limits;
using FlowCalc.Quantities;

namespace FlowCalc.Tests.Limits;

public class DefaultLimitsTests
{
    static readonly Limit NothingStated = new("starved-nozzle", null, null, null, null, "");

    [Fact]
    public void Codes_are_unique_and_can_be_found()
    {
        var codes = DefaultLimits.All.Select(definition => definition.Code).ToArray();

        Assert.Equal(codes.Length, codes.Distinct().Count());
        Assert.All(DefaultLimits.All, definition => Assert.Same(definition, DefaultLimits.Find(definition.Code)));
        Assert.Null(DefaultLimits.Find("Starved-Nozzle"));
    }

    [Fact]
    public void Every_default_has_a_step_a_source_a_description_and_one_kind()
    {
        Assert.All(DefaultLimits.All, definition =>
        {
            Measure?[] steps = [definition.Note, definition.Warn, definition.Fail, definition.Refuse];
            Assert.Contains(steps, step => step is not null);
            Assert.All(steps, step => Assert.True(step is null || step.Value.Kind == definition.Kind));
            Assert.True(definition.IsInOrder(definition.Limit));
            Assert.NotEmpty(definition.Source);
            Assert.NotEmpty(definition.Description);
        });
    }

    [Theory]
    [InlineData(LimitUse.Flow)]
    [InlineData(LimitUse.Discharge)]
    [InlineData(LimitUse.CutList)]
    [InlineData(LimitUse.Mount)]
    [InlineData(LimitUse.Circuit)]
    [InlineData(LimitUse.Upkeep)]
    [InlineData(LimitUse.Coverage)]
    [InlineData(LimitUse.Calibration)]
    public void Without_a_stated_limit_the_defaults_of_the_answer_hold_and_no_list_is_made(LimitUse use)
    {
        var limits = DefaultLimits.For([], use);

        Assert.Equal(DefaultLimits.All.Where(definition => definition.Use.HasFlag(use)).Select(definition => definition.Limit), limits);
        Assert.True(limits == DefaultLimits.For(default, use));
    }

    [Fact]
    public void A_limit_of_a_discharge_is_none_of_a_flow_and_the_other_way_round()
    {
        string[] Codes(LimitUse use) => [.. DefaultLimits.For([], use).Select(limit => limit.Code)];

        Assert.All(DefaultLimits.All, definition => Assert.NotEqual(LimitUse.None, definition.Use));
        Assert.Contains("late-arrival", Codes(LimitUse.Discharge));
        Assert.DoesNotContain("late-arrival", Codes(LimitUse.Flow));
        Assert.DoesNotContain("velocity-high", Codes(LimitUse.Discharge));
        Assert.Contains("starved-nozzle", Codes(LimitUse.Flow).Intersect(Codes(LimitUse.Discharge)));
    }

    [Fact]
    public void A_stated_limit_of_another_answer_is_checked_and_not_listed()
    {
        var late = new Limit("late-arrival", null, new Measure(3, QuantityKind.Time), null, null, "");

        Assert.Equal(DefaultLimits.For([], LimitUse.Flow), DefaultLimits.For([late], LimitUse.Flow));
        Assert.Equal(3, Assert.Single(DefaultLimits.For([late], LimitUse.Discharge), limit => limit.Code == "late-arrival").Warn!.Value.Si);
        Assert.Throws<ArgumentException>(() => DefaultLimits.For([late, late], LimitUse.Flow));
    }

    [Theory]
    [InlineData(LimitUse.None)]
    [InlineData(LimitUse.Both)]
    public void Limits_are_of_one_answer(LimitUse use) => Assert.Throws<ArgumentException>(() => DefaultLimits.For([], use));

    [Fact]
    public void A_stated_step_replaces_the_default_and_the_others_stay()
    {
        var limits = DefaultLimits.For([NothingStated with { Warn = new Measure(0.05, null) }], LimitUse.Flow);

        var limit = Assert.Single(limits, limit => limit.Code == "starved-nozzle");
        Assert.Equal(0.05, limit.Warn!.Value.Si);
        Assert.Equal(0.20, limit.Fail!.Value.Si);
        Assert.Equal("stated in the document; the steps left out: common practice, no source", limit.Source);
        Assert.Equal(DefaultLimits.For([], LimitUse.Flow).Length, limits.Length);
        Assert.Equal(0.10, Assert.Single(limits, other => other.Code == "overfed-nozzle").Warn!.Value.Si);
    }

    [Fact]
    public void A_limit_stated_whole_is_the_documents_own()
    {
        var limit = DefaultLimits.Find("starved-nozzle")!.Override(NothingStated with { Warn = new Measure(0.05, null), Fail = new Measure(0.5, null) });

        Assert.Equal("stated in the document", limit.Source);
    }

    [Theory]
    [InlineData(0.3, null, 0.3, null)]    // a failure at 0.20 would leave no room for the stated warning
    [InlineData(null, 0.05, null, 0.05)]  // a warning at 0.10 would never come
    [InlineData(0.2, null, 0.2, 0.2)]     // equal steps are in order
    public void A_default_step_out_of_order_with_a_stated_one_is_off(double? warn, double? fail, double? warnThen, double? failThen)
    {
        var limit = DefaultLimits.Find("starved-nozzle")!.Override(NothingStated with { Warn = Number(warn), Fail = Number(fail) });

        Assert.Equal(warnThen, limit.Warn?.Si);
        Assert.Equal(failThen, limit.Fail?.Si);
    }

    [Fact]
    public void Where_lower_is_worse_the_order_runs_downwards()
    {
        var tight = DefaultLimits.Find("bend-too-tight")!;

        var limit = tight.Override(new Limit("bend-too-tight", null, Number(2.5), null, null, ""));

        Assert.Equal(2.5, limit.Warn?.Si);
        Assert.Null(limit.Fail);
        Assert.True(tight.IsInOrder(tight.Limit));
        Assert.False(tight.IsInOrder(tight.Limit with { Warn = Number(2) }));
    }

    [Fact]
    public void Steps_out_of_order_are_told()
    {
        var starved = DefaultLimits.Find("starved-nozzle")!;

        Assert.True(starved.IsInOrder(NothingStated));
        Assert.True(starved.IsInOrder(NothingStated with { Warn = Number(0.1), Refuse = Number(0.1) }));
        Assert.False(starved.IsInOrder(NothingStated with { Note = Number(0.3), Refuse = Number(0.2) }));
    }

    [Fact]
    public void A_limit_that_nobody_can_state_is_refused()
    {
        Assert.Throws<ArgumentException>(() => DefaultLimits.For([NothingStated with { Code = "transition-flow" }], LimitUse.Flow));
        Assert.Throws<ArgumentException>(() => DefaultLimits.For([NothingStated, NothingStated], LimitUse.Flow));
        Assert.Throws<ArgumentException>(() => DefaultLimits.Find("overfed-nozzle")!.Override(NothingStated));
    }

    static Measure? Number(double? value) => value is { } number ? new Measure(number, null) : null;
}
