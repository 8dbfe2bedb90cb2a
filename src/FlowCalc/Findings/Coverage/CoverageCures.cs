using FlowCalc.Coverage;
using FlowCalc.Discharge;
using FlowCalc.Findings.Cures;
using FlowCalc.Quantities;

namespace FlowCalc.Findings.Coverage;

/// <summary>Looks for changes that clear what was found, by working the changed layout out and judging it again.</summary>
static class CoverageCures
{
    // Work is bounded by counts: so many pairs of nozzle and thing in all that are worked out anew, and so many discharges.
    const long MostPairs = 4_000;
    const int MostDischarges = 4;

    /// <summary>Adds the first change that clears each failure and warning and makes nothing else as bad; where none does, says how many were tried.</summary>
    public static void Add(JudgedCoverage judged, FindingList findings, TaskScheduler scheduler)
    {
        var (pairs, discharges) = (MostPairs, MostDischarges);
        var failing = new Lazy<HashSet<(string, string)>>(() => [.. FailuresOf(judged.Layout, judged.Discharge!, judged.Cancellation)]);
        CureTrials.Add(
            findings, entry => entry.IsMany ? [] : CoverageRemedies.For(entry, judged),
            change => change.MovesFlow ? discharges-- > 0 : (pairs -= 1 + LayoutCoverage.Pairs(judged.Layout)) >= 0,
            (change, entry, aim) => Tried(judged, change, entry, aim, failing, scheduler));
    }

    static Cure? Tried(JudgedCoverage judged, CoverageChange change, FoundEntry entry, Aim aim, Lazy<HashSet<(string, string)>> failing, TaskScheduler scheduler)
    {
        judged.Cancellation.ThrowIfCancellationRequested();
        var (layout, cancel) = (change.Changed, judged.Cancellation);
        var discharge = change.MovesFlow && judged.Discharge is not null ? LayoutDischarge.Solve(layout, scheduler, cancel) : judged.Discharge;
        // Another fill or charge may overfill the bottle, starve a nozzle or leave a case without an answer: a cure makes nothing of the discharge fail that did not.
        if (change.MovesFlow && discharge is not null && FailuresOf(layout, discharge, cancel).Any(failure => !failing.Value.Contains(failure))) return null;
        var after = new JudgedCoverage(layout, LayoutCoverage.Solve(layout, discharge, judged.Flow, cancel), discharge, judged.Flow, judged.Units, judged.Limits, cancel);
        var found = CoverageFindings.Found(after);
        if (!aim.IsClearedBy(found)) return null;

        var outcome = new CureOutcome(found.Verdict, found.Count(Severity.Fail), found.Count(Severity.Warn), null, null);
        var (before, now) = (Measured(judged, entry), Measured(after, entry));
        var course = entry.Finding.Code == CoverageCodes.TargetNotCovered
            ? $"{Wording.Count((int)now.Si, "spray")} {(now.Si == 1 ? "comes" : "come")} to {Wording.Id(entry.Finding.Where[0])}"
            : $"{What(entry)} goes from {Text(before, judged.Units)} to {Text(now, judged.Units)}{Level(entry)}";
        return new Cure($"With {change.Words}, {course}{CureWords.Left(outcome)}.", change.Changes, before, now, Clears: true, outcome);
    }

    static IEnumerable<(string Code, string Where)> FailuresOf(FlowCalc.Layouts.Layout layout, DischargeResult discharge, CancellationToken cancel) =>
        DischargeFindings.Judge(layout, discharge, UnitSystem.Si, cancel).Findings.Where(finding => finding.Severity == Severity.Fail).Select(finding => (finding.Code, string.Join(' ', finding.Where)));

    static Measure Measured(JudgedCoverage after, FoundEntry entry)
    {
        var (result, item) = (after.Result, entry.Item);
        return entry.Finding.Code switch
        {
            CoverageCodes.TargetNotCovered => new(result.Targets[item].Sights.Count(sight => sight.Reaches), null),
            CoverageCodes.AimedAtPerson => new(result.Persons[item].OffAxis?.Radians ?? Math.PI, QuantityKind.Angle),
            CoverageCodes.TooLittleAgent => new(result.Zones[item].Mass!.Least / result.Zones[item].Need!.Mass, null),
            CoverageCodes.OverNoael => new(result.Zones[item].Exposure!.Most / result.Zones[item].Exposure!.Unharmed!.Value, null),
            CoverageCodes.OverLoael => new(result.Zones[item].Exposure!.Most / result.Zones[item].Exposure!.Harmful!.Value, null),
            _ => new(result.Zones[item].Exposure!.Oxygen, null),
        };
    }

    static string What(FoundEntry entry) => entry.Finding.Code switch
    {
        CoverageCodes.AimedAtPerson => $"the nearest axis to {Wording.Id(entry.Finding.Where[1])}",
        CoverageCodes.TooLittleAgent => $"what zone {Wording.Id(entry.Finding.Where[0])} gets of what it needs",
        CoverageCodes.LowOxygen => $"the oxygen in zone {Wording.Id(entry.Finding.Where[0])}",
        _ => $"the concentration in zone {Wording.Id(entry.Finding.Where[0])}",
    };

    static string Level(FoundEntry entry) => entry.Finding.Code is CoverageCodes.OverNoael or CoverageCodes.OverLoael ? " of that level" : "";

    static string Text(Measure measure, UnitSystem units) => measure.Kind is { } kind ? Wording.Of(measure.Si, kind, units) : Wording.Percent(measure.Si);
}
