using FlowCalc.Discharge;
using FlowCalc.Findings;
using FlowCalc.Limits;
using UnitsNet;

namespace FlowCalc.Tests.Findings.Discharges;

public class RequiredTimeFindingsTests
{
    static readonly string[] Codes = [FindingCodes.DischargeTooSlow, FindingCodes.DischargeTooFast, FindingCodes.ColdUnderpowered];

    static DischargeCase After(double? seconds, double celsius = 20) =>
        Discharged.At(celsius) with { RequiredTime = seconds is { } time ? Discharged.Seconds(time) : null };

    static DischargeCase Banded(double seconds, double? low, double? high) => After(seconds) with
    {
        Band = new(default, new TimeBand(low is { } quick ? Discharged.Seconds(quick) : null, high is { } slow ? Discharged.Seconds(slow) : null), [], ["heat from the wall"]),
    };

    [Theory]
    [InlineData(10)]
    [InlineData(20)]
    [InlineData(30)]
    public void A_time_within_the_rule_or_on_its_ends_is_no_finding(double seconds) =>
        Assert.DoesNotContain(Discharged.Judge(isStated: true, After(seconds)).Findings, finding => Codes.Contains(finding.Code));

    [Theory]
    [InlineData(true, Severity.Fail)]
    [InlineData(false, Severity.Warn)]
    public void Too_slow_fails_by_the_documents_rule_and_is_warned_of_by_the_applications(bool isStated, Severity severity)
    {
        var finding = Discharged.Judge(isStated, After(34)).Single(FindingCodes.DischargeTooSlow);

        Assert.Equal(severity, finding.Severity);
        Assert.Equal((34.0, 30.0), (finding.Measured!.Value.Si, finding.Limit!.Value.Si));
        Assert.Equal(["source"], finding.Where);
        Assert.Equal(isStated ? DefaultLimits.StatedInTheDocument : ApplicationRequirement.MotorsportSource, finding.Source);
        Assert.StartsWith("At 20 °C, upright, 95 % of the contents are out of the nozzles only after 34 s, latest 30 s", finding.Message, StringComparison.Ordinal);
        Assert.Equal(!isStated, finding.Message.Contains("which may not be yours", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData(true, Severity.Fail)]
    [InlineData(false, Severity.Warn)]
    public void Too_fast_is_judged_alike(bool isStated, Severity severity)
    {
        var finding = Discharged.Judge(isStated, After(6.5)).Single(FindingCodes.DischargeTooFast);

        Assert.Equal(severity, finding.Severity);
        Assert.Equal((6.5, 10.0), (finding.Measured!.Value.Si, finding.Limit!.Value.Si));
    }

    [Fact]
    public void A_time_that_rounds_to_the_limit_is_told_with_more_digits() =>
        Assert.Contains("only after 30.004 s, latest 30 s", Discharged.Judge(isStated: true, After(30.004)).Single(FindingCodes.DischargeTooSlow).Message, StringComparison.Ordinal);

    [Fact]
    public void What_never_comes_out_is_too_slow_and_tells_how_much_does()
    {
        var finding = Discharged.Judge(isStated: true, After(null).With(Discharged.Left, nozzle => nozzle with { Mass = Mass.FromKilograms(0.32) })).Single(FindingCodes.DischargeTooSlow);

        Assert.Equal(Severity.Fail, finding.Severity);
        Assert.Equal(0.6, finding.Measured!.Value.Si, tolerance: 1e-12);
        Assert.Equal(0.95, finding.Limit!.Value.Si);
        Assert.Contains("asked for within 30 s, never come out of the nozzles: only 1.8 kg do, 60 %", finding.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_part_of_a_quantity_is_told_as_one()
    {
        var rule = Discharged.Rule with { Part = 1, OfContents = false, Quantity = Mass.FromKilograms(2) };

        var judgement = Discharged.Judge(Discharged.Layout(), Discharged.Result(After(40)) with { Requirement = rule, IsRequirementStated = true });

        Assert.Contains("100 % of the 2 kg asked for are out", judgement.Single(FindingCodes.DischargeTooSlow).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Without_a_requirement_no_time_is_wrong() => Assert.Empty(Discharged.Judge(After(300)).Findings);

    [Fact]
    public void A_rule_with_one_end_has_no_other()
    {
        DischargeJudgement Judge(double seconds) => Discharged.Judge(
            Discharged.Layout(), Discharged.Result(After(seconds)) with { Requirement = Discharged.Rule with { Earliest = null }, IsRequirementStated = true });

        Assert.Empty(Judge(1).Findings);
        Assert.Equal(Severity.Fail, Judge(31).Verdict);
    }

    [Fact]
    public void Only_the_coldest_too_slow_is_underpowered_in_the_cold()
    {
        var judgement = Discharged.Judge(isStated: true, After(25), After(18, 60), After(36, 0));

        var finding = judgement.Single(FindingCodes.ColdUnderpowered);
        Assert.Equal("0 °C, upright", finding.Case);
        Assert.Equal(Severity.Fail, finding.Severity);
        Assert.Contains("only after 36 s, latest 30 s, while at 20 °C it takes 25 s", finding.Message, StringComparison.Ordinal);
        Assert.False(judgement.Has(FindingCodes.DischargeTooSlow));
    }

    [Fact]
    public void What_never_comes_out_in_the_cold_alone_is_underpowered() =>
        Assert.Equal(0.95, Discharged.Judge(isStated: true, After(25), After(null, 0)).Single(FindingCodes.ColdUnderpowered).Limit!.Value.Si);

    [Theory]
    [InlineData(31)]
    [InlineData(5)]
    public void Where_no_warmer_case_keeps_the_rule_the_cold_is_not_to_blame(double warm)
    {
        var judgement = Discharged.Judge(isStated: true, After(warm), After(36, 0));

        Assert.False(judgement.Has(FindingCodes.ColdUnderpowered));
        Assert.Equal("0 °C, upright", judgement.Single(FindingCodes.DischargeTooSlow).Case);
    }

    [Fact]
    public void A_warmer_case_in_another_attitude_says_nothing_of_the_cold()
    {
        var judgement = Discharged.Judge(isStated: true, After(25) with { Attitude = Discharged.OnTheRoof }, After(36, 0));

        Assert.False(judgement.Has(FindingCodes.ColdUnderpowered));
        Assert.True(judgement.Has(FindingCodes.DischargeTooSlow));
    }

    [Fact]
    public void A_case_without_an_answer_is_not_the_coldest() =>
        Assert.True(Discharged.Judge(isStated: true, After(25), After(36, 5), Discharged.At(-5).Failing(DischargeFailureKind.BelowFreezing)).Has(FindingCodes.ColdUnderpowered));

    [Theory]
    [InlineData(27.0, 25.0, 31.0, FindingCodes.DischargeTooSlow, "latest 30 s: marginal, as what the model leaves open (heat from the wall) makes it 25 s to 31 s")]
    [InlineData(27.0, 25.0, null, FindingCodes.DischargeTooSlow, "25 s to never")]
    [InlineData(11.0, 9.5, 12.0, FindingCodes.DischargeTooFast, "earliest 10 s: marginal")]
    public void A_band_that_reaches_over_an_end_is_a_note(double seconds, double? low, double? high, string code, string words)
    {
        var finding = Discharged.Judge(isStated: true, Banded(seconds, low, high)).Single(code);

        Assert.Equal(Severity.Note, finding.Severity);
        Assert.Equal(seconds, finding.Measured!.Value.Si);
        Assert.Contains(words, finding.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(FindingCodes.DischargeTooFast, 11.0, 9.5, 12.0, 11.5, 8.5, 12.0)]
    [InlineData(FindingCodes.DischargeTooSlow, 29.0, 28.0, 30.5, 28.0, 27.0, 33.0)]
    public void Of_marginal_cases_the_one_whose_band_reaches_furthest_is_told(string code, double seconds, double low, double high, double secondsToo, double lowToo, double highToo)
    {
        var finding = Discharged.Judge(isStated: true, Banded(seconds, low, high), Banded(secondsToo, lowToo, highToo)).Single(code);

        Assert.Equal(secondsToo, finding.Measured!.Value.Si);
    }

    [Fact]
    public void Cases_without_an_answer_keep_no_rule_and_break_none() =>
        Assert.Equal([FindingCodes.DischargeNotSolved], Discharged.Judge(isStated: true, Discharged.Sound.Failing(DischargeFailureKind.NotSolved)).Findings.Select(finding => finding.Code));

    [Fact]
    public void A_band_within_the_rule_is_no_finding() => Assert.Empty(Discharged.Judge(isStated: true, Banded(20, 10, 30)).Findings);

    [Fact]
    public void A_time_outside_is_not_marginal_as_well()
    {
        var findings = Discharged.Judge(isStated: true, Banded(31, 29, 33)).Findings;

        Assert.Equal(Severity.Fail, Assert.Single(findings).Severity);
    }
}
