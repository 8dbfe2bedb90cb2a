using FlowCalc.Findings;
using FlowCalc.Quantities;

namespace FlowCalc.Tests.Findings;

public class NozzleShareFindingsTests
{
    [Fact]
    public void A_balanced_pair_passes_without_a_finding()
    {
        var judged = Judged.Of(Pair.Json);

        Assert.Empty(judged.Judgement.Findings);
        Assert.Equal(Severity.Pass, judged.Judgement.Verdict);
    }

    [Fact]
    public void A_nozzle_behind_a_long_thin_run_is_starved_and_the_other_overfed()
    {
        var judged = Judged.Of(Pair.With(Pair.Right, Pair.LongThinRight));

        var starved = judged.Single(FindingCodes.StarvedNozzle);
        var overfed = judged.Single(FindingCodes.OverfedNozzle);
        var (right, left) = (judged.Nozzle("right"), judged.Nozzle("left"));
        Assert.Equal(["right"], starved.Where);
        Assert.Equal(Severity.Warn, starved.Severity);
        Assert.Equal(right.Share / 0.5 - 1, starved.Measured!.Value.Si, tolerance: 1e-12);
        Assert.InRange(starved.Measured.Value.Si, -0.20, -0.10);
        Assert.Equal(-0.10, starved.Limit!.Value.Si, tolerance: 1e-12);
        Assert.Equal(["left"], overfed.Where);
        Assert.Equal(left.Share / 0.5 - 1, overfed.Measured!.Value.Si, tolerance: 1e-12);
        Assert.Equal("common practice, no source", starved.Source);
    }

    [Fact]
    public void A_message_tells_share_wanted_share_shortfall_and_limit()
    {
        var judged = Judged.Of(Pair.With(Pair.Right, Pair.LongThinRight));

        var message = judged.Single(FindingCodes.StarvedNozzle).Message;

        var share = judged.Nozzle("right").Share;
        Assert.StartsWith($"right gets {Invariant(share * 100)} % of the flow where 50 % is wanted: {Invariant((1 - share / 0.5) * 100)} % too little, limit 10 %", message, StringComparison.Ordinal);
    }

    [Fact]
    public void Beyond_the_second_step_a_starved_nozzle_fails()
    {
        var judged = Judged.Of(Pair.With(Pair.Right, """ "to": "right", "tube": "drop", "length": "6 m" """));

        var starved = judged.Single(FindingCodes.StarvedNozzle);

        Assert.Equal(Severity.Fail, starved.Severity);
        Assert.Equal(-0.20, starved.Limit!.Value.Si, tolerance: 1e-12);
        Assert.Equal(Severity.Fail, judged.Judgement.Verdict);
    }

    [Fact]
    public void A_deviation_that_stands_on_the_limit_is_within_it()
    {
        var right = Judged.Of(Pair.With(Pair.Right, Pair.LongThinRight)).Nozzle("right");
        var limit = System.FormattableString.Invariant($"{1 - right.Share / 0.5:R}");

        var judged = Judged.Of(WithLimit("starved-nozzle", $$"""{ "warn": {{limit}} }"""));

        Assert.False(judged.Has(FindingCodes.StarvedNozzle));
    }

    [Fact]
    public void A_limit_of_the_document_replaces_the_default_and_is_told_as_its_own()
    {
        var judged = Judged.Of(WithLimit("starved-nozzle", """{ "warn": 0.02, "fail": 0.05 }"""));

        var starved = judged.Single(FindingCodes.StarvedNozzle);

        Assert.Equal(Severity.Fail, starved.Severity);
        Assert.Equal(-0.05, starved.Limit!.Value.Si, tolerance: 1e-12);
        Assert.Equal("stated in the document", starved.Source);
        Assert.Equal(0.05, Assert.Single(judged.Judgement.Limits, limit => limit.Code == FindingCodes.StarvedNozzle).Fail!.Value.Si);
    }

    [Fact]
    public void A_nozzle_so_high_that_nothing_reaches_it_fails_and_says_why()
    {
        var high = Pair.Edit(Pair.With("\"8 bar\"", "\"0.5 bar\""), Pair.Right, """ "to": "right", "tube": "feed", "length": "8 m", "rise": "8 m" """);

        var judged = Judged.Of(high);

        var starved = judged.Single(FindingCodes.StarvedNozzle);
        Assert.Equal(0, judged.Nozzle("right").MassFlow.KilogramsPerSecond);
        Assert.Equal(-1, starved.Measured!.Value.Si);
        Assert.Equal(Severity.Fail, starved.Severity);
        Assert.Contains("right gets nothing", starved.Message, StringComparison.Ordinal);
        Assert.Contains("draw air", starved.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void No_stated_limit_lets_a_nozzle_get_nothing()
    {
        var high = Pair.Edit(Pair.With("\"8 bar\"", "\"0.5 bar\""), Pair.Right, """ "to": "right", "tube": "feed", "length": "8 m", "rise": "8 m" """);

        var judged = Judged.Of(Pair.Edit(high, "\"points\":", """ "limits": { "starved-nozzle": { "warn": 2, "fail": 3 } }, "points": """));

        Assert.Equal(Severity.Fail, judged.Single(FindingCodes.StarvedNozzle).Severity);
    }

    [Fact]
    public void A_zone_is_starved_from_five_per_cent_and_fails_from_ten()
    {
        const string zones = """ "zones": { "port": { "share": 0.5 }, "starboard": { "share": 0.5 } }, "points": """;
        var json = Pair.Edit(Pair.Json, "\"points\":", zones);
        json = Pair.Edit(json, "\"id\": \"left\",", "\"id\": \"left\", \"zone\": \"port\",");
        json = Pair.Edit(json, "\"id\": \"right\",", "\"id\": \"right\", \"zone\": \"starboard\",");

        var even = Judged.Of(json);
        var little = Judged.Of(Pair.Edit(json, Pair.Right, """ "to": "right", "tube": "drop", "length": "1 m" """));
        var much = Judged.Of(Pair.Edit(json, Pair.Right, Pair.LongThinRight));

        Assert.False(even.Has(FindingCodes.StarvedZone));
        Assert.Equal(Severity.Warn, little.Single(FindingCodes.StarvedZone).Severity);
        Assert.False(little.Has(FindingCodes.StarvedNozzle));
        Assert.Equal(Severity.Fail, much.Single(FindingCodes.StarvedZone).Severity);
        Assert.Equal(["starboard"], much.Single(FindingCodes.StarvedZone).Where);
    }

    [Fact]
    public void The_same_layout_gives_the_same_judgement_to_the_last_character()
    {
        var json = Pair.With(Pair.Right, Pair.LongThinRight);

        var (first, second) = (Judged.Of(json).Judgement, Judged.Of(json).Judgement);

        Assert.Equal(first.Findings.Select(Told), second.Findings.Select(Told));

        static string Told(Finding finding) => $"{finding.Severity} {finding.Code} {string.Join(',', finding.Where)} {finding.Message} {finding.Cure?.Message}";
    }

    [Fact]
    public void A_flow_that_did_not_converge_is_not_judged()
    {
        var judged = Judged.Of(Pair.Json);
        var failed = judged.Flow with { Report = judged.Flow.Report with { Converged = false } };

        Assert.Throws<ArgumentException>(() => FlowFindings.Judge(judged.Layout, failed, UnitSystem.Metric, TestContext.Current.CancellationToken));
        Assert.Throws<ArgumentException>(() => FlowFindings.Judge(judged.Layout, judged.Flow with { Runs = [] }, UnitSystem.Metric, TestContext.Current.CancellationToken));
    }

    static string WithLimit(string code, string limit) =>
        Pair.Edit(Pair.With(Pair.Right, Pair.LongThinRight), "\"points\":", $$""" "limits": { "{{code}}": {{limit}} }, "points": """);

    static string Invariant(double value) => value.ToString("0.#", System.Globalization.CultureInfo.InvariantCulture);
}
