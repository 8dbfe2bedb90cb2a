using FlowCalc.Findings;

namespace FlowCalc.Tests.Findings;

public class BottleFindingsTests
{
    [Fact]
    public void A_bottle_within_its_marks_and_with_room_is_no_finding()
    {
        var judged = Judged.Of(Bottle("3.0 kg", "20 °C", "20 bar", ""));

        Assert.False(judged.Has(FindingCodes.OverWorkingPressure));
        Assert.False(judged.Has(FindingCodes.BottleLiquidFull));
    }

    [Fact]
    public void A_bottle_warmed_past_its_marked_pressure_fails()
    {
        var judged = Judged.Of(Bottle("3.0 kg", "60 °C", "15 bar", ""));

        var finding = judged.Single(FindingCodes.OverWorkingPressure);
        Assert.Equal(Severity.Fail, finding.Severity);
        Assert.Equal(["source"], finding.Where);
        Assert.Equal(judged.Flow.Supply!.ReservoirPressure.Pascals - 1e5, finding.Measured!.Value.Si, tolerance: 1e-3);
        Assert.Equal(15e5, finding.Limit!.Value.Si, tolerance: 1e-3);
        Assert.Contains("at 60 °C", finding.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("18 bar", null)]
    [InlineData("12 bar", Severity.Warn)]
    [InlineData("9 bar", Severity.Fail)]
    public void Behind_a_regulator_a_tube_fails_by_the_set_pressure_and_is_warned_of_by_the_bottles(string marked, Severity? severity)
    {
        var json = Bottle("3.0 kg", "20 °C", "20 bar", """, "outlet": { "regulator": { "setPressure": "10 bar" } } """);

        var judged = Judged.Of(json.Replace("\"bore\": \"6 mm\"", $"\"bore\": \"6 mm\", \"workingPressure\": \"{marked}\"", StringComparison.Ordinal));

        var finding = judged.All(FindingCodes.OverWorkingPressure).SingleOrDefault();
        Assert.Equal(severity, finding?.Severity);
        if (severity == Severity.Warn) Assert.Contains("Should the regulator fail", finding!.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("3.97 kg", "20 °C", false)]
    [InlineData("3.97 kg", "60 °C", true)]
    public void Liquid_that_fills_over_95_per_cent_of_the_bottle_when_warm_is_warned_of(string fill, string temperature, bool isFull)
    {
        var judged = Judged.Of(Bottle(fill, temperature, "500 bar", ""));

        Assert.Equal(isFull, judged.Has(FindingCodes.BottleLiquidFull));
        if (!isFull) return;
        var finding = judged.Single(FindingCodes.BottleLiquidFull);
        Assert.Equal(Severity.Warn, finding.Severity);
        Assert.Equal(3.97 / 983.2 / 4.2e-3, finding.Measured!.Value.Si, tolerance: 1e-4); // 983.2 kg/m³: water at 60 °C
    }

    [Fact]
    public void What_was_filled_in_is_told_once_with_its_pointers()
    {
        var judged = Judged.Of(Bottle("3.0 kg", "20 °C", "20 bar", ""));

        var finding = judged.Single(FindingCodes.AssumptionMade);

        Assert.Equal(Severity.Note, finding.Severity);
        Assert.Equal(judged.Flow.Assumptions.Length, finding.Measured!.Value.Si);
        Assert.Equal(judged.Flow.Assumptions.Select(made => made.Pointer).Distinct(), finding.Where);
    }

    static string Bottle(string fill, string temperature, string marked, string outlet) => $$"""
        {
          "format": 1, "agent": "water", "ambientPressure": "1 bara", "temperature": "{{temperature}}",
          "supply": { "bottle": { "volume": "4.2 L", "fill": "{{fill}}", "chargePressure": "14 bar", "chargeTemperature": "20 °C", "workingPressure": "{{marked}}"{{outlet}} } },
          "tubes": { "feed": { "bore": "6 mm", "roughness": "1.5 µm" } },
          "points": [
            { "id": "source", "kind": "supply" },
            { "id": "n", "kind": "nozzle", "orifice": { "diameter": "2 mm", "dischargeCoefficient": 0.82 } }
          ],
          "runs": [ { "id": "A", "from": "source", "to": "n", "tube": "feed", "length": "1 m" } ]
        }
        """;
}
