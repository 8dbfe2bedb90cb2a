using FlowCalc.Findings;

namespace FlowCalc.Tests.Upkeep;

/// <summary>Each finding of the upkeep: where it is found, and where it is not.</summary>
public class UpkeepFindingsTests
{
    static Finding? Find(UpkeepJudgement judgement, string code) => judgement.Findings.FirstOrDefault(finding => finding.Code == code);

    const string Rules = """ "rules": { "service": { "basis": "lastService", "months": 24 }, "pressure-test": { "basis": "lastTest", "months": 60 } } """;

    [Theory]
    [InlineData("2024-11-24", Severity.Fail)]
    [InlineData("2024-11-25", Severity.Pass)]
    public void Service_is_overdue_from_the_day_after_its_due_day(string last, Severity severity)
    {
        var judged = UpkeepDocument.Judge($$"""{ "lastService": "{{last}}", "lastTest": "2026-01-01", {{Rules}} }""");

        Assert.Equal(severity, Find(judged, FindingCodes.ServiceOverdue)?.Severity ?? Severity.Pass);
        Assert.Equal(severity == Severity.Pass ? Severity.Note : Severity.Pass, Find(judged, FindingCodes.DueSoon)?.Severity ?? Severity.Pass);
    }

    [Fact]
    public void A_usual_rule_that_may_not_be_the_users_warns()
    {
        var judged = UpkeepDocument.Judge("""{ "manufactured": "2015-01-01" }""");

        Assert.Equal(Severity.Warn, Find(judged, FindingCodes.ServiceOverdue)!.Severity);
        Assert.Equal(Severity.Warn, Find(judged, FindingCodes.PressureTestOverdue)!.Severity);
        Assert.Contains("2020-01-01", Find(judged, FindingCodes.PressureTestOverdue)!.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("2026-01-24", true)]
    [InlineData("2026-01-23", true)]
    [InlineData("2026-01-26", false)]
    public void A_date_is_near_within_sixty_days(string from, bool isNear)
    {
        // Twelve months on: 60 days after 2026-11-25 is 2027-01-24.
        var judged = UpkeepDocument.Judge($$"""{ "lastService": "2026-11-01", "lastTest": "2026-11-01", "rules": { "battery": { "from": "{{from}}", "months": 12 } } }""");

        Assert.Equal(isNear && from != "2026-01-24", Find(judged, FindingCodes.DueSoon) is not null);
    }

    [Fact]
    public void An_own_rule_that_has_passed_fails_and_says_by_how_much()
    {
        var finding = Find(UpkeepDocument.Judge("""{ "lastService": "2026-11-01", "lastTest": "2026-11-01", "rules": { "battery": { "from": "2025-10-31", "months": 12 } } }"""), FindingCodes.DateOverdue)!;

        Assert.Equal(Severity.Fail, finding.Severity);
        Assert.Contains("25 days", finding.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_label_without_dates_is_warned_of() => Assert.Equal(Severity.Warn, Find(UpkeepDocument.Judge("{}"), FindingCodes.LabelMissing)!.Severity);

    [Theory]
    [InlineData("8.25 kg", Severity.Fail)]
    [InlineData("8.28 kg", Severity.Pass)]
    public void A_bottle_that_has_lost_over_a_twentieth_of_its_agent_fails(string gross, Severity severity) =>
        Assert.Equal(severity, Find(UpkeepDocument.Judge($$"""{ "weighing": { "stamped": "8.42 kg", "gross": "{{gross}}", "step": "10 g" } }"""), FindingCodes.AgentLost)?.Severity ?? Severity.Pass);

    [Fact]
    public void A_loss_within_a_coarse_scales_step_is_left_open() =>
        Assert.Contains("leaves it open", Find(UpkeepDocument.Judge("""{ "weighing": { "stamped": "8.42 kg", "gross": "8.25 kg", "step": "50 g" } }"""), FindingCodes.AgentLost)!.Message, StringComparison.Ordinal);

    // 14 bar at 20 °C: about 12.9 bar at 2 °C.
    [Theory]
    [InlineData("11.4 bar", Severity.Fail)]
    [InlineData("12.4 bar", Severity.Pass)]
    public void A_reading_is_judged_at_its_own_temperature(string reading, Severity severity) =>
        Assert.Equal(severity, Find(UpkeepDocument.Judge($$"""{ "gauge": { "reading": "{{reading}}", "temperature": "2 °C" } }"""), FindingCodes.PressureLost)?.Severity ?? Severity.Pass);

    [Fact]
    public void Green_that_is_no_proof_is_told_of()
    {
        const string green = """{ "gauge": { "reading": "11 bar", "temperature": "20 °C", "green": ["11.5 bar", "16 bar"] } }""";

        Assert.Equal(Severity.Warn, Find(UpkeepDocument.Judge(green), FindingCodes.GaugeOffGreen)!.Severity);
        Assert.Contains("outside the green", Find(UpkeepDocument.Judge(green, celsius: 60), FindingCodes.GaugeMisleads)!.Message, StringComparison.Ordinal);
        Assert.Contains("lost too much", Find(UpkeepDocument.Judge(green, celsius: 30), FindingCodes.GaugeMisleads)!.Message, StringComparison.Ordinal);
        Assert.Null(Find(UpkeepDocument.Judge("""{ "gauge": { "green": ["13 bar", "16 bar"] } }""", celsius: 20), FindingCodes.GaugeMisleads));
        Assert.Null(Find(UpkeepDocument.Judge("""{ "gauge": { "green": ["13 bar", "16 bar"] } }""", celsius: 20), FindingCodes.GaugeOffGreen));
    }

    static readonly (string, string?)[] Nitrogen = [("/agent", "\"nitrogen\""), ("/temperature", null), ("/supply/bottle", """{ "volume": "10 L", "chargePressure": "200 bar", "chargeTemperature": "15 °C" }""")];

    [Theory]
    [InlineData("188 bar", Severity.Fail)]
    [InlineData("192 bar", Severity.Pass)]
    public void A_gas_may_lose_a_twentieth_of_its_pressure(string reading, Severity severity) =>
        Assert.Equal(severity, Find(UpkeepDocument.Judge($$"""{ "gauge": { "reading": "{{reading}}", "temperature": "15 °C" } }""", edits: Nitrogen), FindingCodes.GasLost)?.Severity ?? Severity.Pass);

    [Fact]
    public void The_gauge_of_carbon_dioxide_shows_no_fill()
    {
        (string, string?)[] dioxide = [("/agent", "\"carbon-dioxide\""), ("/temperature", null), ("/supply/bottle", """{ "volume": "3 L", "fill": "2 kg" }""")];

        Assert.Equal(Severity.Note, Find(UpkeepDocument.Judge("{}", edits: dioxide), FindingCodes.GaugeNoFill)!.Severity);
        Assert.Null(Find(UpkeepDocument.Judge("{}"), FindingCodes.GaugeNoFill));
        Assert.Null(UpkeepDocument.Solve("{}", celsius: 20, edits: dioxide).Lowest);
    }

    [Fact]
    public void A_sound_bottle_in_date_has_no_finding() =>
        Assert.Empty(UpkeepDocument.Judge($$"""{ "lastService": "2026-10-01", "lastTest": "2025-01-01", {{Rules}}, "weighing": { "stamped": "8.42 kg", "gross": "8.42 kg" }, "gauge": { "reading": "14 bar", "temperature": "20 °C", "green": ["13 bar", "16 bar"] } }""").Findings);
}
