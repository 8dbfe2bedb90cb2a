namespace FlowCalc.Findings.Cures;

/// <summary>Changes tried by solving their steady flow.</summary>
/// <param name="flowCase">The layout as it is.</param>
/// <param name="trials">What solves, and counts.</param>
sealed class FlowAttempts(FlowCase flowCase, Trials trials)
{
    readonly Dictionary<string, Attempt?> solved = [];
    readonly Dictionary<string, Attempt> whole = [];

    /// <summary>Whether a solve was refused because enough had been done.</summary>
    public bool IsCutShort => trials.IsCutShort;

    /// <summary>The flow with a change and what is found in it; null where there is none, or where enough has been done.</summary>
    public Attempt? Try(LayoutChange change)
    {
        if (solved.TryGetValue(change.Key, out var known)) return known;
        if (trials.Solve(change.Changed) is not { } flow)
        {
            if (!trials.IsCutShort) solved.Add(change.Key, null);
            return null;
        }
        var judged = new FlowCase(change.Changed, flow, flowCase.Units, flowCase.Limits, flowCase.Cancellation);
        var attempt = new Attempt(change, judged, FlowRules.FindPlaces(judged));
        solved.Add(change.Key, attempt);
        return attempt;
    }

    /// <summary>The attempt with all that is found in it, as its answer would tell.</summary>
    public Attempt Whole(Attempt attempt)
    {
        if (!whole.TryGetValue(attempt.Change.Key, out var known)) whole.Add(attempt.Change.Key, known = attempt with { Found = FlowRules.Find((FlowCase)attempt.Judged) });
        return known;
    }

    /// <summary>The attempts for one finding.</summary>
    public IAttempts For(FlowMeasure measure) => new OfFinding(this, measure);

    sealed class OfFinding(FlowAttempts all, FlowMeasure measure) : IAttempts
    {
        public bool IsBrief => false;

        public bool IsCutShort => all.IsCutShort;

        public IReadOnlyList<Attempt?> Try(IReadOnlyList<LayoutChange> changes) => [.. changes.Select(all.Try)];

        public Attempt? Whole(Attempt attempt) => all.Whole(attempt);

        public double Badness(JudgedLayout judged) => measure.Badness((FlowCase)judged);
    }
}
