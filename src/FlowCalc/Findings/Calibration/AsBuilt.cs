using FlowCalc.Quantities;

namespace FlowCalc.Findings.Calibration;

/// <summary>Whether the system as built still does what is asked of it.</summary>
static class AsBuilt
{
    public static void Find(JudgedCalibration judged, CureOutcome drawn, CureOutcome built, FindingList findings)
    {
        if (built.Verdict != Severity.Fail) return;
        var worst = built.WorstNozzle is { } nozzle && built.WorstDeviation is { } deviation ? $", {Wording.Id(nozzle)} gets {Wording.Percent(Math.Abs(deviation))} too {(deviation < 0 ? "little" : "much")}" : "";
        findings.Add(new Finding(CalibrationCodes.AsBuiltFails, Severity.Fail, built.WorstNozzle is { } id ? [id] : [],
            $"With its own agent and supply the system as built has {Wording.Count(built.Fails, "failure")} of its flow{worst}; as drawn it has {(drawn.Fails == 0 ? "none" : Wording.Count(drawn.Fails, "failure"))}.",
            new Measure(built.Fails, null), null, "the limits of the flow", null), -1);
    }
}
