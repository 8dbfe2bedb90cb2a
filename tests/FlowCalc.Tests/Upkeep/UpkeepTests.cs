using FlowCalc.Upkeep;

namespace FlowCalc.Tests.Upkeep;

/// <summary>Dates, weight and gauge of a bottle.</summary>
public class UpkeepTests
{
    const double Relative = 1e-6;

    [Fact]
    public void Two_marks_fall_due_by_their_own_rules_and_the_earlier_is_next()
    {
        var result = UpkeepDocument.Solve("""{ "lastService": "2026-05-02", "lastTest": "2018-07", "rules": { "service": { "basis": "lastService", "months": 24 }, "pressure-test": { "basis": "lastTest", "months": 120 } } }""");

        Assert.Equal(["service 2028-05-02", "pressure-test 2028-07-01"], result.Dates.Select(date => $"{date.Rule.Name} {date.Due:yyyy-MM-dd}"));
        Assert.Equal("service", result.Next!.Rule.Name);
        Assert.Equal(UpkeepDocument.Date("2028-05-02").DayNumber - UpkeepDocument.Date(UpkeepDocument.Day).DayNumber, result.Next.DaysLeft);
        Assert.Empty(result.Assumptions);
    }

    [Theory]
    [InlineData("motorsport", 24, 60)]
    [InlineData("marine-engine-space", 24, 120)]
    [InlineData("machine", 6, 60)]
    [InlineData(null, 24, 60)]
    public void Usual_rules_hold_where_the_document_has_none_and_are_listed(string? application, int service, int test)
    {
        var result = UpkeepDocument.Solve("""{ "manufactured": "2026-01-15" }""", edits: ("/application", application is null ? null : $"\"{application}\""));

        Assert.Equal([service, test], result.Dates.Select(date => date.Rule.Months));
        Assert.All(result.Dates, date => Assert.False(date.IsStated));
        Assert.Equal(["/service/rules/service", "/service/rules/pressure-test"], result.Assumptions.Select(assumption => assumption.Pointer));
    }

    [Fact]
    public void A_rule_without_a_date_to_count_from_has_no_due_day()
    {
        var result = UpkeepDocument.Solve("{}");

        Assert.All(result.Dates, date => Assert.Null(date.Due));
        Assert.Null(result.Next);
    }

    // 8.42 kg stamped, 8.25 kg found, 3 kg of agent: 0.17/3.
    [Fact]
    public void Weight_lost_is_counted_in_parts_of_the_fill()
    {
        var weight = UpkeepDocument.Solve("""{ "weighing": { "stamped": "8.42 kg", "gross": "8.25 kg", "step": "10 g" } }""").Weight!;

        Assert.Equal(0.056666667, weight.Lost, tolerance: Relative);
        Assert.Equal(0.0033333333, weight.Doubt!.Value, tolerance: Relative);
    }

    [Fact]
    public void Without_a_stamp_the_full_bottle_is_the_empty_one_and_its_fill() =>
        Assert.Equal(0.1, UpkeepDocument.Solve("""{ "weighing": { "gross": "4.7 kg" } }""", edits: ("/supply/bottle/emptyMass", "\"2 kg\"")).Weight!.Lost, tolerance: 1e-9);

    [Fact]
    public void A_gauge_is_told_at_the_temperature_that_is_asked_for_only()
    {
        Assert.Null(UpkeepDocument.Solve("{}").Expected);
        var expected = UpkeepDocument.Solve("{}", celsius: 20).Expected!;
        Assert.Equal(14e5 + 101_325, expected.Pressure!.Value.Pascals, tolerance: 1);
        Assert.Null(UpkeepDocument.Solve("{}", celsius: -5).Expected!.Pressure);
        Assert.Contains("freezes", UpkeepDocument.Solve("{}", celsius: -5).Expected!.Failure, StringComparison.Ordinal);
    }

    [Fact]
    public void Every_sort_of_bottle_has_its_own_pressure()
    {
        double At(string agent, string bottle, double celsius) =>
            UpkeepDocument.Solve("{}", celsius: celsius, edits: [("/agent", agent), ("/temperature", null), ("/supply/bottle", bottle)]).Expected!.Pressure!.Value.Bars;

        Assert.Equal(201.01, At("\"nitrogen\"", """{ "volume": "10 L", "chargePressure": "200 bar", "chargeTemperature": "15 °C" }""", 15), tolerance: 0.01);
        Assert.Equal(57.3, At("\"carbon-dioxide\"", """{ "volume": "3 L", "fill": "2 kg" }""", 20), tolerance: 0.1);   // saturation pressure of carbon dioxide
        Assert.Equal(26.01, At("\"HFC-227ea\"", """{ "volume": "3 L", "fill": "3 kg", "chargePressure": "25 bar" }""", 20), tolerance: 0.02);
        Assert.True(At("\"HFC-227ea\"", """{ "volume": "3 L", "fill": "3 kg", "chargePressure": "25 bar" }""", 50) > 33);
    }

    [Fact]
    public void A_held_supply_has_dates_but_neither_gauge_nor_weight()
    {
        var result = UpkeepDocument.Solve("""{ "manufactured": "2025-01" }""", celsius: 20, edits: [("/supply", """{ "pressure": "12 bar" }""")]);

        Assert.NotNull(result.Next);
        Assert.Null(result.Expected);
        Assert.Null(result.Weight);
    }

    [Fact]
    public void A_layout_without_a_service_is_refused() =>
        Assert.Throws<ArgumentException>(() => UpkeepCalculation.Of(UpkeepDocument.Read("{}") with { Service = null }, UpkeepDocument.Date(UpkeepDocument.Day)));
}
