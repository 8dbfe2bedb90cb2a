using FlowCalc.Agents;
using FlowCalc.Findings;
using FlowCalc.Tests.Flows;

namespace FlowCalc.Tests.Findings;

/// <summary>What is found in the steady flow of a gas or a liquefied gas.</summary>
public class ExpandingFindingsTests
{
    static readonly string[] OfLiquids = [FindingCodes.VelocityHigh, FindingCodes.BelowVapourPressure];

    [Theory]
    [MemberData(nameof(GasDocuments.Agents), MemberType = typeof(GasDocuments))]
    public void Rules_of_liquids_are_not_held_against_it(string agent) =>
        Assert.DoesNotContain(Judged.Of(GasDocuments.Tree(agent)).Judgement.Findings, finding => OfLiquids.Contains(finding.Code));

    [Fact]
    public void Carbon_dioxide_where_people_can_be_fails()
    {
        const string occupied = """ "zones": { "cab": { "occupied": true }, "locker": {} }, """;
        var finding = Judged.Of(GasDocuments.Tree("carbon-dioxide", occupied)).Single(FindingCodes.CarbonDioxideNearPeople);

        Assert.Equal((Severity.Fail, "cab"), (finding.Severity, Assert.Single(finding.Where)));
        Assert.False(Judged.Of(GasDocuments.Tree("carbon-dioxide", """ "zones": { "locker": {} }, """)).Has(FindingCodes.CarbonDioxideNearPeople));
        Assert.False(Judged.Of(GasDocuments.Tree("HFC-23", occupied)).Has(FindingCodes.CarbonDioxideNearPeople));
    }

    [Fact]
    public void A_fill_over_the_usual_one_is_warned_of()
    {
        Judged With(string fill) => Judged.Of(GasDocuments.Tree("carbon-dioxide").Replace("5.4 kg", fill, StringComparison.Ordinal));
        var finding = With("6.2 kg").Single(FindingCodes.FillAboveUsual);

        Assert.Equal(Severity.Warn, finding.Severity);
        Assert.Equal(775, finding.Measured!.Value.Si, tolerance: 1e-9);
        Assert.Equal(750, finding.Limit!.Value.Si);
        Assert.False(With("6 kg").Has(FindingCodes.FillAboveUsual));
    }

    [Theory]
    [InlineData("HFC-227ea", false)]
    [InlineData("FK-5-1-12", true)]
    [InlineData("HFC-125", true)]
    [InlineData("HFC-236fa", true)]
    [InlineData("HFC-23", false)]
    public void Agents_whose_nitrogen_is_an_estimate_say_so(string agent, bool isWeak) =>
        Assert.Equal(isWeak, Judged.Of(GasDocuments.Tree(agent)).Has(FindingCodes.WeakAgentData));

    [Theory]
    [InlineData("20 °C", false)]
    [InlineData("50 °C", false)]
    [InlineData("55 °C", true)]
    [InlineData("-20 °C", true)]
    public void Outside_the_temperatures_that_were_checked_it_is_noted(string temperature, bool isOutside) =>
        Assert.Equal(isOutside, Judged.Of(At("HFC-227ea", temperature)).Has(FindingCodes.OutsideCheckedRange));

    [Fact]
    public void Over_the_critical_temperature_it_is_noted_that_there_is_no_level()
    {
        var finding = Judged.Of(At("carbon-dioxide", "45 °C")).Single(FindingCodes.AboveCriticalTemperature);

        Assert.Equal(Severity.Note, finding.Severity);
        Assert.Equal(304.1282, finding.Limit!.Value.Si, tolerance: 1e-9);
        Assert.False(Judged.Of(At("carbon-dioxide", "25 °C")).Has(FindingCodes.AboveCriticalTemperature));
        Assert.False(Judged.Of(At("nitrogen", "45 °C")).Has(FindingCodes.AboveCriticalTemperature));
    }

    [Fact]
    public void A_run_at_the_speed_of_sound_is_noted()
    {
        var json = GasDocuments.Nozzle("\"nitrogen\"", """{ "pressure": "100 bar" }""", nozzle: """ "orifice": { "diameter": "20 mm", "dischargeCoefficient": 0.8 } """)
            .Replace("\"bore\": \"50 mm\", \"length\": \"0.01 m\"", "\"bore\": \"6 mm\", \"length\": \"2 m\"", StringComparison.Ordinal);

        Assert.Equal(["R"], Judged.Of(json).Single(FindingCodes.ChokedRun).Where);
    }

    // The tee stands upright: one outlet leaves straight up. The liquid it would divide has no two phases.
    [Fact]
    public void An_outlet_that_leaves_the_level_is_warned_of_where_liquid_and_vapour_part()
    {
        const string levelled = """
            "points": [ { "id": "S", "kind": "supply", "at": ["0 m", "0 m", "0 m"] }, { "id": "T", "kind": "tee", "fedThrough": "run", "body": "smooth", "at": ["1 m", "0 m", "0 m"] },
              { "id": "A", "kind": "nozzle", "orifice": { "diameter": "2.5 mm", "dischargeCoefficient": 0.8 }, "at": ["1 m", "0 m", "0.5 m"] },
              { "id": "B", "kind": "nozzle", "orifice": { "diameter": "2.5 mm", "dischargeCoefficient": 0.8 }, "at": ["2 m", "0 m", "0 m"] } ],
            "runs": [ { "from": "S", "to": "T", "bore": "10 mm" }, { "from": "T", "to": "A", "leaves": "branch", "bore": "8 mm" }, { "from": "T", "to": "B", "leaves": "run", "bore": "8 mm" } ]
            """;
        string Of(string agent, string supply) => $$"""{ "format": 1, "agent": "{{agent}}", "supply": {{supply}}, {{levelled}} }""";
        const string bottle = """{ "bottle": { "volume": "5 L", "fill": "3 kg" } }""";

        var finding = Judged.Of(Of("carbon-dioxide", bottle)).Single(FindingCodes.TeeNotLevel);
        Assert.Equal((Severity.Warn, "T"), (finding.Severity, Assert.Single(finding.Where)));
        Assert.Equal(Math.PI / 2, finding.Measured!.Value.Si, tolerance: 1e-9);
        Assert.False(Judged.Of(Of("carbon-dioxide", bottle).Replace("\"1 m\", \"0 m\", \"0.5 m\"", "\"1 m\", \"0.5 m\", \"0 m\"", StringComparison.Ordinal)).Has(FindingCodes.TeeNotLevel));
        Assert.False(Judged.Of(Of("water", """{ "pressure": "10 bar" }""")).Has(FindingCodes.TeeNotLevel));
    }

    [Fact]
    public void An_answer_says_which_model_gave_it_and_how_far_it_was_checked()
    {
        var assumptions = Judged.Of(GasDocuments.Tree("HFC-227ea")).Flow.Assumptions;

        Assert.Contains(assumptions, one => one.Value.Contains("20 to 30 %", StringComparison.Ordinal));
        Assert.Contains(assumptions, one => one.Value.Contains("about 5 % from 0 to 50 °C", StringComparison.Ordinal));
        Assert.Contains(assumptions, one => one.Pointer == "/model/nozzles");
    }

    [Fact]
    public void A_starved_nozzle_of_a_gas_has_its_cure_tried()
    {
        var json = GasDocuments.Tree("carbon-dioxide").Replace("\"bore\": \"6 mm\", \"length\": \"1.4 m\"", "\"bore\": \"3 mm\", \"length\": \"1.4 m\"", StringComparison.Ordinal);
        var judged = Judged.Of(json);

        Assert.Equal(["C"], judged.Single(FindingCodes.StarvedNozzle).Where);
        Assert.NotNull(judged.Single(FindingCodes.StarvedNozzle).Cure);
    }

    [Theory]
    [InlineData("carbon-dioxide", "Breathing: carbon dioxide", "never let go where a person can be")]
    [InlineData("HFC-125", "People: HFC-125 is for spaces without people", "7.5 %")]
    [InlineData("HFC-227ea", "People: no harm was seen up to 9 %", "10.5 %")]
    [InlineData("HFC-227ea", "Breakdown: in flame the agent turns to hydrogen fluoride", "")]
    [InlineData("IG-541", "People: up to 43 %", "12 % of oxygen")]
    [InlineData("IG-541", "Live circuits:", "")]
    [InlineData("nitrogen", "No approval:", "licensed technician")]
    public void Cautions_follow_the_agent(string agent, string start, string words)
    {
        var cautions = Cautions.For(Documents.Read(GasDocuments.Tree(agent)));

        Assert.Contains(words, Assert.Single(cautions, caution => caution.StartsWith(start, StringComparison.Ordinal)), StringComparison.Ordinal);
        Assert.Contains("charged bottle", cautions[0], StringComparison.Ordinal);
    }

    [Fact]
    public void Every_gas_of_the_catalogue_has_its_cautions() =>
        Assert.All(AgentCatalogue.Expanding, agent => Assert.InRange(GasCautions.For(agent).Length, 4, 5));

    static string At(string agent, string temperature) =>
        GasDocuments.Tree(agent).Replace("\"temperature\": \"20 °C\"", $"\"temperature\": \"{temperature}\"", StringComparison.Ordinal);
}
