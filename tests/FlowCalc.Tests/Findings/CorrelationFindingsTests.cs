using FlowCalc.Findings;

namespace FlowCalc.Tests.Findings;

public class CorrelationFindingsTests
{
    [Theory]
    [InlineData("run", "6 mm", false)]
    [InlineData("run", "2.4 mm", false)]     // exactly 0.4
    [InlineData("run", "2.3 mm", true)]
    [InlineData("run", "6.5 mm", true)]
    [InlineData("branch", "2.3 mm", false)]
    [InlineData("branch", "6.5 mm", true)]
    public void A_tee_whose_bores_its_data_do_not_reach_is_noted(string fedThrough, string bore, bool isOutside)
    {
        var runFed = fedThrough == "run";
        var json = Document(fedThrough, bore, runFed ? ", \"leaves\": \"run\"" : "", runFed ? ", \"leaves\": \"branch\"" : "", "", "1 mm");

        var judged = Judged.Of(json);

        var finding = judged.All(FindingCodes.OutsideCorrelation).SingleOrDefault();
        Assert.Equal(isOutside, finding is not null);
        if (finding is null) return;
        Assert.Equal(Severity.Note, finding.Severity);
        Assert.Equal(["R"], finding.Where);
    }

    [Theory]
    [InlineData("1 mm", true)]
    [InlineData("2 mm", false)]
    public void A_flow_coefficient_in_slow_flow_is_noted(string orifice, bool isOutside)
    {
        var judged = Judged.Of(Document("branch", "6 mm", "", "", ", \"fittings\": [{ \"fitting\": { \"kind\": \"valve\", \"kv\": \"1 m3/h\" } }]", orifice));

        Assert.Equal(isOutside, judged.Run("R").Reynolds < 1e4);
        Assert.Equal(isOutside, judged.Has(FindingCodes.OutsideCorrelation));
    }

    [Fact]
    public void Reasons_are_told_apart_and_places_of_one_reason_together()
    {
        const string bends = ", \"bends\": [{ \"angle\": \"180°\", \"radius\": \"6 mm\" }]";
        var json = Document("branch", "6.5 mm", bends, bends, "", "1 mm");

        var findings = Judged.Of(json).All(FindingCodes.OutsideCorrelation).ToArray();

        Assert.Equal(2, findings.Length);
        Assert.Contains(findings, finding => finding.Where.SequenceEqual(["L", "R"]) && finding.Message.StartsWith("In L and R a bend is tighter", StringComparison.Ordinal));
        Assert.Contains(findings, finding => finding.Where.SequenceEqual(["R"]) && finding.Message.StartsWith("In R an outlet is wider", StringComparison.Ordinal));
    }

    static string Document(string fedThrough, string bore, string left, string right, string fittings, string orifice) => $$"""
        {
          "format": 1, "agent": "water", "ambientPressure": "1 bara", "temperature": "20 °C", "supply": { "pressure": "8 bar" },
          "points": [
            { "id": "source", "kind": "supply" },
            { "id": "T", "kind": "tee", "fedThrough": "{{fedThrough}}", "body": "smooth" },
            { "id": "left", "kind": "nozzle", "orifice": { "diameter": "{{orifice}}", "dischargeCoefficient": 0.82 } },
            { "id": "right", "kind": "nozzle", "orifice": { "diameter": "{{orifice}}", "dischargeCoefficient": 0.82 } }
          ],
          "runs": [
            { "id": "A", "from": "source", "to": "T", "bore": "6 mm", "roughness": "1.5 µm", "length": "0.1 m" },
            { "id": "L", "from": "T", "to": "left", "bore": "6 mm", "roughness": "1.5 µm", "length": "0.1 m"{{left}} },
            { "id": "R", "from": "T", "to": "right", "bore": "{{bore}}", "roughness": "1.5 µm", "length": "0.1 m"{{right}}{{fittings}} }
          ]
        }
        """;
}
