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
        for (var at = 0; at < findings.Entries.Count; at++)
        {
            var entry = findings.Entries[at];
            if (entry.Finding.Severity < Severity.Warn) continue;
            var tried = 0;
            Cure? cure = null;
            foreach (var change in MountRemedies.For(entry, judged))
            {
                if (left-- <= 0) break;
                tried++;
                cure = Tried(judged, change, entry, new Aim(entry, findings), cancellationToken);
                if (cure is not null) break;
            }
            if (cure is not null) findings.Replace(at, entry.Finding with { Cure = cure });
            else if (tried > 0)
                findings.Replace(at, entry.Finding with { Message = CureWords.Without(entry.Finding.Message, $"{Wording.Count(tried, "change")} tried{(left <= 0 ? ", then the search was cut short" : "")}") });
        }
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
