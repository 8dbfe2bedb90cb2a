using System.Globalization;
using FlowCalc.Findings;

namespace FlowCalc.Tests.Findings;

public class FindingOrderTests
{
    [Fact]
    public void Findings_come_worst_first_then_by_code_then_in_the_documents_order()
    {
        var judged = Judged.Of(Fan(8));

        var findings = judged.Judgement.Findings;

        Assert.True(findings.Length > 4);
        Assert.Equal(findings.OrderByDescending(finding => finding.Severity).ThenBy(finding => finding.Code, StringComparer.Ordinal), findings);
        var starved = judged.All(FindingCodes.StarvedNozzle).SelectMany(finding => finding.Where).ToArray();
        Assert.Equal(["thin0", "thin1", "thin2", "thin3", "thin4", "thin5", "thin6", "thin7"], starved);
        Assert.Equal(findings[0].Severity, judged.Judgement.Verdict);
    }

    [Fact]
    public void Over_ten_of_a_kind_become_one_with_the_worst_twenty_named()
    {
        var judged = Judged.Of(Fan(30));

        var finding = judged.Single(FindingCodes.StarvedNozzle);

        Assert.Equal(20, finding.Where.Length);
        Assert.Equal("thin29", finding.Where[0]);
        Assert.Contains("; so it is, and no worse, with 29 other nozzles", finding.Message, StringComparison.Ordinal);
        Assert.Equal(judged.Nozzle("thin29").Deviation, finding.Measured!.Value.Si);
    }

    [Fact]
    public void Notes_of_one_code_are_always_one()
    {
        var judged = Judged.Of(Fan(8));

        var transition = judged.Layout.Runs.Where((_, run) => judged.Flow.Runs[run].Regime == FlowCalc.Losses.FlowRegime.Transition).Select(run => run.Id).ToArray();

        Assert.True(transition.Length > 1);
        Assert.Equal(transition, judged.Single(FindingCodes.TransitionFlow).Where);
    }

    [Fact]
    public void A_leg_holds_its_starved_nozzles_and_is_told_once()
    {
        var judged = Judged.Of(Fan(8));

        var branch = judged.Single(FindingCodes.UnevenBranch);

        Assert.Equal(["T", "thin", "thin0", "thin1", "thin2", "thin3", "thin4", "thin5", "thin6", "thin7"], branch.Where);
        Assert.Equal(judged.Flow.Nozzles.Min(nozzle => nozzle.Deviation), branch.Measured!.Value.Si);
    }

    /// <summary>Two legs of a tee, each a row of junctions with as many nozzles; the leg <c>thin</c> starts with a long thin run.</summary>
    static string Fan(int nozzles)
    {
        List<string> points = ["""{ "id": "source", "kind": "supply" }""", """{ "id": "T", "kind": "tee", "fedThrough": "branch", "body": "smooth" }"""];
        List<string> runs = [Run("A", "source", "T", "6 mm", "0.1 m")];
        foreach (var (leg, bore) in new[] { ("thin", "2 mm"), ("wide", "6 mm") })
        {
            var from = "T";
            for (var index = 0; index < nozzles; index++)
            {
                var number = index.ToString(CultureInfo.InvariantCulture);
                points.Add($$"""{ "id": "J{{leg}}{{number}}", "kind": "junction" }""");
                points.Add($$"""{ "id": "{{leg}}{{number}}", "kind": "nozzle", "orifice": { "diameter": "0.5 mm", "dischargeCoefficient": 0.82 } }""");
                runs.Add(Run(index == 0 ? leg : $"{leg}-{number}", from, $"J{leg}{number}", index == 0 ? bore : "6 mm", index == 0 ? "1 m" : "0.5 m"));
                runs.Add(Run($"to-{leg}{number}", $"J{leg}{number}", $"{leg}{number}", "6 mm", "0.1 m"));
                from = $"J{leg}{number}";
            }
        }
        return $$"""
            { "format": 1, "agent": "water", "ambientPressure": "1 bara", "temperature": "20 °C", "supply": { "pressure": "8 bar" },
              "points": [{{string.Join(',', points)}}], "runs": [{{string.Join(',', runs)}}] }
            """;
    }

    static string Run(string id, string from, string to, string bore, string length) =>
        $$"""{ "id": "{{id}}", "from": "{{from}}", "to": "{{to}}", "bore": "{{bore}}", "roughness": "1.5 µm", "length": "{{length}}" }""";
}
