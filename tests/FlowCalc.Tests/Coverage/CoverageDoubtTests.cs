using FlowCalc.Findings;

namespace FlowCalc.Tests.Coverage;

/// <summary>What a coverage does not know, or knows too well, is told and never taken for safe.</summary>
public class CoverageDoubtTests
{
    const string Bottle = """{ "volume": "4 L", "fill": "2.5 kg", "chargePressure": "14 bar" }""";

    const string OnItsRoof = """{ "temperatures": ["20 °C"], "attitudes": [ { "name": "upright", "gravity": [0, 0, -1] }, { "name": "roof", "gravity": [0, 0, 1] } ] }""";

    const string DipTube = """
        { "volume": "4.3 L", "fill": "2.5 kg", "chargePressure": "14 bar", "axis": [0, 0, 1], "shape": { "diameter": "120 mm", "length": "380 mm" }, "outlet": { "dipTube": { "bore": "8 mm", "length": "370 mm" } } }
        """;

    static (string, string?)[] Bottled(string bottle, string cases) => [("/supply", $$"""{ "bottle": {{bottle}} }"""), ("/cases", cases)];

    [Fact]
    public void A_case_without_an_answer_fails_for_nobody_knows_what_zones_get_in_it()
    {
        var frozen = CoverageDocument.Judge(CoverageDocument.Table, Bottled(Bottle, """{ "temperatures": ["-10 °C", "20 °C"] }""")).Single(CoverageCodes.CaseNotAnswered);
        var (none, judged) = CoverageDocument.Judged(CoverageDocument.Read(CoverageDocument.Table, Bottled(Bottle, """{ "temperatures": ["-10 °C"] }""")));

        Assert.Equal(Severity.Fail, frozen.Severity);
        Assert.Contains("no answer (-10 °C", frozen.Message, StringComparison.Ordinal);
        Assert.False(CoverageDocument.Judge(CoverageDocument.Table, Bottled(Bottle, """{ "temperatures": ["20 °C"] }""")).Has(CoverageCodes.CaseNotAnswered));
        Assert.True(judged.Has(CoverageCodes.CaseNotAnswered));
        Assert.Contains("what zone bench gets: no case of the discharge has an answer", none.NotAnswered);
    }

    [Fact]
    public void A_nozzle_to_which_nothing_comes_in_one_attitude_has_no_least_flow()
    {
        var result = CoverageDocument.Solve(CoverageDocument.Table, Bottled(DipTube, OnItsRoof));

        Assert.All(result.Nozzles, nozzle => Assert.Equal(0, nozzle.Flow!.Value.Least.CubicMetersPerSecond));
        Assert.All(result.Nozzles, nozzle => Assert.True(nozzle.Flow!.Value.Most.CubicMetersPerSecond > 0));
    }

    [Fact]
    public void A_jet_of_another_zone_at_a_face_is_found()
    {
        var finding = CoverageDocument.Judge(CoverageDocument.Table, ("/coverage/persons/fitter/zone", "\"aisle\""), ("/points/2/aim", "[0.7, -0.3, 0.4]")).Single(CoverageCodes.AimedAtPerson);

        Assert.Equal(["left", "fitter"], finding.Where);
    }

    [Theory]
    [InlineData("""{ "from": ["1 m", "0.3 m", "0.7 m"], "to": ["1.4 m", "0.7 m", "1.1 m"] }""", true)]
    [InlineData("""{ "from": ["0.4 m", "0.7 m", "0.4 m"], "to": ["0.6 m", "0.9 m", "0.6 m"] }""", true)]
    [InlineData("""{ "from": ["0.8 m", "0.3 m", "0 m"], "to": ["0.9 m", "0.9 m", "1.5 m"] }""", false)]
    public void Only_a_body_between_nozzle_and_face_shields_and_none_that_holds_one_of_them(string body, bool isFound) =>
        Assert.Equal(isFound, CoverageDocument.Judge(CoverageDocument.Table, ("/coverage/bodies/shelf", body), ("/points/2/aim", "[0.7, -0.3, 0.4]")).Has(CoverageCodes.AimedAtPerson));

    [Fact]
    public void A_liquid_cannot_be_claimed_to_flood()
    {
        var finding = CoverageDocument.Judge(
            CoverageDocument.Table, ("/zones/bench", """{ "protection": "flooding", "volume": "2 m3", "airflow": "0 m3/s", "openings": "0 m2" }""")).Single(CoverageCodes.FloodingNotClaimable);

        Assert.Contains("a liquid makes no concentration", finding.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Air_that_goes_through_keeps_the_concentration_from_what_still_air_would_reach()
    {
        (string, string?)[] blown = [("/zones/engine/volume", "\"0.35 m3\""), ("/zones/engine/airflow", "\"0.2 m3/s\"")];
        var air = CoverageDocument.Solve(CoverageDocument.Space, blown).Zones[0].Air!;
        var design = CoverageDocument.Solve(CoverageDocument.Space, blown).Zones[0].Need!.Design;

        Assert.True(air.Flowing > design);
        Assert.InRange(air.Holds!.Value.Seconds, 0, 0.35 / 0.2 * Math.Log(air.Flowing!.Value / design) + 1e-9);
    }

    [Fact]
    public void A_target_that_a_body_hides_has_no_angle_to_answer_for()
    {
        var finding = CoverageDocument.Judge(CoverageDocument.Table, ("/coverage/bodies/shelf", """{ "from": ["0.3 m", "0 m", "0.2 m"], "to": ["0.7 m", "0.4 m", "0.3 m"] }""")).Single(CoverageCodes.TargetNotCovered);

        Assert.Equal(["vice"], finding.Where);
        Assert.Null(finding.Measured);
        Assert.Contains("shelf stands between it and right", finding.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_fill_that_bursts_the_bottle_in_the_heat_is_no_cure()
    {
        var judged = CoverageDocument.Judge(
            CoverageDocument.Space, ("/supply/bottle", """{ "volume": "1.6 L", "fill": "1.7 kg", "chargePressure": "25 bar" }"""), ("/zones/locker/volume", "\"0.001 m3\""), ("/cases", """{ "temperatures": ["20 °C", "60 °C"] }"""));
        var finding = judged.Findings.First(one => one.Code == CoverageCodes.TooLittleAgent && one.Where[0] == "engine");

        Assert.Null(finding.Cure);
        Assert.Contains("no cure found", finding.Message, StringComparison.Ordinal);
    }
}
