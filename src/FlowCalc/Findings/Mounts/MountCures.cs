using FlowCalc.Findings.Cures;
using FlowCalc.Mounts;
using FlowCalc.Quantities;

namespace FlowCalc.Findings.Mounts;

/// <summary>Looks for the change of the mount that clears a finding, by working the changed mount out and judging it again.</summary>
static class MountCures
{
    // Work is bounded by counts over all changes tried: so many bolts in all, and so many bolts times loads.
    const int MostBolts = 1_000, MostLoads = 13_000;

    /// <summary>Adds the first change that clears each failure and warning and makes nothing else fail; where none does, says how many were tried.</summary>
    public static void Add(JudgedMount judged, FindingList findings, CancellationToken cancellationToken)
    {
        var mount = judged.Mount;
        var bolts = mount.Bolts.At.Length + (mount.Adapter?.Bolts.At.Length ?? 0);
        var left = Math.Min(MostBolts / bolts, MostLoads / (bolts * Math.Max(1, mount.Loads.Length)));
        CureTrials.Add(findings, entry => MountRemedies.For(entry, judged), _ => left-- > 0, (change, entry, aim) => Tried(judged, change, entry, aim, cancellationToken));
    }

    static Cure? Tried(JudgedMount judged, MountChange change, FoundEntry entry, Aim aim, CancellationToken cancellationToken)
    {
        var changed = judged.Layout with { Mount = change.Changed };
        var result = LayoutMount.Solve(changed, cancellationToken);
        var found = MountFindings.Found(new JudgedMount(changed, change.Changed, result, judged.Units, judged.Limits));
        // A warning may go for another here, a failure for none.
        if (found.Places.GetValueOrDefault((entry.Finding.Code, entry.Item), Severity.Pass) >= entry.Finding.Severity || aim.Raises(found, Severity.Fail)) return null;

        var outcome = new CureOutcome(found.Verdict, found.Count(Severity.Fail), found.Count(Severity.Warn), null, null);
        var (measured, after) = (entry.Finding.Measured ?? new Measure(1, null), MountMeasure.Of(entry, found, change.Changed, result));
        var course = entry.Finding.Measured is null ? "is cleared" : $"goes from {Text(measured, entry, judged.Units)} to {Text(after, entry, judged.Units)}";
        return new Cure($"With {change.Words}, {entry.Finding.Code} {course}{CureWords.Left(outcome)}.", change.Changes, measured, after, Clears: true, outcome);
    }

    static string Text(Measure measure, FoundEntry entry, UnitSystem units) => measure.Kind is { } kind ? Wording.Of(measure.Si, kind, units)
        : entry.Finding.Code is MountCodes.StrapCount or MountCodes.AdapterLever ? Wording.Number(measure.Si) : Wording.Percent(measure.Si);
}
