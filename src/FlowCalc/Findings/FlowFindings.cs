using System.Collections.Immutable;
using FlowCalc.Findings.Cures;
using FlowCalc.Flows;
using FlowCalc.Layouts;
using FlowCalc.Limits;
using FlowCalc.Quantities;

namespace FlowCalc.Findings;

/// <summary>Holds a layout and its steady flow against the rules.</summary>
public static class FlowFindings
{
    /// <summary>Judges a steady flow and, where something is wrong that a single change may mend, tries changes by solving the changed layout.</summary>
    /// <param name="layout">The layout.</param>
    /// <param name="flow">Its flow, converged.</param>
    /// <param name="units">The system of units that messages are written in.</param>
    /// <param name="cancellationToken">Stops the trials.</param>
    /// <returns>Verdict, findings and the limits applied. The same layout gives the same judgement, to the last character.</returns>
    /// <exception cref="ArgumentException"><paramref name="flow"/> has not converged or is not of this layout, or the layout states a limit that cannot be stated.</exception>
    /// <exception cref="OperationCanceledException">The token was cancelled.</exception>
    /// <remarks>A layout on which nothing is found that a change could mend is judged without any solve, save one where a tee's body is not given.</remarks>
    public static FlowJudgement Judge(Layout layout, FlowResult flow, UnitSystem units, CancellationToken cancellationToken)
    {
        var flowCase = Case(layout, flow, units, cancellationToken);
        var findings = FlowRules.Find(flowCase);
        FlowCures.Seek(flowCase, findings);
        return Judgement(flowCase, findings);
    }

    /// <summary>Judges a steady flow without looking for cures.</summary>
    /// <param name="layout">The layout.</param>
    /// <param name="flow">Its flow, converged.</param>
    /// <param name="units">The system of units that messages are written in.</param>
    /// <param name="cancellationToken">Asked throughout.</param>
    /// <returns>As <see cref="Judge"/>, no finding with a cure.</returns>
    /// <exception cref="ArgumentException"><paramref name="flow"/> has not converged or is not of this layout, or the layout states a limit that cannot be stated.</exception>
    /// <exception cref="OperationCanceledException">The token was cancelled.</exception>
    public static FlowJudgement JudgeWithoutCures(Layout layout, FlowResult flow, UnitSystem units, CancellationToken cancellationToken)
    {
        var flowCase = Case(layout, flow, units, cancellationToken);
        return Judgement(flowCase, FlowRules.Find(flowCase));
    }

    /// <summary>Counts what is found, without sentences and without trying any change.</summary>
    /// <param name="layout">The layout.</param>
    /// <param name="flow">Its flow, converged.</param>
    /// <param name="limits">The limits; see <see cref="DefaultLimits.For"/>.</param>
    /// <param name="tally">What counts.</param>
    /// <param name="cancellationToken">Asked throughout.</param>
    internal static void Tally(Layout layout, FlowResult flow, ImmutableArray<Limit> limits, FindingTally tally, CancellationToken cancellationToken)
    {
        var (flowCase, findings) = (new FlowCase(layout, flow, UnitSystem.Si, limits, cancellationToken), new FindingList(tally));
        FlowRules.Judge(flowCase, findings);
        Assumptions.Find(flow.Assumptions, findings);
    }

    static FlowCase Case(Layout layout, FlowResult flow, UnitSystem units, CancellationToken cancellationToken)
    {
        ArgumentNullException.ThrowIfNull(layout);
        ArgumentNullException.ThrowIfNull(flow);
        if (!flow.Report.Converged) throw new ArgumentException("There is nothing to judge in a flow that has not converged.", nameof(flow));
        if (flow.Runs.Length != layout.Runs.Length || flow.PointPressures.Length != layout.Points.Length || flow.Zones.Length != layout.Zones.Length)
            throw new ArgumentException("The flow is not of this layout.", nameof(flow));

        return new FlowCase(layout, flow, units, DefaultLimits.For(layout.Limits, LimitUse.Flow), cancellationToken);
    }

    static FlowJudgement Judgement(FlowCase flowCase, FindingList findings) => new(findings.Verdict, findings.InOrder(), flowCase.Limits);
}
