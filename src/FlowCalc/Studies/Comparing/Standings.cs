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
    public static (int Order, StandingReason By) Compare(Standing one, Standing other) =>
        Deciding(one, other) is var (first, second) ? (first.Value < second.Value ? -1 : 1, first.By) : (0, StandingReason.Order);

    /// <summary>The first measures in which two differ; null where they differ in none.</summary>
    public static (StandingMeasure One, StandingMeasure Other)? Deciding(Standing one, Standing other)
    {
        foreach (var (first, second) in Measures(one).Zip(Measures(other)))
            if (first.Steps != second.Steps) return (first, second);
        return null;
    }

    /// <summary>What decides, in the order in which it does.</summary>
    public static StandingMeasure[] Measures(Standing standing) =>
    [
        new(StandingReason.NoFlow, standing.HasFlow ? 0 : 1, 0),
        new(StandingReason.Verdict, (int)standing.Verdict, 0),
        new(StandingReason.Fails, standing.Fails, 0),
        new(StandingReason.Warns, standing.Warns, 0),
        new(StandingReason.Deviation, Badness(standing), SameDeviation),
        new(StandingReason.Time, standing.NeverDone, 0),
        new(StandingReason.Time, Seconds(standing), SameTime),
    ];

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
