using System.Globalization;
using System.Text.RegularExpressions;
using CsCheck;
using FlowCalc.Discharge;
using FlowCalc.Findings;
using FlowCalc.Layouts;
using FlowCalc.Tests.Flows;
using UnitSystem = FlowCalc.Quantities.UnitSystem;

namespace FlowCalc.Tests.Properties.Findings;

/// <summary>Laws of judgements over discharges of random layouts, solved.</summary>
public partial class DischargeFindingsLawTests
{
    static readonly Gen<(int Seed, double Fill, double Charge, int Temperatures, bool IsStated, UnitSystem Units)> Cases = Gen.Select(
        Gen.Int[0, int.MaxValue - 1], Gen.Double[0.5, 4.1], Gen.Double[0.5, 30], Gen.Int[1, 3], Gen.Bool, Gen.Enum<UnitSystem>());

    [Fact]
    public void Any_discharge_is_judged_with_whole_findings_once_a_place()
    {
        Cases.Sample(drawn =>
        {
            var layout = Read(drawn.Seed, drawn.Fill, drawn.Charge, drawn.Temperatures, drawn.IsStated);
            var discharge = LayoutDischarge.Solve(layout, TestContext.Current.CancellationToken);

            var judgement = DischargeFindings.Judge(layout, discharge, drawn.Units, TestContext.Current.CancellationToken);

            var ids = layout.Points.Select(point => point.Id).Concat(layout.Runs.Select(run => run.Id)).ToHashSet();
            Assert.All(judgement.Findings, finding => AssertWhole(finding, ids));
            Assert.Equal(judgement.Findings.Select(finding => finding.Severity).DefaultIfEmpty(Severity.Pass).Max(), judgement.Verdict);
            var places = judgement.Findings.Where(finding => finding.Severity > Severity.Note).Select(finding => (finding.Code, finding.Where[0], finding.Limit?.Kind)).ToArray();
            Assert.Equal(places.Distinct(), places);
        }, iter: 100);
    }

    [Fact]
    public void The_same_discharge_gives_the_same_judgement()
    {
        Cases.Sample(drawn =>
        {
            var layout = Read(drawn.Seed, drawn.Fill, drawn.Charge, drawn.Temperatures, drawn.IsStated);
            var discharge = LayoutDischarge.Solve(layout, TestContext.Current.CancellationToken);

            string Told() => string.Join('\n', DischargeFindings.Judge(layout, discharge, drawn.Units, TestContext.Current.CancellationToken).Findings.Select(finding => $"{finding.Code} {finding.Case} {finding.Message}"));

            Assert.Equal(Told(), Told());
        }, iter: 20);
    }

    [Fact]
    public void A_verdict_is_no_milder_for_a_case_more()
    {
        Cases.Sample(drawn =>
        {
            var layout = Read(drawn.Seed, drawn.Fill, drawn.Charge, 3, drawn.IsStated);
            var whole = LayoutDischarge.Solve(layout, TestContext.Current.CancellationToken);

            Severity Verdict(DischargeResult result) => DischargeFindings.Judge(layout, result, drawn.Units, TestContext.Current.CancellationToken).Verdict;

            for (var cases = 1; cases < whole.Cases.Length; cases++)
                Assert.True(Verdict(whole with { Cases = whole.Cases[..cases] }) <= Verdict(whole with { Cases = whole.Cases[..(cases + 1)] }));
        }, iter: 20);
    }

    static void AssertWhole(Finding finding, HashSet<string> ids)
    {
        Assert.Contains(finding.Code, FindingCodes.All.Select(definition => definition.Code));
        Assert.NotEmpty(finding.Source);
        Assert.EndsWith(".", finding.Message, StringComparison.Ordinal);
        Assert.DoesNotMatch(Nonsense(), finding.Message);
        Assert.True(finding.Measured is not { Si: var measured } || double.IsFinite(measured), finding.Message);
        Assert.True(finding.Limit is not { Si: var limit } || double.IsFinite(limit), finding.Message);
        if (finding.Code == FindingCodes.AssumptionMade) return;
        Assert.NotNull(finding.Case);
        Assert.NotEmpty(finding.Where);
        Assert.All(finding.Where, id => Assert.Contains(id, ids));
        Assert.Contains(finding.Case!.Split(',')[0], finding.Message, StringComparison.Ordinal);
    }

    static Layout Read(int seed, double fill, double charge, int temperatures, bool isStated)
    {
        string[] asked = ["20 °C", "60 °C", "-10 °C"];
        var bottle = string.Create(CultureInfo.InvariantCulture, $$"""
            { "bottle": { "volume": "4.2 L", "fill": "{{fill}} kg", "chargePressure": "{{charge}} bar", "workingPressure": "20 bar",
              "outlet": { "dipTube": { "bore": "10 mm", "length": "200 mm" } } } }
            """);
        var stated = isStated ? """ "requirement": { "part": 0.9, "of": "contents", "within": ["2 s", "15 s"] }, """ : """ "application": "motorsport", """;
        var json = new RandomLayout(seed).Document()
            .Replace("""{ "pressure": "10 bar" }""", bottle, StringComparison.Ordinal)
            .Replace("\"format\": 1,", $$""" "format": 1, {{stated}} "cases": { "temperatures": ["{{string.Join("\", \"", asked.Take(temperatures))}}"] }, """, StringComparison.Ordinal)
            .Replace("\"temperature\": \"20 °C\",", "", StringComparison.Ordinal);
        return Documents.Read(json);
    }

    [GeneratedRegex("NaN|∞|Infinity|  |,,|\\.\\.|;;")]
    private static partial Regex Nonsense();
}
