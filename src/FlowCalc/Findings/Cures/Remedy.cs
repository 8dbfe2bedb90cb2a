namespace FlowCalc.Findings.Cures;

/// <summary>Changes of one kind.</summary>
/// <param name="Kind">The kind in words, such as <c>wider tubes</c>.</param>
abstract record Remedy(string Kind)
{
    /// <summary>Changes to be tried each for itself.</summary>
    public static Remedy Each(string kind, IEnumerable<LayoutChange> changes) => new EachRemedy(kind, changes);

    /// <summary>A size that moves step by step until it clears the finding, and then back as far as it still does.</summary>
    /// <param name="kind">The kind in words.</param>
    /// <param name="at">The change at a ratio to the size of now; null where there is none.</param>
    /// <param name="ratios">The steps, the smallest change first.</param>
    public static Remedy Ladder(string kind, Func<double, LayoutChange?> at, params double[] ratios) => new LadderRemedy(kind, at, ratios);
}

/// <summary>Changes to be tried each for itself; made when they are first asked for.</summary>
sealed record EachRemedy(string Kind, IEnumerable<LayoutChange> Source) : Remedy(Kind)
{
    /// <summary>The changes.</summary>
    public IReadOnlyList<LayoutChange> Changes => field ??= [.. Source];
}

/// <summary>A size that moves step by step.</summary>
sealed record LadderRemedy(string Kind, Func<double, LayoutChange?> At, double[] Ratios) : Remedy(Kind);
