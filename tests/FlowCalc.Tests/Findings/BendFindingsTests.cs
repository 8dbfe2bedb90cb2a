using FlowCalc.Findings;

namespace FlowCalc.Tests.Findings;

public class BendFindingsTests
{
    [Theory]
    [InlineData("28 mm", null)]
    [InlineData("27 mm", Severity.Fail)]
    public void A_bend_below_the_least_radius_of_its_tube_fails(string radius, Severity? severity)
    {
        var judged = Judged.Of(Pair.With(Pair.Right, WithBend(radius)));

        var finding = judged.All(FindingCodes.BendTooTight).SingleOrDefault();

        Assert.Equal(severity, finding?.Severity);
        if (finding is null) return;
        Assert.Equal(["R"], finding.Where);
        Assert.Equal((0.027, 0.028), (finding.Measured!.Value.Si, finding.Limit!.Value.Si));
        Assert.Equal("the tube's statement", finding.Source);
        Assert.Equal([new CureChange("runs/R/bends/0/radius", "27 mm", "28 mm")], finding.Cure!.Changes);
    }

    [Theory]
    [InlineData("32 mm", null)]     // 4 outside diameters
    [InlineData("25 mm", Severity.Warn)]
    [InlineData("23 mm", Severity.Fail)]
    public void Where_the_tube_states_none_the_radius_is_held_against_its_outside_diameter(string radius, Severity? severity)
    {
        var judged = Judged.Of(Pair.Edit(Pair.With(Pair.Right, WithBend(radius)), ", \"minimumBendRadius\": \"28 mm\"", ""));

        var finding = judged.All(FindingCodes.BendTooTight).SingleOrDefault();

        Assert.Equal(severity, finding?.Severity);
        if (finding is not null) Assert.Equal(severity == Severity.Warn ? 0.032 : 0.024, finding.Limit!.Value.Si, tolerance: 1e-12);
    }

    [Fact]
    public void Without_an_outside_diameter_and_a_least_radius_nothing_is_known_to_be_too_tight()
    {
        var json = Pair.Edit(Pair.With(Pair.Right, WithBend("6 mm")), "\"outsideDiameter\": \"8 mm\", \"wall\": \"1 mm\", \"roughness\": \"1.5 µm\", \"minimumBendRadius\": \"28 mm\"", "\"bore\": \"6 mm\", \"roughness\": \"1.5 µm\"");

        Assert.False(Judged.Of(json).Has(FindingCodes.BendTooTight));
    }

    [Fact]
    public void A_larger_radius_is_offered_only_where_it_fits_the_route()
    {
        var fits = Judged.Of(Route("300 mm", "20 mm")).Single(FindingCodes.BendTooTight);
        var not = Judged.Of(Route("50 mm", "20 mm")).Single(FindingCodes.BendTooTight);

        Assert.Equal([new CureChange("runs/A/bendRadius", "20 mm", "28 mm")], fits.Cure!.Changes);
        Assert.Null(not.Cure);
        Assert.False(Judged.Of(Route("300 mm", "28 mm")).Has(FindingCodes.BendTooTight));
    }

    [Theory]
    [InlineData("120 mm", null, null)]          // 64 mm of straight between two bends of 28 mm
    [InlineData("75 mm", null, true)]           // 19 mm: over 2 × 8 mm, under 4 bores of 6 mm
    [InlineData("65 mm", Severity.Warn, true)]  // 9 mm
    [InlineData("50 mm", Severity.Fail, null)]  // -6 mm
    public void Bends_need_straight_tube_between_them(string between, Severity? overlap, bool? interact)
    {
        var judged = Judged.Of(Route(between, "28 mm"));

        Assert.Equal(overlap, judged.All(FindingCodes.BendsOverlap).SingleOrDefault()?.Severity);
        Assert.Equal(interact ?? false, judged.Has(FindingCodes.BendsInteract));
        if (interact == true) Assert.Equal(Severity.Note, judged.Single(FindingCodes.BendsInteract).Severity);
    }

    [Fact]
    public void A_bend_that_does_not_fit_before_the_end_of_its_run_fails()
    {
        var judged = Judged.Of(Route("300 mm", "28 mm").Replace("\"2.0 m\"", "\"1.01 m\"", StringComparison.Ordinal));

        var finding = judged.Single(FindingCodes.BendsOverlap);

        Assert.Equal(Severity.Fail, finding.Severity);
        Assert.Equal(-0.018, finding.Measured!.Value.Si, tolerance: 1e-9);
    }

    [Fact]
    public void A_bend_may_begin_right_behind_a_fitting_at_the_end_of_its_run()
    {
        var judged = Judged.Of(Route("300 mm", "28 mm").Replace("\"2.0 m\"", "\"1.03 m\"", StringComparison.Ordinal)); // 2 mm of straight before the nozzle

        Assert.False(judged.Has(FindingCodes.BendsOverlap));
        Assert.False(judged.Has(FindingCodes.BendsInteract));
    }

    [Theory]
    [InlineData("180°", "8 mm", true)]
    [InlineData("90°", "8 mm", false)]
    [InlineData("180°", "9 mm", false)]
    public void A_return_bend_under_one_and_a_half_bores_is_outside_the_correlation(string angle, string radius, bool isOutside)
    {
        var judged = Judged.Of(Pair.With(Pair.Right, $"\"to\": \"right\", \"tube\": \"feed\", \"length\": \"1 m\", \"bends\": [{{ \"angle\": \"{angle}\", \"radius\": \"{radius}\" }}]"));

        var finding = judged.All(FindingCodes.OutsideCorrelation).SingleOrDefault();

        Assert.Equal(isOutside, finding is not null);
        if (finding is null) return;
        Assert.Equal(["R"], finding.Where);
        Assert.Equal(Severity.Note, finding.Severity);
    }

    static string WithBend(string radius) => $"\"to\": \"right\", \"tube\": \"feed\", \"length\": \"1 m\", \"bends\": [{{ \"angle\": \"90°\", \"radius\": \"{radius}\" }}]";

    /// <summary>One run that turns to the left and back, with the given distance between its corners.</summary>
    static string Route(string between, string radius) => $$"""
        {
          "format": 1, "agent": "water", "ambientPressure": "1 bara", "temperature": "20 °C", "supply": { "pressure": "8 bar" },
          "tubes": { "feed": { "outsideDiameter": "8 mm", "wall": "1 mm", "roughness": "1.5 µm", "minimumBendRadius": "28 mm" } },
          "points": [
            { "id": "source", "kind": "supply", "at": ["0 m", "0 m", "0 m"] },
            { "id": "n", "kind": "nozzle", "orifice": { "diameter": "1.5 mm", "dischargeCoefficient": 0.82 }, "at": ["2.0 m", "{{between}}", "0 m"] }
          ],
          "runs": [ { "id": "A", "from": "source", "to": "n", "tube": "feed", "bendRadius": "{{radius}}", "via": [["1 m", "0 m", "0 m"], ["1 m", "{{between}}", "0 m"]] } ]
        }
        """;
}
