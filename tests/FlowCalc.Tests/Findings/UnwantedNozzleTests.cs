using FlowCalc.Findings;

namespace FlowCalc.Tests.Findings;

/// <summary>Nozzles of which nothing is wanted: the others' stated shares add up to the whole.</summary>
public class UnwantedNozzleTests
{
    [Fact]
    public void A_nozzle_that_gets_nothing_fails_even_where_no_share_of_it_is_wanted()
    {
        var judged = Judged.Of(Document(""", "rise": "250 m" """));

        var starved = judged.Single(FindingCodes.StarvedNozzle);

        Assert.Equal(0, judged.Nozzle("C").MassFlow.KilogramsPerSecond);
        Assert.Equal(["C"], starved.Where);
        Assert.Equal(Severity.Fail, starved.Severity);
        Assert.Equal(Severity.Fail, judged.Judgement.Verdict);
        Assert.Contains("C gets nothing", starved.Message, StringComparison.Ordinal);
        Assert.DoesNotContain("0 % of the flow is wanted", starved.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_nozzle_that_takes_flow_of_which_none_is_wanted_is_warned_of()
    {
        var judged = Judged.Of(Document(""));

        var overfed = judged.Single(FindingCodes.OverfedNozzle);

        Assert.Equal(["C"], overfed.Where);
        Assert.Equal(Severity.Warn, overfed.Severity);
        Assert.Equal(judged.Nozzle("C").Share, overfed.Measured!.Value.Si, tolerance: 1e-12);
        Assert.Equal(0.10, overfed.Limit!.Value.Si, tolerance: 1e-12);
        Assert.Contains("C gets 33.3 % of the flow where none is wanted", overfed.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_little_flow_of_which_none_is_wanted_is_let_pass()
    {
        var judged = Judged.Of(Pair.Edit(Document(""), """ "C", "kind": "nozzle", "kFactor": "2 """, """ "C", "kind": "nozzle", "kFactor": "0.2 """));

        Assert.InRange(judged.Nozzle("C").Share, 0.01, 0.10);
        Assert.False(judged.Has(FindingCodes.OverfedNozzle));
    }

    static string Document(string rise) => $$"""
        {
          "format": 1, "agent": "water", "ambientPressure": "1 bara", "temperature": "20 °C", "supply": { "pressure": "8 bar" },
          "points": [
            { "id": "S", "kind": "supply" }, { "id": "J", "kind": "junction" },
            { "id": "A", "kind": "nozzle", "kFactor": "2 L/min/bar^0.5", "share": 0.5 },
            { "id": "B", "kind": "nozzle", "kFactor": "2 L/min/bar^0.5", "share": 0.5 },
            { "id": "C", "kind": "nozzle", "kFactor": "2 L/min/bar^0.5" }
          ],
          "runs": [
            { "id": "RS", "from": "S", "to": "J", "bore": "10 mm", "roughness": "1.5 µm", "length": "1 m" },
            { "id": "RA", "from": "J", "to": "A", "bore": "10 mm", "roughness": "1.5 µm", "length": "300 m" },
            { "id": "RB", "from": "J", "to": "B", "bore": "10 mm", "roughness": "1.5 µm", "length": "300 m" },
            { "id": "RC", "from": "J", "to": "C", "bore": "10 mm", "roughness": "1.5 µm", "length": "300 m"{{rise}} }
          ]
        }
        """;
}
