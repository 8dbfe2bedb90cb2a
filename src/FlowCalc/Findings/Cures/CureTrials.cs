namespace FlowCalc.Findings.Cures;

/// <summary>Tries the changes for every failure and warning in turn, as long as they can be afforded, and keeps the first that cures.</summary>
static class CureTrials
{
    /// <summary>Puts cures to findings; where no change cures one, its message says how many were tried.</summary>
    /// <param name="findings">The findings.</param>
    /// <param name="remedies">The changes for one of them, likeliest first; none for what is not tried.</param>
    /// <param name="affords">Whether the work that is left is enough for a change; takes that work off.</param>
    /// <param name="tried">The cure that a change is; null for none.</param>
    public static void Add<TChange>(FindingList findings, Func<FoundEntry, IEnumerable<TChange>> remedies, Func<TChange, bool> affords, Func<TChange, FoundEntry, Aim, Cure?> tried)
    {
        for (var at = 0; at < findings.Entries.Count; at++)
        {
            var entry = findings.Entries[at];
            if (entry.Finding.Severity < Severity.Warn) continue;
            var (count, isCut) = (0, false);
            Cure? cure = null;
            foreach (var change in remedies(entry))
            {
                isCut = !affords(change);
                if (isCut) break;
                count++;
                cure = tried(change, entry, new Aim(entry, findings));
                if (cure is not null) break;
            }
            if (cure is not null) findings.Replace(at, entry.Finding with { Cure = cure });
            else if (count > 0)
                findings.Replace(at, entry.Finding with { Message = CureWords.Without(entry.Finding.Message, $"{Wording.Count(count, "change")} tried{(isCut ? ", then the search was cut short" : "")}") });
        }
    }
}
