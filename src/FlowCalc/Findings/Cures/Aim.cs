namespace FlowCalc.Findings.Cures;

/// <summary>A finding for which a change is looked for.</summary>
/// <param name="entry">The finding, with its place.</param>
/// <param name="before">All that was found with it.</param>
sealed class Aim(FoundEntry entry, FindingList before)
{
    public FoundEntry Entry => entry;

    public string Code => entry.Finding.Code;

    public Severity Severity => entry.Finding.Severity;

    /// <summary>Whether a change clears it: a failure is no failure and no other has come, a warning is not even that and nothing has become a warning or worse.</summary>
    /// <param name="after">What is found with the change.</param>
    /// <param name="isBrief">Whether that is of one case alone, in which what is too slow only in the cold reads as too slow.</param>
    public bool IsClearedBy(FindingList after, bool isBrief = false)
    {
        if (Raises(after, Severity)) return false;
        foreach (var ((code, item), severity) in after.Places)
            if (severity >= Severity && IsOwn(code, item, isBrief)) return false;
        return true;
    }

    /// <summary>Whether a change makes anything as bad as that, or worse, which was less.</summary>
    public bool Raises(FindingList after, Severity least)
    {
        foreach (var (place, severity) in after.Places)
            if (severity >= least && severity > before.Places.GetValueOrDefault(place)) return true;
        return false;
    }

    /// <summary>How much of what belongs to the same fault is left with a change; a failure counts more than any number of warnings.</summary>
    public int Left(FindingList after)
    {
        const int failure = 100_000;
        var left = 0;
        foreach (var ((code, _), severity) in after.Places)
            if (CureFamilies.AreOne(code, Code)) left += severity == Severity.Fail ? failure : severity == Severity.Warn && Severity == Severity.Warn ? 1 : 0;
        return left;
    }

    bool IsOwn(string code, int item, bool isBrief) =>
        (code == Code || (isBrief && CureFamilies.AreOne(code, Code) && entry.Item < 0)) && (entry.IsMany || item == entry.Item);
}
