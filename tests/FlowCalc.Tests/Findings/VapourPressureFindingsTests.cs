using FlowCalc.Findings;

namespace FlowCalc.Tests.Findings;

public class VapourPressureFindingsTests
{
    const string Code = "below-vapour-pressure";

    [Fact]
    public void A_crest_where_the_liquid_would_boil_fails()
    {
        var judged = Judged.Of(Crest("25 m"));

        var finding = judged.Single(Code);

        var pressure = judged.Flow.PointPressures[1].Pascals;
        Assert.True(pressure < 0);
        Assert.Equal(["J"], finding.Where);
        Assert.Equal(Severity.Fail, finding.Severity);
        Assert.Equal(pressure - 1e5, finding.Measured!.Value.Si, tolerance: 1e-6);
        // Vapour pressure of water at 20 °C: 2.339 kPa (IAPWS-IF97, W. Wagner and A. Kruse 1998, saturation table, from memory).
        Assert.Equal(2339 - 1e5, finding.Limit!.Value.Si, tolerance: 5);
        Assert.Contains("boils", finding.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_crest_under_enough_pressure_is_no_finding() => Assert.False(Judged.Of(Crest("5 m")).Has(Code));

    [Fact]
    public void Hot_water_boils_as_it_leaves_into_thin_air()
    {
        var json = Pair.Edit(Pair.With("\"1 bara\"", "\"0.5 bara\""), "\"20 °C\"", "\"98 °C\"");

        var finding = Judged.Of(json).Single(Code);

        Assert.Equal(["left", "right"], finding.Where);
        Assert.Equal(0, finding.Measured!.Value.Si);
        Assert.Contains("1 other point", finding.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_liquid_whose_vapour_pressure_is_unknown_fails_only_below_zero_absolute()
    {
        const string liquid = "{ \"density\": \"1000 kg/m3\", \"viscosity\": \"1 mPa·s\" }";
        var torn = Judged.Of(Pair.Edit(Crest("25 m"), "\"water\"", liquid));
        var whole = Judged.Of(Pair.Edit(Crest("12 m"), "\"water\"", liquid));

        Assert.Equal(["J"], torn.Single(Code).Where);
        Assert.DoesNotContain("boils", torn.Single(Code).Message, StringComparison.Ordinal);
        Assert.InRange(whole.Flow.PointPressures[1].Pascals, 0, 1e5);
        Assert.False(whole.Has(Code));
    }

    static string Crest(string rise) => $$"""
        {
          "format": 1, "agent": "water", "ambientPressure": "1 bara", "temperature": "20 °C", "supply": { "pressure": "0.5 bar" },
          "points": [ { "id": "S", "kind": "supply" }, { "id": "J", "kind": "junction" }, { "id": "N", "kind": "nozzle", "kFactor": "1 L/min/bar^0.5" } ],
          "runs": [
            { "id": "up", "from": "S", "to": "J", "bore": "8 mm", "roughness": "1.5 µm", "length": "30 m", "rise": "{{rise}}" },
            { "id": "down", "from": "J", "to": "N", "bore": "8 mm", "roughness": "1.5 µm", "length": "30 m", "rise": "-28 m" }
          ]
        }
        """;
}
