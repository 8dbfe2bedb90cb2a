using CsCheck;
using FlowCalc.Findings;
using FlowCalc.Studies.Comparing;
using UnitsNet;

namespace FlowCalc.Tests.Studies.Comparing;

public class StandingTests
{
    static readonly Standing Good = new(true, Severity.Note, 0, 1, -0.05, 3, Duration.FromSeconds(12), 0);

    static readonly Gen<Standing> Any = Gen.Select(Gen.Bool, Gen.Int[0, 3], Gen.Int[0, 2], Gen.Int[0, 2], Gen.Int[-12, 12], Gen.Int[0, 2], Gen.Int[0, 1])
        .Select((flow, verdict, fails, warns, deviation, time, never) =>
            new Standing(flow, (Severity)verdict, fails, warns, deviation < -10 ? null : deviation * 0.1, 1, time == 0 ? null : Duration.FromSeconds(time), never));

    public static TheoryData<Standing, StandingReason> Worse => new()
    {
        { Good with { HasFlow = false }, StandingReason.NoFlow },
        { Good with { Verdict = Severity.Warn }, StandingReason.Verdict },
        { Good with { Fails = 1 }, StandingReason.Fails },
        { Good with { Warns = 2 }, StandingReason.Warns },
        { Good with { WorstDeviation = -0.051 }, StandingReason.Deviation },
        { Good with { WorstDeviation = 0.06 }, StandingReason.Deviation },
        { Good with { SlowestTime = Duration.FromSeconds(12.1) }, StandingReason.Time },
        { Good with { NeverDone = 1, SlowestTime = Duration.FromSeconds(1) }, StandingReason.Time },
    };

    [Theory]
    [MemberData(nameof(Worse))]
    public void What_is_worse_in_one_thing_alone_stands_behind_for_it(Standing worse, StandingReason by)
    {
        Assert.Equal((-1, by), Standings.Compare(Good, worse));
        Assert.Equal((1, by), Standings.Compare(worse, Good));
    }

    // Too much by a tenth is as it is; too little by a tenth wants a ninth more.
    [Fact]
    public void Too_little_counts_more_than_as_much_too_much() =>
        Assert.Equal(-1, Standings.Compare(Good with { WorstDeviation = 0.1 }, Good with { WorstDeviation = -0.1 }).Order);

    [Fact]
    public void Differences_within_the_error_of_the_solve_decide_nothing() =>
        Assert.Equal((0, StandingReason.Order), Standings.Compare(Good, Good with { WorstDeviation = -0.050001, SlowestTime = Duration.FromSeconds(12.0001) }));

    [Fact]
    public void Ranking_goes_in_no_circle() =>
        Gen.Select(Any, Any, Any).Sample((a, b, c) =>
        {
            Assert.Equal(Standings.Compare(a, b).Order, -Standings.Compare(b, a).Order);
            if (Standings.Compare(a, b).Order <= 0 && Standings.Compare(b, c).Order <= 0) Assert.True(Standings.Compare(a, c).Order <= 0);
        }, iter: 2_000);
}
