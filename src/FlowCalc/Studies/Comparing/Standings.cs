using System.Collections.Immutable;
using FlowCalc.Discharge;
using FlowCalc.Findings;
using FlowCalc.Findings.Cures;
using FlowCalc.Flows;
using UnitsNet;

namespace FlowCalc.Studies.Comparing;

/// <summary>Works out how good a layout is, and which of two is better.</summary>
static class Standings
{
    // Deviations and times that differ by less are one for a ranking: they are the error of the solve, not the design's.
    const double SameDeviation = 1e-4, SameTime = 1e-3;

    public static Standing Of(FlowResult flow, FlowJudgement? flowJudgement, DischargeResult? discharge, DischargeJudgement? dischargeJudgement)
    {
        ImmutableArray<Finding> findings = [.. flowJudgement?.Findings ?? [], .. dischargeJudgement?.Findings ?? []];
        var verdict = (Severity)Math.Max((int)(flowJudgement?.Verdict ?? Severity.Fail), (int)(dischargeJudgement?.Verdict ?? Severity.Pass));
        var (deviation, nozzle) = discharge is null ? WorstOf(flow) : WorstOf(discharge);
        var (slowest, neverDone) = discharge is null ? (null, 0) : Slowest(discharge);
        return new Standing(flowJudgement is not null, verdict, Places(findings, Severity.Fail), Places(findings, Severity.Warn), deviation, nozzle, slowest, neverDone);
    }

    /// <summary>Which of two is better, and by what.</summary>
    public static (int Order, StandingReason By) Compare(Standing one, Standing other)
    {
        ReadOnlySpan<(double One, double Other, double Same, StandingReason By)> steps =
        [
            (one.HasFlow ? 0 : 1, other.HasFlow ? 0 : 1, 0, StandingReason.NoFlow),
            ((int)one.Verdict, (int)other.Verdict, 0, StandingReason.Verdict),
            (one.Fails, other.Fails, 0, StandingReason.Fails),
            (one.Warns, other.Warns, 0, StandingReason.Warns),
            (Badness(one), Badness(other), SameDeviation, StandingReason.Deviation),
            (one.NeverDone, other.NeverDone, 0, StandingReason.Time),
            (Seconds(one), Seconds(other), SameTime, StandingReason.Time),
        ];
        foreach (var (first, second, same, by) in steps)
            if (Steps(first, same) != Steps(second, same)) return (first < second ? -1 : 1, by);
        return (0, StandingReason.Order);
    }

    // Whole steps rather than a least difference, or a ranking of three could go in a circle.
    static double Steps(double value, double same) => same > 0 ? Math.Round(value / same) : value;

    static double Badness(Standing standing) => standing.WorstDeviation is { } deviation ? Imbalance.Badness(deviation) : 0;

    static double Seconds(Standing standing) => standing.SlowestTime?.Seconds ?? 0;

    static int Places(ImmutableArray<Finding> findings, Severity severity)
    {
        HashSet<(string Code, string Where)> places = [];
        foreach (var finding in findings)
        {
            if (finding.Severity != severity) continue;
            if (finding.Where.IsEmpty) places.Add((finding.Code, ""));
            foreach (var id in finding.Where) places.Add((finding.Code, id));
        }
        return places.Count;
    }

    static (double? Deviation, int Nozzle) WorstOf(FlowResult flow) =>
        WorstOf(flow.Nozzles.Select(nozzle => (NozzleShares.IsClosed(nozzle) ? -1 : NozzleShares.Deviation(nozzle), nozzle.Point)));

    static (double? Deviation, int Nozzle) WorstOf(DischargeResult discharge) =>
        WorstOf(discharge.Cases.SelectMany(one => one.Nozzles).Select(nozzle => (NozzleShares.Telling(nozzle.Deviation), nozzle.Point)));

    static (double? Deviation, int Nozzle) WorstOf(IEnumerable<(double? Deviation, int Point)> nozzles)
    {
        var worst = ((double?)null, -1);
        foreach (var (deviation, point) in nozzles)
            if (deviation is { } known && (worst.Item1 is not { } before || Imbalance.Badness(known) > Imbalance.Badness(before))) worst = (known, point);
        return worst;
    }

    static (Duration? Slowest, int NeverDone) Slowest(DischargeResult discharge)
    {
        var (slowest, never) = ((Duration?)null, 0);
        foreach (var one in discharge.Cases)
        {
            if ((discharge.Requirement is null ? one.Time95 : one.RequiredTime) is not { } time) never++;
            else if (slowest is not { } before || time > before) slowest = time;
        }
        return (slowest, never);
    }
}
