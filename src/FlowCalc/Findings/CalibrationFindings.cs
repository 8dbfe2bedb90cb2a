using FlowCalc.Calibration;
using FlowCalc.Findings.Calibration;
using FlowCalc.Findings.Cures;
using FlowCalc.Flows;
using FlowCalc.Layouts;
using FlowCalc.Limits;
using FlowCalc.Quantities;

namespace FlowCalc.Findings;

/// <summary>Holds what the readings of a test say against the rules.</summary>
public static class CalibrationFindings
{
    /// <summary>Judges a calibration, and the flow of the layout as built.</summary>
    /// <param name="layout">The layout as drawn; it has a test.</param>
    /// <param name="result">What its readings say.</param>
    /// <param name="units">The system of units that messages are written in.</param>
    /// <param name="cancellationToken">Asked throughout.</param>
    /// <returns>Verdict, findings, limits and changes. The same result gives the same judgement, to the last character.</returns>
    /// <exception cref="ArgumentException">The layout has no test, the result has no answer, or the layout states a limit that cannot be stated.</exception>
    /// <exception cref="OperationCanceledException">The token was cancelled.</exception>
    public static CalibrationJudgement Judge(Layout layout, CalibrationResult result, UnitSystem units, CancellationToken cancellationToken)
    {
        ArgumentNullException.ThrowIfNull(layout);
        ArgumentNullException.ThrowIfNull(result);
        if (layout.Measured is null) throw new ArgumentException("The layout has no test.", nameof(layout));
        if (result.Failure is not null) throw new ArgumentException("There is nothing to judge in a calibration without an answer.", nameof(result));

        var judged = new JudgedCalibration(layout, result, units, DefaultLimits.For(layout.Limits, LimitUse.Calibration));
        var drawn = Outcome(layout, result.DrawnFlow!, units, cancellationToken);
        var built = ReferenceEquals(result.Built, layout) ? drawn : Outcome(result.Built!, result.BuiltFlow!, units, cancellationToken);
        var findings = new FindingList();
        LikelyCause.Find(judged, findings);
        Doubts.Find(judged, findings);
        AsBuilt.Find(judged, drawn, built, findings);
        Assumptions.Find(layout.Measured.Assumptions, findings);
        return new CalibrationJudgement(findings.Verdict, findings.InOrder(), judged.Limits, BuiltChanges.Of(judged), drawn, built);
    }

    static CureOutcome Outcome(Layout layout, FlowResult flow, UnitSystem units, CancellationToken cancellationToken)
    {
        var found = FlowFindings.JudgeWithoutCures(layout, flow, units, cancellationToken);
        var (_, worst) = Imbalance.Worst(flow);
        var nozzle = worst < 0 ? null : flow.Nozzles[worst];
        return new CureOutcome(
            found.Verdict, found.Findings.Count(finding => finding.Severity == Severity.Fail), found.Findings.Count(finding => finding.Severity == Severity.Warn),
            nozzle is null ? null : layout.Points[nozzle.Point].Id, nozzle?.Deviation);
    }
}
