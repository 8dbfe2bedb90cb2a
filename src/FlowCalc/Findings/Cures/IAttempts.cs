namespace FlowCalc.Findings.Cures;

/// <summary>Solves changed layouts for one finding, and stops when enough work has been done. What was solved once is not solved again.</summary>
interface IAttempts
{
    /// <summary>Whether what <see cref="Try"/> gives is of one case alone.</summary>
    bool IsBrief { get; }

    /// <summary>Whether a solve was refused because enough had been done.</summary>
    bool IsCutShort { get; }

    /// <summary>Solves changed layouts, side by side where that is worth it.</summary>
    /// <param name="changes">The changes.</param>
    /// <returns>One entry a change, in their order; null where there is no answer, or where enough has been done.</returns>
    IReadOnlyList<Attempt?> Try(IReadOnlyList<LayoutChange> changes);

    /// <summary>The whole answer with a change; null where enough has been done.</summary>
    Attempt? Whole(Attempt attempt);

    /// <summary>What is wrong with an answer at the finding's place; less is better.</summary>
    double Badness(JudgedLayout judged);
}
