using FlowCalc.Discharge;
using FlowCalc.Findings;
using FlowCalc.Quantities;
using FlowCalc.Tests.Flows;

namespace FlowCalc.Tests.Findings.Discharges;

/// <summary>What is found in the discharge of a gas or a liquefied gas.</summary>
public class ExpandingDischargeFindingsTests
{
    const string At20 = """ "cases": { "temperatures": ["20 °C"] }, """;

    [Fact]
    public void Carbon_dioxide_ends_at_its_triple_point_and_the_snow_is_told()
    {
        var finding = Single(Judge(GasDocuments.Tree("carbon-dioxide", At20)), FindingCodes.TriplePoint);

        Assert.Equal(Severity.Warn, finding.Severity);
        Assert.Contains("snow", finding.Message, StringComparison.Ordinal);
        Assert.InRange(finding.Measured!.Value.Si, 0.01, 0.3);
    }

    [Fact]
    public void Tubes_that_hold_much_of_the_contents_are_noted_then_warned_of_then_refused()
    {
        Severity Of(string length) => Single(Judge(GasDocuments.Tree("HFC-227ea", At20).Replace("\"length\": \"2 m\"", $"\"length\": \"{length}\"", StringComparison.Ordinal)), FindingCodes.AgentInTube).Severity;

        Assert.Equal(Severity.Note, Of("8 m"));
        Assert.Equal(Severity.Warn, Of("25 m"));
        Assert.Equal(Severity.Fail, Of("200 m"));
    }

    [Fact]
    public void A_bottle_under_nitrogen_that_becomes_full_of_liquid_fails_at_that_temperature_alone()
    {
        var json = GasDocuments.Tree("HFC-227ea", """ "cases": { "temperatures": ["20 °C", "60 °C"] }, """).Replace("\"7 kg\"", "\"10.2 kg\"", StringComparison.Ordinal);
        var judged = Judge(json);
        var finding = Single(judged, FindingCodes.BottleLiquidFull);

        Assert.Equal((Severity.Fail, "60 °C"), (finding.Severity, finding.Case));
        Assert.Contains("may burst", finding.Message, StringComparison.Ordinal);
        Assert.Null(judged.Discharge.Cases[0].Failure);
        Assert.Equal(DischargeFailureKind.LiquidFull, judged.Discharge.Cases[1].Failure!.Kind);
    }

    // Its level says nothing above the critical temperature: the pressure decides.
    [Fact]
    public void Carbon_dioxide_is_held_by_its_pressure_and_not_by_its_level()
    {
        var judged = Judge(GasDocuments.Tree("carbon-dioxide", """ "cases": { "temperatures": ["25 °C", "60 °C"] }, """, ", \"workingPressure\": \"150 bar\"").Replace("5.4 kg", "5.9 kg", StringComparison.Ordinal));

        Assert.DoesNotContain(judged.Judgement.Findings, finding => finding.Code == FindingCodes.BottleLiquidFull);
        Assert.Equal((Severity.Fail, "60 °C"), (Single(judged, FindingCodes.HotOverpressure).Severity, Single(judged, FindingCodes.HotOverpressure).Case));
        Assert.Equal("60 °C", Single(judged, FindingCodes.AboveCriticalTemperature).Case);
    }

    // A big bottle through small nozzles is over the rule of each application; the rule warns, since it may not be the user's.
    [Theory]
    [InlineData("HFC-227ea", "marine-engine-space", 10, 0.95)]
    [InlineData("HFC-227ea", "electrical-cabinet", 10, 0.95)]
    [InlineData("IG-541", "electrical-cabinet", 60, 0.95)]
    [InlineData("nitrogen", "marine-engine-space", 120, 0.85)]
    [InlineData("carbon-dioxide", "marine-engine-space", 120, 0.85)]
    [InlineData("FK-5-1-12", "motorsport", 30, 0.95)]
    public void Each_application_has_its_time(string agent, string application, double latest, double part)
    {
        var layout = Documents.Read(GasDocuments.Tree(agent, $$""" "application": "{{application}}", """));
        var requirement = ApplicationRequirement.Of(layout.Application, layout.Agent)!;

        Assert.Equal((latest, part), (requirement.Latest!.Value.Seconds, requirement.Part));
        Assert.NotEmpty(ApplicationRequirement.SourceOf(layout.Application, layout.Agent)!);
    }

    [Fact]
    public void Too_slow_for_the_application_is_warned_of_with_its_rule()
    {
        var json = GasDocuments.Tree("HFC-227ea", """ "application": "marine-engine-space", "cases": { "temperatures": ["20 °C"] }, """).Replace("2.5 mm", "1.2 mm", StringComparison.Ordinal);
        var finding = Single(Judge(json), FindingCodes.DischargeTooSlow);

        Assert.Equal(Severity.Warn, finding.Severity);
        Assert.Contains("MSC/Circ.848", finding.Source, StringComparison.Ordinal);
        Assert.Contains("may not be yours", finding.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Gas_that_would_condense_is_noted()
    {
        var finding = Single(Judge(GasDocuments.Tree("argon", At20, ", \"cushionHeat\": \"adiabatic\"")), FindingCodes.GasWouldCondense);

        Assert.Equal(Severity.Note, finding.Severity);
        Assert.InRange(finding.Measured!.Value.Si, 30, 154);
        Assert.DoesNotContain(Judge(GasDocuments.Tree("argon", At20, ", \"cushionHeat\": \"isothermal\"")).Judgement.Findings, one => one.Code == FindingCodes.GasWouldCondense);
    }

    [Fact]
    public void Upside_down_the_vapour_that_comes_out_is_told_apart_from_nothing()
    {
        const string roof = """ "cases": { "temperatures": ["20 °C"], "attitudes": [{ "name": "roof", "gravity": [0, 0, 1] }] }, """;
        var finding = Single(Judge(GasDocuments.Tree("carbon-dioxide", roof, """, "outlet": { "dipTube": { "bore": "16 mm", "length": "445 mm" } }, "shape": { "diameter": "150 mm", "length": "453 mm" }""")), FindingCodes.BottleBlindWhenInverted);

        Assert.Equal(Severity.Fail, finding.Severity);
        Assert.Contains("vapour comes out first", finding.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_case_outside_what_is_answered_says_the_range_and_leaves_the_others_theirs()
    {
        var judged = Judge(GasDocuments.Tree("HFC-125", """ "cases": { "temperatures": ["20 °C", "60 °C"] }, """));

        Assert.Contains("52.5 °C", Single(judged, FindingCodes.OutsideAgentData).Message, StringComparison.Ordinal);
        Assert.Null(judged.Discharge.Cases[0].Failure);
    }

    static Finding Single((DischargeResult Discharge, DischargeJudgement Judgement) judged, string code) => Assert.Single(judged.Judgement.Findings, finding => finding.Code == code);

    static (DischargeResult Discharge, DischargeJudgement Judgement) Judge(string json)
    {
        var layout = Documents.Read(json);
        var discharge = LayoutDischarge.Solve(layout, TestContext.Current.CancellationToken);
        return (discharge, DischargeFindings.Judge(layout, discharge, UnitSystem.Metric, TestContext.Current.CancellationToken));
    }
}
