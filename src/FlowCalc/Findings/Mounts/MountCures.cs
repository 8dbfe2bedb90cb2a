using FlowCalc.Findings.Cures;
using FlowCalc.Layouts;
using FlowCalc.Mounts;
using FlowCalc.Quantities;

namespace FlowCalc.Findings.Mounts;

/// <summary>Looks for the change of the mount that clears a finding, by working the changed mount out and judging it again.</summary>
static class MountCures
{
    // Work is bounded by counts: so many bolts in all that are worked out over all changes tried.
    const int MostBolts = 1_000;

    /// <summary>Adds the first change that clears each failure and warning and makes nothing else fail; where none does, says how many were tried.</summary>
    public static void Add(Layout layout, FindingList findings, UnitSystem units, CancellationToken cancellationToken)
    {
        var mount = layout.Mount!;
        var left = MostBolts / (mount.Bolts.At.Length + (mount.Adapter?.Bolts.At.Length ?? 0));
        var before = findings.Places;
        for (var at = 0; at < findings.Entries.Count; at++)
        {
            var entry = findings.Entries[at];
            if (entry.Finding.Severity < Severity.Warn) continue;
            var tried = 0;
            Cure? cure = null;
            foreach (var change in MountRemedies.For(entry, mount, layout, units))
            {
                if (left-- <= 0) break;
                tried++;
                cure = Tried(layout, change, entry, before, units, cancellationToken);
                if (cure is not null) break;
            }
            if (cure is not null) findings.Replace(at, entry.Finding with { Cure = cure });
            else if (tried > 0)
                findings.Replace(at, entry.Finding with { Message = CureWords.Without(entry.Finding.Message, $"{Wording.Count(tried, "change")} tried{(left <= 0 ? ", then the search was cut short" : "")}") });
        }
    }

    static Cure? Tried(Layout layout, MountChange change, FoundEntry entry, IReadOnlyDictionary<(string Code, int Item), Severity> before, UnitSystem units, CancellationToken cancellationToken)
    {
        var changed = layout with { Mount = change.Changed };
        var result = LayoutMount.Solve(changed, cancellationToken);
        var found = MountFindings.Found(changed, result, units, cancellationToken);
        var key = (entry.Finding.Code, entry.Item);
        if (found.Places.GetValueOrDefault(key, Severity.Pass) >= entry.Finding.Severity) return null;
        if (found.Places.Any(place => place.Value == Severity.Fail && before.GetValueOrDefault(place.Key, Severity.Pass) < Severity.Fail)) return null;

        var outcome = new CureOutcome(found.Verdict, found.Count(Severity.Fail), found.Count(Severity.Warn), null, null);
        var (measured, after) = (entry.Finding.Measured ?? new Measure(1, null), MountMeasure.Of(entry, found, change.Changed, result));
        var course = entry.Finding.Measured is null ? "is cleared" : $"goes from {Text(measured, entry, units)} to {Text(after, entry, units)}";
        return new Cure($"With {change.Words}, {entry.Finding.Code} {course}{CureWords.Left(outcome)}.", change.Changes, measured, after, Clears: true, outcome);
    }

    static string Text(Measure measure, FoundEntry entry, UnitSystem units) => measure.Kind is { } kind ? Wording.Of(measure.Si, kind, units)
        : entry.Finding.Code is MountCodes.StrapCount or MountCodes.AdapterLever ? Wording.Number(measure.Si) : Wording.Percent(measure.Si);
}
