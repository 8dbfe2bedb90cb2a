using System.Collections.Immutable;
using FlowCalc.Findings.Mounts;
using FlowCalc.Layouts;
using FlowCalc.Limits;
using FlowCalc.Mounts;
using FlowCalc.Quantities;

namespace FlowCalc.Findings;

/// <summary>Holds a layout's mount against the rules.</summary>
public static class MountFindings
{
    /// <summary>Judges a mount.</summary>
    /// <param name="layout">A layout with a mount.</param>
    /// <param name="result">Its mount, worked out.</param>
    /// <param name="units">The system of units that messages are written in.</param>
    /// <param name="cancellationToken">Asked throughout.</param>
    /// <returns>Verdict, findings without cures, and the limits applied. The same mount gives the same judgement, to the last character.</returns>
    /// <exception cref="ArgumentException">The layout has no mount, or states a limit that cannot be stated.</exception>
    /// <exception cref="OperationCanceledException">The token was cancelled.</exception>
    public static MountJudgement Judge(Layout layout, MountResult result, UnitSystem units, CancellationToken cancellationToken)
    {
        var judged = Judged(layout, result, units);
        cancellationToken.ThrowIfCancellationRequested();
        return Judgement(judged, Found(judged));
    }

    /// <summary>Judges a mount and looks for the change that clears each failure and warning, by working the changed mount out.</summary>
    /// <param name="layout">A layout with a mount.</param>
    /// <param name="result">Its mount, worked out.</param>
    /// <param name="units">The system of units that messages are written in.</param>
    /// <param name="cancellationToken">Asked throughout.</param>
    /// <returns>Verdict, findings with cures, and the limits applied.</returns>
    /// <exception cref="ArgumentException">The layout has no mount, or states a limit that cannot be stated.</exception>
    /// <exception cref="OperationCanceledException">The token was cancelled.</exception>
    public static MountJudgement JudgeWithCures(Layout layout, MountResult result, UnitSystem units, CancellationToken cancellationToken)
    {
        var judged = Judged(layout, result, units);
        var findings = Found(judged);
        MountCures.Add(judged, findings, cancellationToken);
        return Judgement(judged, findings);
    }

    static JudgedMount Judged(Layout layout, MountResult result, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(layout);
        ArgumentNullException.ThrowIfNull(result);
        if (layout.Mount is not { } mount) throw new ArgumentException("The layout has no mount.", nameof(layout));
        return new JudgedMount(layout, mount, result, units, DefaultLimits.For(layout.Limits, LimitUse.Mount));
    }

    internal static FindingList Found(JudgedMount judged)
    {
        var findings = new FindingList();
        Uses.Find(judged, findings);
        BoltMarks.Find(judged, findings);
        Threads.Find(judged, findings);
        Sheets.Find(judged, findings);
        Straps.Find(judged, findings);
        Assumptions.Find(AssumptionsOf(judged), findings);
        return findings;
    }

    static MountJudgement Judgement(JudgedMount judged, FindingList findings) => new(findings.Verdict, findings.InOrder(), judged.Limits, AssumptionsOf(judged));

    static ImmutableArray<Assumption> AssumptionsOf(JudgedMount judged) => [.. judged.Layout.Assumptions, .. judged.Result.Assumptions];
}
