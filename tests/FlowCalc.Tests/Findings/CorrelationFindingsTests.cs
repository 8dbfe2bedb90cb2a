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

    [Theory]
    [InlineData("run", "stated", "walled")]
    [InlineData("run", "walled", "stated")]
    [InlineData("branch", "stated", "walled")]
    [InlineData("branch", "walled", "stated")]
    public void A_bore_worked_out_from_a_wall_equals_the_same_bore_stated(string fedThrough, string fed, string leaving)
    {
        var runFed = fedThrough == "run";
        var json = Document(fedThrough, "6 mm", runFed ? ", \"leaves\": \"run\"" : "", runFed ? ", \"leaves\": \"branch\"" : "", "", "1.5 mm");
        json = Pair.Edit(json, "\"points\":", """
            "tubes": {
              "stated": { "bore": "9 mm", "roughness": "1.5 µm" },
              "walled": { "outsideDiameter": "12 mm", "wall": "1.5 mm", "roughness": "1.5 µm" }
            }, "points":
            """);
        json = Pair.Edit(json, "\"to\": \"T\", \"bore\": \"6 mm\", \"roughness\": \"1.5 µm\"", $"\"to\": \"T\", \"tube\": \"{fed}\"");
        json = Pair.Edit(json, "\"to\": \"right\", \"bore\": \"6 mm\", \"roughness\": \"1.5 µm\"", $"\"to\": \"right\", \"tube\": \"{leaving}\"");

        Assert.False(Judged.Of(json).Has(FindingCodes.OutsideCorrelation));
    }

    [Theory]
    [InlineData(2, false)]
    [InlineData(0.9, true)]
    public void Roughness_over_5_per_cent_of_the_bore_of_a_tight_fitting_is_noted(double bore, bool isOutside)
    {
        var json = Document("branch", "6 mm", "", "", ", \"fittings\": [{ \"fitting\": { \"kind\": \"union\", \"bore\": \"2 mm\", \"length\": \"20 mm\" } }]", "1.5 mm");
        var layout = Judged.Read(json.Replace("1.5 µm", "50 µm", StringComparison.Ordinal));
        var run = layout.Runs[2];
        var placed = run.Fittings[0];
        var tight = placed with { Fitting = placed.Fitting with { Bore = UnitsNet.Length.FromMillimeters(bore) } };

        var judged = Judged.Of(layout with { Runs = layout.Runs.SetItem(2, run with { Fittings = [tight] }) });

        Assert.Equal(isOutside, judged.Has(FindingCodes.OutsideCorrelation));
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
