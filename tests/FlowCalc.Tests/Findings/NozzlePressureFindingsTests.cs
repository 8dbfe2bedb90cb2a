using FlowCalc.Findings;
using FlowCalc.Quantities;

namespace FlowCalc.Tests.Findings;

public class NozzlePressureFindingsTests
{
    const string LeftOrifice = "\"left\", \"kind\": \"nozzle\", ";

    [Theory]
    [InlineData("3 bar", "16 bar", null)]
    [InlineData("7.99 bar", "16 bar", FindingCodes.NozzleBelowRange)]
    [InlineData("1 bar", "3 bar", FindingCodes.NozzleAboveRange)]
    public void A_nozzle_outside_its_stated_range_is_warned_of(string least, string most, string? code)
    {
        var judged = Judged.Of(Pair.With(LeftOrifice, $"{LeftOrifice}\"pressureRange\": [\"{least}\", \"{most}\"], "));

        Assert.Equal(code == FindingCodes.NozzleBelowRange, judged.Has(FindingCodes.NozzleBelowRange));
        Assert.Equal(code == FindingCodes.NozzleAboveRange, judged.Has(FindingCodes.NozzleAboveRange));
        if (code is null) return;
        var finding = judged.Single(code);
        Assert.Equal(Severity.Warn, finding.Severity);
        Assert.Equal(["left"], finding.Where);
        Assert.Equal(judged.Nozzle("left").Pressure.Pascals - 1e5, finding.Measured!.Value.Si, tolerance: 1e-3);
        Assert.Equal(QuantityKind.Pressure, finding.Measured.Value.Kind);
    }

    [Fact]
    public void A_wider_run_lifts_a_nozzle_into_its_range_and_holds_when_tried()
    {
        var json = Pair.With(LeftOrifice, $"{LeftOrifice}\"pressureRange\": [\"7 bar\", \"16 bar\"], ");
        json = Pair.Edit(json, "\"tube\": \"trunk\", \"length\": \"1 m\"", "\"tube\": \"drop\", \"length\": \"1 m\"");

        var cure = Judged.Of(json).Single(FindingCodes.NozzleBelowRange).Cure!;

        var change = Assert.Single(cure.Changes);
        Assert.Equal("runs/A/tube", change.Path);
        var after = Judged.Of(Pair.Edit(json, "\"tube\": \"drop\", \"length\": \"1 m\"", $"\"tube\": \"{change.To}\", \"length\": \"1 m\""));
        Assert.Equal(after.Nozzle("left").Pressure.Pascals - 1e5, cure.After.Si, tolerance: 1e-3);
        Assert.False(after.Has(FindingCodes.NozzleBelowRange));
        Assert.Contains("within its range", cure.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("1 m", null)]
    [InlineData("2 m", Severity.Note)]
    [InlineData("8 m", Severity.Warn)]
    public void Nozzle_pressures_that_spread_are_noted_and_warned_of(string length, Severity? severity)
    {
        var judged = Judged.Of(Pair.With(Pair.Right, $"\"to\": \"right\", \"tube\": \"{(severity is null ? "feed" : "drop")}\", \"length\": \"{length}\""));

        var finding = judged.All(FindingCodes.PressureSpread).SingleOrDefault();

        Assert.Equal(severity, finding?.Severity);
        if (finding is null) return;
        var (left, right) = (judged.Nozzle("left").Pressure.Bars - 1, judged.Nozzle("right").Pressure.Bars - 1);
        Assert.Equal(["left", "right"], finding.Where);
        Assert.Equal(left / right, finding.Measured!.Value.Si, tolerance: 1e-9);
    }
}
