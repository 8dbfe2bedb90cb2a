using System.Collections.Immutable;
using FlowCalc.Discharge;
using FlowCalc.Findings.Discharges;
using FlowCalc.Layouts;
using FlowCalc.Limits;
using FlowCalc.Quantities;

namespace FlowCalc.Findings;

/// <summary>Holds a layout's discharge, in each of its cases, against the rules.</summary>
public static class DischargeFindings
{
    /// <summary>Judges a discharge. What is found at one place in several cases is one finding, of the worst case, which counts the others.</summary>
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
        ArgumentNullException.ThrowIfNull(layout);
        ArgumentNullException.ThrowIfNull(discharge);
        if (layout.Supply is not BottleSupply { Bottle: var bottle }) throw new ArgumentException("A discharge needs a bottle.", nameof(layout));
        if (discharge.Cases.IsDefaultOrEmpty) throw new ArgumentException("There is nothing to judge in a discharge without cases.", nameof(discharge));
        if (!IsOf(layout, discharge)) throw new ArgumentException("The discharge is not of this layout.", nameof(discharge));

        var limits = DefaultLimits.For(layout.Limits, LimitUse.Discharge);
        var findings = new FindingList();
        Find(new JudgedDischarge(layout, bottle, discharge, units, limits, cancellationToken), findings);

        var ordered = findings.InOrder();
        return new DischargeJudgement(ordered.IsEmpty ? Severity.Pass : ordered[0].Severity, ordered, limits);
    }

    /// <summary>Counts what is found, without sentences.</summary>
    /// <param name="layout">The layout, whose supply is a bottle.</param>
    /// <param name="discharge">Its discharge.</param>
    /// <param name="limits">The limits; see <see cref="DefaultLimits.For"/>.</param>
    /// <param name="tally">What counts.</param>
    /// <param name="cancellationToken">Asked throughout.</param>
    internal static void Tally(Layout layout, DischargeResult discharge, ImmutableArray<Limit> limits, FindingTally tally, CancellationToken cancellationToken) =>
        Find(new JudgedDischarge(layout, ((BottleSupply)layout.Supply).Bottle, discharge, UnitSystem.Si, limits, cancellationToken), new FindingList(tally));

    static void Find(JudgedDischarge judged, FindingList findings)
    {
        CaseFailures.Find(judged, findings);
        LiquidParts.Find(judged, findings);
        RestPressures.Find(judged, findings);
        RequiredTimes.Find(judged, findings);
        DeliveredParts.Find(judged, findings);
        DipTubes.Find(judged, findings);
        MassShares.Find(judged, findings);
        Arrivals.Find(judged, findings);
        PressureRanges.Find(judged, findings);
        LineSurges.Find(judged, findings);
        ExpandingStates.Find(judged, findings);
        Assumptions.Find(judged.Discharge.Assumptions, findings);
    }

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
