using FlowCalc.Findings;
using FlowCalc.Quantities;

namespace FlowCalc.Tests.Findings;

public class RunFindingsTests
{
    [Theory]
    [InlineData("3.6 mm", Severity.Pass)]
    [InlineData("3 mm", Severity.Note)]
    [InlineData("2.4 mm", Severity.Warn)]
    public void The_velocity_of_the_liquid_is_noted_and_warned_of(string bore, Severity severity)
    {
        var judged = Judged.Of(Chain(bore, "0.1 m", "2 mm"));

        var velocity = judged.Run("B").Velocity.MetersPerSecond;
        Assert.Equal(severity, velocity > 18 ? Severity.Warn : velocity > 12 ? Severity.Note : Severity.Pass);
        if (severity == Severity.Pass)
        {
            Assert.False(judged.Has(FindingCodes.VelocityHigh));
            return;
        }
        var finding = judged.Single(FindingCodes.VelocityHigh);
        Assert.Equal(severity, finding.Severity);
        Assert.Equal(["B"], finding.Where);
        Assert.Equal(new Measure(velocity, QuantityKind.Speed), finding.Measured);
        Assert.Equal(new Measure(severity == Severity.Warn ? 18 : 12, QuantityKind.Speed), finding.Limit);
    }

    [Fact]
    public void A_wider_tube_slows_the_liquid_and_holds_when_tried()
    {
        var json = Chain("2 mm", "0.1 m", "2 mm");
        var cure = Judged.Of(json).Single(FindingCodes.VelocityHigh).Cure!;
        var change = Assert.Single(cure.Changes);
        var after = Judged.Of(Pair.Edit(json, "\"tube\": \"thin\"", $"\"tube\": \"{change.To}\""));

        Assert.Equal("runs/B/tube", change.Path);
        Assert.Equal("wide", change.To);
        Assert.Equal(after.Run("B").Velocity.MetersPerSecond, cure.After.Si, tolerance: 1e-9);
        Assert.True(cure.After.Si < 18 && cure.Before.Si > 18);
    }

    [Fact]
    public void A_wider_tube_in_which_the_liquid_is_still_too_fast_is_passed_over()
    {
        var json = Pair.Edit(Chain("2 mm", "0.1 m", "2 mm"), "\"wide\": {", "\"mid\": { \"bore\": \"2.4 mm\", \"roughness\": \"1.5 µm\" }, \"wide\": {");

        var inMid = Judged.Of(Pair.Edit(json, "\"tube\": \"thin\"", "\"tube\": \"mid\"")).Run("B").Velocity.MetersPerSecond;

        Assert.True(inMid > 18);
        Assert.Equal("wide", Assert.Single(Judged.Of(json).Single(FindingCodes.VelocityHigh).Cure!.Changes).To);
    }

    [Fact]
    public void A_fast_run_that_is_only_noted_has_no_cure() =>
        Assert.Null(Judged.Of(Chain("3 mm", "0.1 m", "2 mm")).Single(FindingCodes.VelocityHigh).Cure);

    [Theory]
    [InlineData("2 mm", false)]
    [InlineData("0.8 mm", true)]
    [InlineData("0.3 mm", false)]
    public void Flow_between_laminar_and_turbulent_is_noted(string orifice, bool isTransition)
    {
        var judged = Judged.Of(Chain("8 mm", "1 m", orifice).Replace("\"8 bar\"", "\"12 bar\"", StringComparison.Ordinal));

        Assert.Equal(isTransition, judged.Run("B").Reynolds is > 2000 and < 4000);
        Assert.Equal(isTransition, judged.Has(FindingCodes.TransitionFlow));
        if (isTransition) Assert.Contains("B", judged.Single(FindingCodes.TransitionFlow).Where);
    }

    [Theory]
    [InlineData("9 bar", false)]
    [InlineData("7.9 bar", true)]
    public void A_tube_fails_below_the_pressure_that_stands_in_it_with_every_outlet_shut(string marked, bool isOver)
    {
        var json = Pair.Edit(Chain("3 mm", "0.1 m", "2 mm"), "\"bore\": \"3 mm\"", $"\"workingPressure\": \"{marked}\", \"bore\": \"3 mm\"");

        var judged = Judged.Of(json);

        Assert.Equal(isOver, judged.Has(FindingCodes.OverWorkingPressure));
        if (!isOver) return;
        var finding = judged.Single(FindingCodes.OverWorkingPressure);
        Assert.Equal(Severity.Fail, finding.Severity);
        Assert.Equal(8e5, finding.Measured!.Value.Si, tolerance: 1e-6);
        Assert.Equal(7.9e5, finding.Limit!.Value.Si, tolerance: 1e-6);
        // The run's own pressure while it flows is lower: it is the shut system that counts.
        Assert.True(judged.Run("B").PressureOut.Bars - 1 < 7.9);
    }

    [Fact]
    public void A_run_below_the_supply_bears_the_weight_of_the_liquid_as_well()
    {
        var json = Pair.Edit(Chain("3 mm", "3 m", "2 mm"), "\"length\": \"3 m\"", "\"length\": \"3 m\", \"rise\": \"-3 m\"");
        json = Pair.Edit(json, "\"bore\": \"3 mm\"", "\"workingPressure\": \"8.2 bar\", \"bore\": \"3 mm\"");

        var finding = Judged.Of(json).Single(FindingCodes.OverWorkingPressure);

        Assert.Equal(["B"], finding.Where);
        Assert.Equal(8e5 + 998.2 * 9.80665 * 3, finding.Measured!.Value.Si, tolerance: 20);
    }

    [Fact]
    public void Messages_are_written_in_the_units_asked_for()
    {
        var json = Chain("2 mm", "0.1 m", "2 mm");
        var velocity = Judged.Of(json).Run("B").Velocity.MetersPerSecond;

        string Message(UnitSystem units) => Judged.Of(json, units).Single(FindingCodes.VelocityHigh).Message;

        Assert.Contains($"{QuantityWriter.Text(velocity, QuantityKind.Speed, UnitSystem.Metric, 3)}, limit 18 m/s", Message(UnitSystem.Metric), StringComparison.Ordinal);
        Assert.Contains($"{QuantityWriter.Text(velocity, QuantityKind.Speed, UnitSystem.Us, 3)}, limit 59.1 ft/s", Message(UnitSystem.Us), StringComparison.Ordinal);
        Assert.Equal(Judged.Of(json).Single(FindingCodes.VelocityHigh).Measured, Judged.Of(json, UnitSystem.Us).Single(FindingCodes.VelocityHigh).Measured);
    }

    /// <summary>Supply, two runs and a nozzle in a row; the second run is in the tube <c>thin</c>, and the document names a wider one.</summary>
    static string Chain(string bore, string length, string orifice) => $$"""
        {
          "format": 1, "agent": "water", "ambientPressure": "1 bara", "temperature": "20 °C", "supply": { "pressure": "8 bar" },
          "tubes": { "thin": { "bore": "{{bore}}", "roughness": "1.5 µm" }, "wide": { "bore": "8.5 mm", "roughness": "1.5 µm" } },
          "points": [
            { "id": "source", "kind": "supply" },
            { "id": "J", "kind": "junction" },
            { "id": "n", "kind": "nozzle", "orifice": { "diameter": "{{orifice}}", "dischargeCoefficient": 0.82 } }
          ],
          "runs": [
            { "id": "A", "from": "source", "to": "J", "tube": "wide", "length": "0.1 m" },
            { "id": "B", "from": "J", "to": "n", "tube": "thin", "length": "{{length}}" }
          ]
        }
        """;
}
