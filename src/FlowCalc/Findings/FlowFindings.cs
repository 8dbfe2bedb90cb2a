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
    // A cure for each of many runs would take more solves than one request is worth; the worst come first.
    const int MostCures = 5;

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
        ArgumentNullException.ThrowIfNull(layout);
        ArgumentNullException.ThrowIfNull(flow);
        if (!flow.Report.Converged) throw new ArgumentException("There is nothing to judge in a flow that has not converged.", nameof(flow));
        if (flow.Runs.Length != layout.Runs.Length || flow.PointPressures.Length != layout.Points.Length || flow.Zones.Length != layout.Zones.Length)
            throw new ArgumentException("The flow is not of this layout.", nameof(flow));

        var limits = DefaultLimits.For(layout.Limits, LimitUse.Flow);
        var findings = new FindingList();
        Find(new FlowCase(layout, flow, units, limits, cancellationToken), new Trials(Trials.SizeOf(layout), cancellationToken), findings);

        var ordered = findings.InOrder();
        return new FlowJudgement(ordered.IsEmpty ? Severity.Pass : ordered[0].Severity, ordered, limits);
    }

    /// <summary>Counts what is found, without sentences and without trying any change.</summary>
    /// <param name="layout">The layout.</param>
    /// <param name="flow">Its flow, converged.</param>
    /// <param name="limits">The limits; see <see cref="DefaultLimits.For"/>.</param>
    /// <param name="tally">What counts.</param>
    /// <param name="cancellationToken">Asked throughout.</param>
    internal static void Tally(Layout layout, FlowResult flow, ImmutableArray<Limit> limits, FindingTally tally, CancellationToken cancellationToken) =>
        Find(new FlowCase(layout, flow, UnitSystem.Si, limits, cancellationToken), new Trials(0, cancellationToken), new FindingList(tally));

    static void Find(FlowCase flowCase, Trials trials, FindingList findings)
    {
        Balance.Find(flowCase, trials, findings);
        NozzlePressures.Spread(flowCase, findings);
        VapourPressures.Find(flowCase, findings);
        Ranges(flowCase, trials, findings);
        Velocities(flowCase, trials, findings);
        RunVelocities.Transition(flowCase, findings);
        TeeSplits.Find(flowCase, findings);
        TeePorts.Find(flowCase, findings);
        if (!findings.IsTally) TeeBodies.Find(flowCase, findings);
        var cured = 0;
        Bends.Tight(flowCase, findings, hit => cured++ < MostCures ? BendCure.Of(flowCase, trials, hit) : null);
        Bends.Overlap(flowCase, findings);
        Bends.Interact(flowCase, findings);
        WorkingPressures.Find(flowCase, findings);
        BottleFilling.Find(flowCase, findings);
        AgentStates.Find(flowCase, findings);
        CorrelationRanges.Find(flowCase, findings);
        Assumptions.Find(flowCase.Flow.Assumptions, findings);
    }

    static void Ranges(FlowCase flowCase, Trials trials, FindingList findings)
    {
        if (NozzlePressures.BelowRange(flowCase) is { } below)
        {
            var worst = below.MaxBy(hit => hit.Badness).Item;
            findings.Add(FindingCodes.NozzleBelowRange, NozzlePressures.Statement, QuantityKind.Pressure, "nozzle", below,
                hit => NozzlePressures.Sentence(flowCase, hit), hit => hit.Item == worst ? PressureCure.Of(flowCase, trials, NozzleAt(flowCase, worst), hit) : null);
        }
        findings.Add(FindingCodes.NozzleAboveRange, NozzlePressures.Statement, QuantityKind.Pressure, "nozzle", NozzlePressures.AboveRange(flowCase), hit => NozzlePressures.Sentence(flowCase, hit));
    }

    static void Velocities(FlowCase flowCase, Trials trials, FindingList findings)
    {
        var high = RunVelocities.High(flowCase);
        var cured = 0;
        findings.Add(FindingCodes.VelocityHigh, flowCase.Limit(FindingCodes.VelocityHigh).Source, QuantityKind.Speed, "run", high,
            hit => RunVelocities.Sentence(flowCase, hit),
            hit => hit.Severity > Severity.Note && cured++ < MostCures ? VelocityCure.Of(flowCase, trials, hit) : null);
    }

    static int NozzleAt(FlowCase flowCase, int point)
    {
        var nozzles = flowCase.Flow.Nozzles;
        for (var nozzle = 0; nozzle < nozzles.Length; nozzle++)
            if (nozzles[nozzle].Point == point) return nozzle;
        throw new ArgumentException("No nozzle stands at that point.", nameof(point));
    }
}
