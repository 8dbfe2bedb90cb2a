using FlowCalc.Findings.CutLists;
using FlowCalc.Layouts;
using FlowCalc.Limits;
using FlowCalc.Quantities;
using FlowCalc.Routes;

namespace FlowCalc.Findings;

/// <summary>Holds a layout's cut list against the rules.</summary>
public static class CutListFindings
{
    /// <summary>Judges a cut list.</summary>
    /// <param name="layout">The layout.</param>
    /// <param name="cutList">Its cut list.</param>
    /// <param name="units">The system of units that messages are written in.</param>
    /// <param name="cancellationToken">Asked throughout.</param>
    /// <returns>Verdict, findings and the limits applied. The same list gives the same judgement, to the last character.</returns>
    /// <exception cref="ArgumentException"><paramref name="cutList"/> is not of this layout, or the layout states a limit that cannot be stated.</exception>
    /// <exception cref="OperationCanceledException">The token was cancelled.</exception>
    public static CutListJudgement Judge(Layout layout, CutList cutList, UnitSystem units, CancellationToken cancellationToken)
    {
        ArgumentNullException.ThrowIfNull(layout);
        ArgumentNullException.ThrowIfNull(cutList);
        if (cutList.Runs.Length != layout.Runs.Length) throw new ArgumentException("The cut list is not of this layout.", nameof(cutList));

        var limits = DefaultLimits.For(layout.Limits, LimitUse.CutList);
        var judged = new JudgedCutList(layout, cutList, units, limits, cancellationToken);
        var findings = new FindingList();
        Bends.TooTight(judged, findings);
        Bends.Overlap(judged, findings);
        Joints.Find(judged, findings);
        Unplaced.Find(judged, findings);
        StockLengths.Find(judged, findings);
        Clips.Find(judged, findings);
        Ways.Find(judged, findings);
        HotPlaces.Find(judged, findings);
        Panels.Find(judged, findings);
        Assumption[] assumptions = [.. layout.Assumptions, .. cutList.Assumptions];
        Assumptions.Find([.. assumptions], findings);

        var ordered = findings.InOrder();
        return new CutListJudgement(ordered.IsEmpty ? Severity.Pass : ordered[0].Severity, ordered, limits, [.. assumptions]);
    }
}
