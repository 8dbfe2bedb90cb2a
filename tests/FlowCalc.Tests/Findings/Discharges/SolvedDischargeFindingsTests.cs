using FlowCalc.Discharge;
using FlowCalc.Findings;

namespace FlowCalc.Tests.Findings.Discharges;

/// <summary>Discharges that were solved, each with one thing so far out that no detail of the model hides it.</summary>
public class SolvedDischargeFindingsTests
{
    const string Motorsport = "\"format\": 1, \"application\": \"motorsport\",";

    static (DischargeResult Discharge, DischargeJudgement Judgement) Judged(params (string From, string To)[] edits)
    {
        var layout = Discharged.Layout(edits);
        var discharge = LayoutDischarge.Solve(layout, TestContext.Current.CancellationToken);
        return (discharge, Discharged.Judge(layout, discharge));
    }

    static (string From, string To) Cases(string temperatures) => ("\"format\": 1,", $$""" "format": 1, "cases": { "temperatures": [{{temperatures}}] },""");

    [Fact]
    public void The_pair_shares_evenly_and_nothing_stops_it()
    {
        var (_, judgement) = Judged();

        Assert.True(judgement.Verdict < Severity.Fail, string.Join('\n', judgement.Findings.Select(finding => finding.Message)));
        Assert.False(judgement.Has(FindingCodes.StarvedNozzle));
        Assert.False(judgement.Has(FindingCodes.LateArrival));
    }

    [Fact]
    public void A_frozen_case_fails_and_the_others_are_judged()
    {
        var (discharge, judgement) = Judged(Cases("\"20 °C\", \"-5 °C\""), ("\"to\": \"right\", \"tube\": \"feed\", \"length\": \"1 m\"", "\"to\": \"right\", \"bore\": \"2 mm\", \"length\": \"3 m\""));

        Assert.Equal("-5 °C", judgement.Single(FindingCodes.BelowFreezing).Case);
        var starved = judgement.Single(FindingCodes.StarvedNozzle);
        Assert.Equal("20 °C, upright", starved.Case);
        Assert.Equal(discharge.Cases[0].Nozzles[1].Deviation, starved.Measured!.Value.Si);
    }

    [Fact]
    public void Small_holes_are_too_slow_and_wide_ones_too_fast_by_the_applications_rule()
    {
        var (_, slow) = Judged(("\"format\": 1,", Motorsport), ("\"diameter\": \"1.5 mm\"", "\"diameter\": \"0.6 mm\""));
        var (_, fast) = Judged(("\"format\": 1,", Motorsport), ("\"diameter\": \"1.5 mm\"", "\"diameter\": \"4 mm\""));

        Assert.Equal(Severity.Warn, slow.Single(FindingCodes.DischargeTooSlow).Severity);
        Assert.Equal(Severity.Warn, fast.Single(FindingCodes.DischargeTooFast).Severity);
        Assert.Equal(ApplicationRequirement.MotorsportSource, slow.Single(FindingCodes.DischargeTooSlow).Source);
    }

    [Fact]
    public void A_full_bottle_has_no_room_at_60_degrees_and_the_case_fails()
    {
        var (discharge, judgement) = Judged(Cases("\"20 °C\", \"60 °C\""), ("\"fill\": \"3 kg\"", "\"fill\": \"4.17 kg\""), ("\"workingPressure\": \"25 bar\"", "\"workingPressure\": \"900 bar\""));

        Assert.Equal(DischargeFailureKind.LiquidFull, discharge.Cases[1].Failure?.Kind);
        var finding = judgement.Single(FindingCodes.BottleLiquidFull);
        Assert.Equal((Severity.Fail, "60 °C"), (finding.Severity, finding.Case));
    }

    [Fact]
    public void A_bottle_charged_to_its_mark_is_over_it_when_warm()
    {
        var finding = Judged(("\"workingPressure\": \"25 bar\"", "\"workingPressure\": \"14.1 bar\"")).Judgement.Single(FindingCodes.HotOverpressure);

        Assert.Equal("60 °C", finding.Case);
        Assert.True(finding.Measured!.Value.Si > 14.1e5);
    }
}
