using FlowCalc.Findings;
using UnitsNet;

namespace FlowCalc.Tests.Findings.Discharges;

public class PressureFindingsTests
{
    [Fact]
    public void A_bottle_over_its_mark_when_warm_fails_once_for_all_attitudes()
    {
        var hot = Discharged.At(60) with { StartPressure = Pressure.FromBars(27) };

        var finding = Assert.Single(Discharged.Judge(Discharged.Sound, hot, hot with { Attitude = Discharged.OnTheRoof }).Findings);

        Assert.Equal((FindingCodes.HotOverpressure, Severity.Fail, "60 °C"), (finding.Code, finding.Severity, finding.Case));
        Assert.Equal((26e5, 25e5), (Math.Round(finding.Measured!.Value.Si), Math.Round(finding.Limit!.Value.Si)));
        Assert.Equal("At 60 °C the bottle holds 26 bar, above its marked working pressure of 25 bar.", finding.Message);
    }

    [Fact]
    public void Tubes_are_held_against_the_highest_pressure_of_all_cases()
    {
        var layout = Discharged.Layout(("\"workingPressure\": \"40 bar\"", "\"workingPressure\": \"16 bar\""), ("\"workingPressure\": \"25 bar\"", "\"workingPressure\": \"60 bar\""));
        var quiet = Discharged.Sound.With(Discharged.Left, Quiet).With(Discharged.Right, Quiet);

        var judgement = Discharged.Judge(layout, quiet, quiet with { Temperature = Discharged.Celsius(60), StartPressure = Pressure.FromBars(19) });

        Assert.Equal(["A", "L", "R"], judgement.Findings.SelectMany(finding => finding.Where));
        Assert.All(judgement.Findings, finding =>
        {
            Assert.Equal((FindingCodes.OverWorkingPressure, Severity.Fail, "60 °C"), (finding.Code, finding.Severity, finding.Case));
            Assert.StartsWith("At 60 °C with every outlet shut ", finding.Message, StringComparison.Ordinal);
            Assert.Equal(18e5, finding.Measured!.Value.Si, tolerance: 1e-6);
        });
        Assert.Empty(Discharged.Judge(layout, quiet).Findings);

        static FlowCalc.Discharge.NozzleDischarge Quiet(FlowCalc.Discharge.NozzleDischarge nozzle) => nozzle with { Surge = null };
    }

    [Fact]
    public void A_blow_over_the_mark_of_the_tube_is_a_note()
    {
        var finding = Assert.Single(Discharged.Judge(Discharged.Sound.With(Discharged.Right, nozzle => nozzle with { Surge = Pressure.FromBars(29) })).Findings);

        Assert.Equal((FindingCodes.LineSurge, Severity.Note), (finding.Code, finding.Severity));
        Assert.Equal(["R"], finding.Where);
        Assert.Equal(41e5, finding.Measured!.Value.Si, tolerance: 1e-6);
        Assert.Contains("the blow of the liquid on right can add 29 bar, so that R may see up to 41 bar for a moment, above the marked 40 bar", finding.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(3.9, 13, FindingCodes.NozzleBelowRange, "left comes down to 2.9 bar")]
    [InlineData(5, 16.5, FindingCodes.NozzleAboveRange, "left comes up to 15.5 bar")]
    public void A_nozzle_that_leaves_its_range_is_warned_of(double least, double greatest, string code, string words)
    {
        var judgement = Discharged.Judge(Discharged.Sound
            .With(Discharged.Left, nozzle => nozzle with { LeastPressure = Pressure.FromBars(least), GreatestPressure = Pressure.FromBars(greatest) })
            .With(Discharged.Right, nozzle => nozzle with { LeastPressure = Pressure.FromBars(1.1) }));

        var finding = Assert.Single(judgement.Findings);
        Assert.Equal((code, Severity.Warn), (finding.Code, finding.Severity));
        Assert.Contains(words, finding.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(1.5, Severity.Pass)]
    [InlineData(1.6, Severity.Note)]
    [InlineData(2.6, Severity.Warn)]
    public void A_nozzle_that_liquid_reaches_late_is_told_with_the_first(double arrival, Severity severity)
    {
        var judgement = Discharged.Judge(Discharged.Sound.With(Discharged.Right, nozzle => nozzle with { Arrival = Discharged.Seconds(arrival) }));

        Assert.Equal(severity, judgement.Verdict);
        if (severity == Severity.Pass) return;
        var finding = judgement.Single(FindingCodes.LateArrival);
        Assert.Equal(["right", "left"], finding.Where);
        Assert.Equal(arrival - 0.5, finding.Measured!.Value.Si, tolerance: 1e-12);
    }

    [Fact]
    public void A_stated_time_moves_what_is_late() =>
        Assert.Empty(Discharged.Judge(
            Discharged.WithLimits("""{ "late-arrival": { "note": "3 s", "warn": "5 s" } }"""), Discharged.Sound.With(Discharged.Right, nozzle => nozzle with { Arrival = Discharged.Seconds(3) })).Findings);

    [Fact]
    public void A_nozzle_that_liquid_never_reaches_is_not_late() =>
        Assert.False(Discharged.Judge(Discharged.Sound.With(Discharged.Right, nozzle => nozzle with { Arrival = null })).Has(FindingCodes.LateArrival));
}
