namespace FlowCalc.Findings.Cures;

/// <summary>Changes that have been tried, and of which kinds they were.</summary>
sealed class TriedPool
{
    readonly List<Attempt> attempts = [];
    readonly HashSet<string> keys = [];
    readonly List<string> kinds = [];

    /// <summary>The attempts, each change once, in the order in which they were made.</summary>
    public IReadOnlyList<Attempt> Attempts => attempts;

    /// <summary>Adds attempts; a ladder may come to the same size twice, and a change may stand in two stages.</summary>
    /// <param name="kind">What the changes are, in words.</param>
    /// <param name="solved">Those that were solved.</param>
    public void Add(string kind, IReadOnlyList<Attempt> solved)
    {
        if (solved.Count > 0 && !kinds.Contains(kind)) kinds.Add(kind);
        foreach (var attempt in solved)
            if (keys.Add(attempt.Change.Key)) attempts.Add(attempt);
    }

    /// <summary>What was tried, in words.</summary>
    /// <param name="isCutShort">Whether more would have been tried.</param>
    public string Words(bool isCutShort)
    {
        var cut = isCutShort ? "; the search ended there because of the layout's size" : "";
        var which = kinds.Count == 0 ? "" : $" ({string.Join(", ", kinds)})";
        return $"{Wording.Count(attempts.Count, "single change")} tried{which}{cut}";
    }
}
