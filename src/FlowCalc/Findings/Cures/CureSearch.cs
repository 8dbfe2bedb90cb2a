namespace FlowCalc.Findings.Cures;

/// <summary>Looks for the smallest change that clears a finding.</summary>
/// <remarks>
/// Remedies come in stages: what the document has in stock before the catalogue and parts made anew. Of the changes of the first stage that clears it the smallest is the one
/// that leaves least of the same fault elsewhere, then the one with the fewest metres of tube to replace, then the one nearest to the size of now, then the one with the best answer.
/// </remarks>
/// <param name="aim">The finding.</param>
/// <param name="attempts">What solves for it.</param>
/// <param name="before">How bad it is as it is.</param>
/// <param name="pool">What has been tried; findings of one fault share it.</param>
sealed class CureSearch(Aim aim, IAttempts attempts, double before, TriedPool pool)
{
    // A change that gains less than a twentieth of what is wrong is not worth a spanner.
    const double LeastPart = 0.05;

    // A ladder whose first step moves what is wrong by less is left.
    const double LeastMove = 0.02;

    // A ladder's last step is halved so often.
    const int Halvings = 3;

    const int MostConfirmed = 3;

    /// <summary>Tries changes, stage by stage, until one clears the finding.</summary>
    public void Run(IEnumerable<IReadOnlyList<Remedy>> stages)
    {
        foreach (var stage in stages)
        {
            foreach (var remedy in stage) Try(remedy);
            if (attempts.IsCutShort || Smallest(isDoubted: false) is not null) return;
        }
    }

    /// <summary>Of all that was tried the change, solved whole, and whether it clears the finding; null where none does it and none betters it.</summary>
    public (Attempt Attempt, bool Clears)? Choose()
    {
        if ((Smallest(isDoubted: false) ?? Smallest(isDoubted: true)) is { } clear) return (clear, true);
        return Better() is { } better ? (better, false) : null;
    }

    /// <summary>What was tried, in words.</summary>
    public string Tried() => pool.Words(attempts.IsCutShort);

    void Try(Remedy remedy)
    {
        if (attempts.IsCutShort) return;
        if (remedy is LadderRemedy ladder) Climb(ladder);
        else Solve(remedy.Kind, ((EachRemedy)remedy).Changes);
    }

    void Climb(LadderRemedy ladder)
    {
        var (low, high) = (1.0, double.NaN);
        foreach (var ratio in ladder.Ratios)
        {
            var attempt = At(ratio);
            if (Clears(attempt)) high = ratio;
            if (!double.IsNaN(high) || attempts.IsCutShort || LeadsNowhere(attempt)) break;
            low = ratio;
        }
        if (double.IsNaN(high)) return;
        for (var halving = 0; halving < Halvings; halving++)
        {
            var middle = Math.Sqrt(low * high);
            if (Clears(At(middle))) high = middle;
            else low = middle;
        }

        Attempt? At(double ratio) => ladder.At(ratio) is { } change ? Solve(ladder.Kind, [change]).FirstOrDefault() : null;
    }

    bool Clears(Attempt? attempt) => attempt is not null && aim.IsClearedBy(attempt.Found, attempts.IsBrief);

    // A size that does not move the measure will not do so further on; of shares the worst nozzle may be another, which says nothing.
    bool LeadsNowhere(Attempt? attempt) => attempt is not null && !CureFamilies.IsOfShares(aim.Code) && attempts.Badness(attempt.Judged) > before * (1 - LeastMove);

    List<Attempt> Solve(string kind, IReadOnlyList<LayoutChange> changes)
    {
        List<Attempt> solved = [.. attempts.Try(changes).OfType<Attempt>()];
        pool.Add(kind, solved);
        return solved;
    }

    Attempt? Smallest(bool isDoubted)
    {
        var clearing = pool.Attempts.Where(attempt => attempt.Change.Doubt is not null == isDoubted && aim.IsClearedBy(attempt.Found, attempts.IsBrief))
            .OrderBy(attempt => aim.Left(attempt.Found)).ThenBy(attempt => attempt.Change.Length).ThenBy(attempt => Math.Round(attempt.Change.Step, 6))
            .ThenBy(attempt => Math.Round(attempts.Badness(attempt.Judged), 6)).Take(MostConfirmed);
        foreach (var attempt in clearing)
            if (attempts.Whole(attempt) is { } whole && aim.IsClearedBy(whole.Found)) return whole;
        return null;
    }

    // Out of nothing at all, which counts as infinitely bad, any flow is a gain.
    Attempt? Better()
    {
        var better = pool.Attempts.Where(attempt => !aim.Raises(attempt.Found, Severity.Fail) && IsGain(attempts.Badness(attempt.Judged))).ToList();
        if (better.Exists(attempt => attempt.Change.Doubt is null)) better.RemoveAll(attempt => attempt.Change.Doubt is not null);
        foreach (var attempt in better.OrderBy(attempt => Math.Round(attempts.Badness(attempt.Judged), 6)).ThenBy(attempt => attempt.Change.Length).ThenBy(attempt => Math.Round(attempt.Change.Step, 6)).Take(1))
            if (attempts.Whole(attempt) is { } whole && !aim.Raises(whole.Found, Severity.Fail) && IsGain(attempts.Badness(whole.Judged))) return whole;
        return null;
    }

    bool IsGain(double badness) => double.IsInfinity(before) ? double.IsFinite(badness) : badness < before * (1 - LeastPart);
}
