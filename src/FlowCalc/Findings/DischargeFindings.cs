using System.Collections.Immutable;
using FlowCalc.Discharge;
using FlowCalc.Findings.Cures;
using FlowCalc.Findings.Discharges;
using FlowCalc.Layouts;
using FlowCalc.Limits;
using FlowCalc.Quantities;

namespace FlowCalc.Findings;

/// <summary>Holds a layout's discharge, in each of its cases, against the rules.</summary>
public static class DischargeFindings
{
    /// <summary>Judges a discharge, without looking for cures. What is found at one place in several cases is one finding, of the worst case, which counts the others.</summary>
    /// <param name="layout">The layout.</param>
    /// <param name="discharge">Its discharge.</param>
    /// <param name="units">The system of units that messages are written in.</param>
    /// <param name="cancellationToken">Asked throughout.</param>
    /// <returns>Verdict, findings and the limits applied. The same discharge gives the same judgement, to the last character.</returns>
    /// <exception cref="ArgumentException">
    /// <paramref name="discharge"/> is not of this layout or has no case, the layout's supply is no bottle, or the layout states a limit that cannot be stated.
    /// </exception>
    /// <exception cref="OperationCanceledException">The token was cancelled.</exception>
    public static DischargeJudgement Judge(Layout layout, DischargeResult discharge, UnitSystem units, CancellationToken cancellationToken)
    {
        var judged = Case(layout, discharge, units, cancellationToken);
        return Judgement(judged, DischargeRules.Find(judged));
    }

    /// <summary>Judges a discharge and, where something fails that a single change may mend, tries changes by following the changed layout's discharge.</summary>
    /// <param name="layout">The layout.</param>
    /// <param name="discharge">Its discharge, as <see cref="LayoutDischarge"/> gives it.</param>
    /// <param name="units">The system of units that messages are written in.</param>
    /// <param name="scheduler">Where cases and changes run beside the caller's thread; it does not change the judgement.</param>
    /// <param name="cancellationToken">Stops the trials.</param>
    /// <returns>As <see cref="Judge"/>, with cures.</returns>
    /// <exception cref="ArgumentException">As of <see cref="Judge"/>, or not every case of the layout is there.</exception>
    /// <exception cref="OperationCanceledException">The token was cancelled.</exception>
    public static DischargeJudgement JudgeWithCures(Layout layout, DischargeResult discharge, UnitSystem units, TaskScheduler scheduler, CancellationToken cancellationToken)
    {
        ArgumentNullException.ThrowIfNull(scheduler);
        var judged = Case(layout, discharge, units, cancellationToken);
        if (discharge.Cases.Length != LayoutDischarge.CasesOf(layout)) throw new ArgumentException("Cures are found in all cases of the layout.", nameof(discharge));
        var findings = DischargeRules.Find(judged);
        DischargeCures.Seek(judged, findings, scheduler);
        return Judgement(judged, findings);
    }

    /// <summary>Counts what is found, without sentences.</summary>
    /// <param name="layout">The layout, whose supply is a bottle.</param>
    /// <param name="discharge">Its discharge.</param>
    /// <param name="limits">The limits; see <see cref="DefaultLimits.For"/>.</param>
    /// <param name="tally">What counts.</param>
    /// <param name="cancellationToken">Asked throughout.</param>
    internal static void Tally(Layout layout, DischargeResult discharge, ImmutableArray<Limit> limits, FindingTally tally, CancellationToken cancellationToken) =>
        DischargeRules.Find(new JudgedDischarge(layout, ((BottleSupply)layout.Supply).Bottle, discharge, UnitSystem.Si, limits, cancellationToken), new FindingList(tally));

    static JudgedDischarge Case(Layout layout, DischargeResult discharge, UnitSystem units, CancellationToken cancellationToken)
    {
        ArgumentNullException.ThrowIfNull(layout);
        ArgumentNullException.ThrowIfNull(discharge);
        if (layout.Supply is not BottleSupply { Bottle: var bottle }) throw new ArgumentException("A discharge needs a bottle.", nameof(layout));
        if (discharge.Cases.IsDefaultOrEmpty) throw new ArgumentException("There is nothing to judge in a discharge without cases.", nameof(discharge));
        if (!IsOf(layout, discharge)) throw new ArgumentException("The discharge is not of this layout.", nameof(discharge));

        return new JudgedDischarge(layout, bottle, discharge, units, DefaultLimits.For(layout.Limits, LimitUse.Discharge), cancellationToken);
    }

    static DischargeJudgement Judgement(JudgedDischarge judged, FindingList findings) => new(findings.Verdict, findings.InOrder(), judged.Limits);

    static bool IsOf(Layout layout, DischargeResult discharge)
    {
        var nozzles = 0;
        foreach (var point in layout.Points)
            if (point is Nozzle) nozzles++;
        foreach (var one in discharge.Cases)
        {
            if (one.StartPressure is not null && !layout.Agent.Covers(one.Temperature.Kelvins)) return false;
            if (one.Failure is not null) continue;
            if (one.Nozzles.Length != nozzles || one.Zones.Length != layout.Zones.Length) return false;
            foreach (var nozzle in one.Nozzles)
                if (!(nozzle.Point >= 0 && nozzle.Point < layout.Points.Length && layout.Points[nozzle.Point] is Nozzle)) return false;
        }
        return true;
    }
}
