using FlowCalc.Findings;
using FlowCalc.Limits;

namespace FlowCalc.Tests.Coverage;

/// <summary>Each finding of a coverage where it is found, and where it is not.</summary>
public class CoverageFindingsTests
{
    [Fact]
    public void A_nozzle_that_points_at_a_person_fails_unless_a_body_stands_between()
    {
        (string, string?) aim = ("/points/2/aim", "[0.7, -0.3, 0.4]");
        var finding = CoverageDocument.Judge(CoverageDocument.Table, aim).Single(CoverageCodes.AimedAtPerson);

        Assert.Equal(Severity.Fail, finding.Severity);
        Assert.Equal(["left", "fitter"], finding.Where);
        Assert.True(finding.Measured!.Value.Si < 0.01);
        Assert.False(CoverageDocument.Judge(CoverageDocument.Table).Has(CoverageCodes.AimedAtPerson));
        Assert.False(CoverageDocument.Judge(CoverageDocument.Table, aim, ("/coverage/bodies/shelf", """{ "from": ["0.8 m", "0.4 m", "0.4 m"], "to": ["0.9 m", "1 m", "1 m"] }""")).Has(CoverageCodes.AimedAtPerson));
    }

    [Fact]
    public void The_angle_of_a_person_is_a_limit_like_any_other()
    {
        var judgement = CoverageDocument.Judge(CoverageDocument.Table, ("/limits", """{ "aimed-at-person": { "warn": "170°", "fail": "5°" } }"""));

        var finding = judgement.Single(CoverageCodes.AimedAtPerson);
        Assert.Equal(Severity.Warn, finding.Severity);
        Assert.Equal(DefaultLimits.StatedInTheDocument, finding.Source);
    }

    [Theory]
    [InlineData("/coverage/targets/drill/at", """["0.5 m", "2 m", "0 m"]""", "off the axis of left")]
    [InlineData("/nozzles/cone/spray/range", """["0.2 m", "0.4 m"]""", "out of its range")]
    [InlineData("/coverage/bodies/shelf", """{ "from": ["0.4 m", "0.7 m", "0.2 m"], "to": ["0.6 m", "0.9 m", "0.3 m"] }""", "shelf stands between it and left")]
    public void A_target_that_no_spray_comes_to_warns_and_says_why(string at, string value, string words)
    {
        var finding = CoverageDocument.Judge(CoverageDocument.Table, (at, value)).Findings.First(one => one.Code == CoverageCodes.TargetNotCovered && one.Where[0] == "drill");

        Assert.Equal(Severity.Warn, finding.Severity);
        Assert.Contains(words, finding.Message, StringComparison.Ordinal);
        Assert.False(CoverageDocument.Judge(CoverageDocument.Table).Has(CoverageCodes.TargetNotCovered));
    }

    [Theory]
    [InlineData("""{ "angle": "60°", "range": ["0.6 m", "1 m"] }""", true)]
    [InlineData("""{ "angle": "60°", "range": ["0.2 m", "0.4 m"] }""", true)]
    [InlineData("""{ "angle": "60°", "range": ["0.2 m", "0.5 m"] }""", false)]
    [InlineData("""{ "angle": "60°" }""", false)]
    public void A_surface_out_of_the_range_of_a_spray_is_noted(string spray, bool isFound) =>
        Assert.Equal(isFound, CoverageDocument.Judge(CoverageDocument.Table, ("/points/2/spray", spray)).Findings.Any(one => one.Code == CoverageCodes.OutOfThrow && one.Where.Contains("left")));

    [Fact]
    public void Without_a_range_a_spray_is_noted_that_has_under_a_tenth_of_a_metre()
    {
        var finding = CoverageDocument.Judge(CoverageDocument.Table, ("/points/2/spray", """{ "angle": "60°" }"""), ("/points/2/at", """["0.5 m", "0.8 m", "0.09 m"]""")).Single(CoverageCodes.OutOfThrow);

        Assert.Equal(DefaultLimits.CommonPractice, finding.Source);
        Assert.Equal(0.1, finding.Limit!.Value.Si, tolerance: 1e-12);
    }

    [Fact]
    public void An_edge_that_runs_out_to_no_end_is_noted()
    {
        var finding = CoverageDocument.Judge(CoverageDocument.Table, ("/points/2/aim", "[0, -2, -1]")).Single(CoverageCodes.OpenFootprint);

        Assert.Equal(Severity.Note, finding.Severity);
        Assert.Equal(Math.Atan(2) + Math.PI / 6, finding.Measured!.Value.Si, tolerance: 1e-9);
    }

    [Fact]
    public void A_zone_without_a_nozzle_fails_and_one_with_a_single_nozzle_is_noted()
    {
        var judgement = CoverageDocument.Judge(CoverageDocument.Table, ("/zones/attic", "{}"));

        Assert.Equal(["attic"], judgement.Single(CoverageCodes.ZoneWithoutNozzle).Where);
        Assert.Equal(["aisle"], judgement.Single(CoverageCodes.OneNozzleZone).Where);
        Assert.False(CoverageDocument.Judge(CoverageDocument.Table).Has(CoverageCodes.ZoneWithoutNozzle));
    }

    [Fact]
    public void One_zone_is_too_few_for_a_competition_vehicle_and_for_who_says_so()
    {
        (string, string?)[] one = [("/points/4/zone", "\"bench\""), ("/zones/aisle", null)];

        Assert.False(CoverageDocument.Judge(CoverageDocument.Table, one).Has(CoverageCodes.TooFewZones));
        Assert.Equal(Severity.Warn, CoverageDocument.Judge(CoverageDocument.Table, [.. one, ("/application", "\"motorsport\"")]).Single(CoverageCodes.TooFewZones).Severity);
        Assert.Equal(Severity.Fail, CoverageDocument.Judge(CoverageDocument.Table, [.. one, ("/limits", """{ "too-few-zones": { "fail": 2 } }""")]).Single(CoverageCodes.TooFewZones).Severity);
        Assert.False(CoverageDocument.Judge(CoverageDocument.Table, ("/application", "\"motorsport\"")).Has(CoverageCodes.TooFewZones));
    }

    [Theory]
    [InlineData("/zones/engine/airflow", "\"0.2 m3/s\"", "changes 4.8 times a minute")]
    [InlineData("/zones/engine/airflow", null, "does not say how much air")]
    [InlineData("/zones/engine/openings", "\"200 cm2\"", "do not shut")]
    [InlineData("/zones/engine/openings", null, "whether openings")]
    public void A_space_that_does_not_hold_its_agent_cannot_be_claimed_as_flooded(string at, string? value, string words)
    {
        var finding = CoverageDocument.Judge(CoverageDocument.Space, (at, value)).Single(CoverageCodes.FloodingNotClaimable);

        Assert.Equal(Severity.Fail, finding.Severity);
        Assert.Equal(["engine"], finding.Where);
        Assert.Contains(words, finding.Message, StringComparison.Ordinal);
        Assert.False(CoverageDocument.Judge(CoverageDocument.Space).Has(CoverageCodes.FloodingNotClaimable));
        Assert.False(CoverageDocument.Judge(CoverageDocument.Space, (at, value), ("/zones/engine/protection", "\"local\"")).Has(CoverageCodes.FloodingNotClaimable));
    }

    [Fact]
    public void Exactly_one_change_a_minute_is_within_the_limit() =>
        Assert.False(CoverageDocument.Judge(CoverageDocument.Space, ("/zones/engine/airflow", "\"2.5 m3/s\""), ("/zones/engine/volume", "\"150 m3\"")).Has(CoverageCodes.FloodingNotClaimable));

    [Fact]
    public void Too_little_agent_fails_with_what_it_takes()
    {
        var finding = CoverageDocument.Judge(CoverageDocument.Space, ("/supply/bottle/fill", "\"2 kg\"")).Findings.First(one => one.Code == CoverageCodes.TooLittleAgent && one.Where[0] == "engine");

        Assert.Equal(Severity.Fail, finding.Severity);
        Assert.Contains("it needs 1.95 kg for 9 % of the volume", finding.Message, StringComparison.Ordinal);
        Assert.NotNull(finding.Case);
        Assert.False(CoverageDocument.Judge(CoverageDocument.Space).Has(CoverageCodes.TooLittleAgent));
    }

    [Fact]
    public void Harm_is_judged_where_people_are_and_nowhere_else()
    {
        (string, string?)[] people = [("/zones/engine/occupied", "true"), ("/supply/bottle/volume", "\"4 L\"")];
        var nobody = CoverageDocument.Judge(CoverageDocument.Space);
        var harmed = CoverageDocument.Judge(CoverageDocument.Space, people);
        var unharmed = CoverageDocument.Judge(CoverageDocument.Space, [.. people, ("/zones/engine/volume", "\"5 m3\"")]);

        Assert.False(nobody.Has(CoverageCodes.OverLoael) || nobody.Has(CoverageCodes.OverNoael));
        Assert.Equal(Severity.Fail, harmed.Single(CoverageCodes.OverLoael).Severity);
        Assert.False(harmed.Has(CoverageCodes.OverNoael));
        Assert.Contains("no fill is enough at 0 °C (1.95 kg) and harmless at the hottest (1.68 kg)", harmed.Single(CoverageCodes.OverLoael).Message, StringComparison.Ordinal);
        Assert.False(unharmed.Has(CoverageCodes.OverLoael) || unharmed.Has(CoverageCodes.OverNoael));
    }

    [Fact]
    public void Between_the_two_levels_it_warns()
    {
        var finding = CoverageDocument.Judge(CoverageDocument.Space, ("/zones/engine/occupied", "true"), ("/supply/bottle/fill", "\"2.25 kg\"")).Findings.FirstOrDefault(one => one.Code is CoverageCodes.OverNoael);

        Assert.Equal(Severity.Warn, finding!.Severity);
        Assert.InRange(finding.Measured!.Value.Si, 1, 10.5 / 9);
    }

    [Fact]
    public void An_inert_gas_is_judged_by_the_oxygen_that_it_leaves()
    {
        var cabinet = CoverageDocument.Judge(Inert("0.30 m3"));
        var hall = CoverageDocument.Judge(Inert("2 m3"));

        Assert.Equal(Severity.Fail, cabinet.Single(CoverageCodes.LowOxygen).Severity);
        Assert.False(cabinet.Has(CoverageCodes.OverNoael));
        Assert.False(hall.Has(CoverageCodes.LowOxygen));
    }

    [Theory]
    [InlineData("290 s", false)]
    [InlineData("310 s", true)]
    public void People_who_need_longer_to_leave_than_they_may_stay_are_a_failure(string leaving, bool isFound) =>
        Assert.Equal(isFound, CoverageDocument.Judge(Inert("2 m3"), ("/zones/engine/leaving", $"\"{leaving}\"")).Has(CoverageCodes.LeavingTooSlow));

    [Fact]
    public void Who_has_to_leave_where_nobody_may_be_at_all_is_told()
    {
        var finding = CoverageDocument.Judge(Inert("0.30 m3"), ("/zones/engine/leaving", "\"10 s\"")).Single(CoverageCodes.LeavingTooSlow);

        Assert.Contains("nobody may be in zone engine at all", finding.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_halocarbon_too_is_judged_by_the_oxygen_that_it_leaves()
    {
        var small = CoverageDocument.Judge(CoverageDocument.Space, ("/zones/engine/occupied", "true"), ("/zones/engine/volume", "\"0.3 m3\""));

        Assert.Equal(Severity.Fail, small.Single(CoverageCodes.LowOxygen).Severity);
        Assert.Equal(Severity.Fail, small.Single(CoverageCodes.OverLoael).Severity);
    }

    [Fact]
    public void Carbon_dioxide_near_people_fails_here_too()
    {
        (string, string?)[] gas = [("/agent", "\"carbon-dioxide\""), ("/supply/bottle", """{ "volume": "6 L", "fill": "4 kg" }""")];

        Assert.False(CoverageDocument.Judge(CoverageDocument.Space, gas).Has(FindingCodes.CarbonDioxideNearPeople));
        Assert.Equal(Severity.Fail, CoverageDocument.Judge(CoverageDocument.Space, [.. gas, ("/zones/engine/occupied", "true")]).Single(FindingCodes.CarbonDioxideNearPeople).Severity);
    }

    [Theory]
    [InlineData("alcohol", true)]
    [InlineData("metal", true)]
    [InlineData("class-B", false)]
    public void A_fuel_that_no_table_covers_is_noted(string hazard, bool isFound) =>
        Assert.Equal(isFound, CoverageDocument.Judge(CoverageDocument.Space, ("/zones/engine/hazard", $"\"{hazard}\""), ("/zones/engine/design", "0.12")).Has(CoverageCodes.FuelNeedsMore));

    static string Inert(string volume) => Layouts.Specimen.With(Layouts.Specimen.With(Layouts.Specimen.With(Layouts.Specimen.With(CoverageDocument.Space,
        "/agent", "\"IG-541\""), "/supply/bottle", """{ "volume": "6 L", "chargePressure": "200 bar" }"""), "/zones/engine/occupied", "true"), "/zones/engine/volume", $"\"{volume}\"");
}
