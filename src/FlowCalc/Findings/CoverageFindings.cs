using FlowCalc.Coverage;
using FlowCalc.Discharge;
using FlowCalc.Findings.Coverage;
using FlowCalc.Flows;
using FlowCalc.Layouts;
using FlowCalc.Limits;
using FlowCalc.Quantities;

namespace FlowCalc.Findings;

/// <summary>Holds where sprays land and what zones get against the rules.</summary>
public static class CoverageFindings
{
    /// <summary>Judges a coverage.</summary>
    /// <param name="layout">The layout.</param>
    /// <param name="result">Its coverage.</param>
    /// <param name="discharge">The discharge that it was worked out with; null for none.</param>
    /// <param name="flow">The steady flow that it was worked out with; null for none.</param>
    /// <param name="units">The system of units that messages are written in.</param>
    /// <param name="cancellationToken">Asked throughout.</param>
    /// <returns>Verdict, findings without cures, and the limits applied. The same coverage gives the same judgement, to the last character.</returns>
    /// <exception cref="ArgumentException">The layout states a limit that cannot be stated.</exception>
    /// <exception cref="OperationCanceledException">The token was cancelled.</exception>
    public static CoverageJudgement Judge(Layout layout, CoverageResult result, DischargeResult? discharge, FlowResult? flow, UnitSystem units, CancellationToken cancellationToken)
    {
        var judged = Judged(layout, result, discharge, flow, units, cancellationToken);
        return Judgement(judged, Found(judged));
    }

    /// <summary>Judges a coverage and looks for the change that clears each failure and warning, by working the changed layout out.</summary>
    /// <param name="layout">The layout.</param>
    /// <param name="result">Its coverage.</param>
    /// <param name="discharge">The discharge that it was worked out with; null for none.</param>
    /// <param name="flow">The steady flow that it was worked out with; null for none.</param>
    /// <param name="units">The system of units that messages are written in.</param>
    /// <param name="scheduler">Where cases of a changed layout's discharge run beside the caller's thread.</param>
    /// <param name="cancellationToken">Asked throughout.</param>
    /// <returns>Verdict, findings with cures, and the limits applied.</returns>
    /// <exception cref="ArgumentException">The layout states a limit that cannot be stated.</exception>
    /// <exception cref="OperationCanceledException">The token was cancelled.</exception>
    public static CoverageJudgement JudgeWithCures(
        Layout layout, CoverageResult result, DischargeResult? discharge, FlowResult? flow, UnitSystem units, TaskScheduler scheduler, CancellationToken cancellationToken)
    {
        var judged = Judged(layout, result, discharge, flow, units, cancellationToken);
        var findings = Found(judged);
        CoverageCures.Add(judged, findings, scheduler);
        return Judgement(judged, findings);
    }

    internal static FindingList Found(JudgedCoverage judged)
    {
        var findings = new FindingList();
        UnansweredCases.Find(judged, findings);
        Sprays.Find(judged, findings);
        ZoneNozzles.Find(judged, findings);
        FloodedZones.Find(judged, findings);
        Exposures.Find(judged, findings);
        AgentFits.NearPeople(judged, findings);
        Assumptions.Find(judged.Assumptions, findings);
        return findings;
    }

    static JudgedCoverage Judged(Layout layout, CoverageResult result, DischargeResult? discharge, FlowResult? flow, UnitSystem units, CancellationToken cancellationToken)
    {
        ArgumentNullException.ThrowIfNull(layout);
        ArgumentNullException.ThrowIfNull(result);
        return new JudgedCoverage(layout, result, discharge, flow, units, DefaultLimits.For(layout.Limits, LimitUse.Coverage), cancellationToken);
    }

    static CoverageJudgement Judgement(JudgedCoverage judged, FindingList findings) => new(findings.Verdict, findings.InOrder(), judged.Limits, judged.Assumptions);
}
