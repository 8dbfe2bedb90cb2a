using FlowCalc.Discharge;
using FlowCalc.Findings;
using FlowCalc.Quantities;
using UnitsNet;

namespace FlowCalc.Tests.Findings.Discharges;

public class CaseFailureFindingsTests
{
    [Fact]
    public void A_case_below_freezing_fails_with_both_temperatures_and_no_attitude()
    {
        var judgement = Discharged.Judge(
            Discharged.Sound, Discharged.At(-10).Failing(DischargeFailureKind.BelowFreezing), Discharged.At(-10, Discharged.OnTheRoof).Failing(DischargeFailureKind.BelowFreezing));

        var finding = Assert.Single(judgement.Findings);
        Assert.Equal((FindingCodes.BelowFreezing, Severity.Fail, "-10 °C"), (finding.Code, finding.Severity, finding.Case));
        Assert.Equal(new Measure(263.15, QuantityKind.Temperature), finding.Measured);
        Assert.Equal(273.15, finding.Limit!.Value.Si, tolerance: 0.01);
        Assert.Contains("below its freezing point of 0 °C", finding.Message, StringComparison.Ordinal);
        Assert.DoesNotContain("other", finding.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Of_frozen_temperatures_the_coldest_is_told_and_the_others_counted()
    {
        var finding = Discharged.Judge(Discharged.At(-5).Failing(DischargeFailureKind.BelowFreezing), Discharged.At(-20).Failing(DischargeFailureKind.BelowFreezing)).Single(FindingCodes.BelowFreezing);

        Assert.Equal("-20 °C", finding.Case);
        Assert.EndsWith("; also, and no worse, at 1 other temperature.", finding.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_case_outside_the_data_fails_with_the_end_that_it_is_beyond()
    {
        var layout = Discharged.Layout();

        var finding = Discharged.Judge(layout, Discharged.At(400).Failing(DischargeFailureKind.OutsideData)).Single(FindingCodes.OutsideAgentData);

        Assert.Equal(Severity.Fail, finding.Severity);
        Assert.Equal(layout.Agent.HighestTemperature, finding.Limit!.Value.Si);
    }

    [Fact]
    public void A_liquid_that_boils_as_it_comes_out_fails_with_its_vapour_pressure()
    {
        var layout = Discharged.Layout(("\"ambientPressure\": \"1 bara\"", "\"ambientPressure\": \"0.1 bara\""));

        var finding = Discharged.Judge(layout, Discharged.At(60).Failing(DischargeFailureKind.Boiling)).Single(FindingCodes.BelowVapourPressure);

        Assert.Equal(Severity.Fail, finding.Severity);
        Assert.Equal(0, finding.Measured!.Value.Si);
        // Saturation pressure of water at 60 °C 19.95 kPa, common steam tables, from memory.
        Assert.Equal(19.95e3 - 10e3, finding.Limit!.Value.Si, tolerance: 50);
    }

    [Fact]
    public void A_bottle_full_of_liquid_fails_though_the_limit_is_wider()
    {
        var full = Discharged.Sound.Failing(DischargeFailureKind.LiquidFull) with { LiquidPart = 1.02, StartPressure = null };
        var wide = Discharged.WithLimits("""{ "bottle-liquid-full": { "warn": 1.1, "fail": 1.2 } }""");

        Assert.All([Discharged.Judge(full), Discharged.Judge(wide, full)], judgement => Assert.Equal(Severity.Fail, judgement.Single(FindingCodes.BottleLiquidFull).Severity));
    }

    [Fact]
    public void A_nearly_full_bottle_is_warned_of_at_the_temperature_where_it_is_fullest()
    {
        var finding = Discharged.Judge(Discharged.Sound with { LiquidPart = 0.951 }, Discharged.At(60) with { LiquidPart = 0.97 }).Single(FindingCodes.BottleLiquidFull);

        Assert.Equal((Severity.Warn, "60 °C", 0.97), (finding.Severity, finding.Case, finding.Measured!.Value.Si));
    }

    [Fact]
    public void A_bottle_without_pressure_fails()
    {
        var finding = Discharged.Judge(Discharged.Sound.Failing(DischargeFailureKind.NoPressure) with { StartPressure = Pressure.FromBars(0.98) }).Single(FindingCodes.NoDrivingPressure);

        Assert.Equal(Severity.Fail, finding.Severity);
        Assert.Equal(-2000, finding.Measured!.Value.Si, tolerance: 1e-6);
        Assert.Equal(0, finding.Limit!.Value.Si);
    }

    [Fact]
    public void A_disc_that_does_not_burst_is_told_with_its_pressure()
    {
        var layout = Discharged.Layout(("\"workingPressure\": \"25 bar\"", "\"workingPressure\": \"25 bar\", \"outlet\": { \"burstPressure\": \"16 bar\" }"));

        var finding = Discharged.Judge(layout, Discharged.Sound.Failing(DischargeFailureKind.NoPressure)).Single(FindingCodes.NoDrivingPressure);

        Assert.Equal(16e5, finding.Limit!.Value.Si, tolerance: 1e-6);
        Assert.Contains("holds 14 bar, below the 16 bar that burst the disc", finding.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_case_that_was_not_solved_fails_with_what_the_solver_said()
    {
        var finding = Discharged.Judge(Discharged.Sound.Failing(DischargeFailureKind.NotSolved)).Single(FindingCodes.DischargeNotSolved);

        Assert.Equal((Severity.Fail, "20 °C, upright"), (finding.Severity, finding.Case));
        Assert.Null(finding.Measured);
        Assert.EndsWith("has no answer: Said by the solver.", finding.Message, StringComparison.Ordinal);
    }
}
