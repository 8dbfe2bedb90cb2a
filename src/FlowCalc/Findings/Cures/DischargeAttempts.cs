using FlowCalc.Discharge;
using FlowCalc.Findings.Discharges;
using FlowCalc.Flows;
using FlowCalc.Layouts;

namespace FlowCalc.Findings.Cures;

/// <summary>Changes tried by following their discharge: first one case alone, then, for a change that clears it, all of them.</summary>
sealed class DischargeAttempts
{
    readonly JudgedDischarge judged;
    readonly DischargeBudget budget;
    readonly TaskScheduler scheduler;
    readonly Dictionary<(string Key, int At, DischargeDepth Depth), Attempt> brief = [];
    readonly Dictionary<string, Attempt?> whole = [];
    readonly Trials trials;
    readonly FindingList? before;

    public DischargeAttempts(JudgedDischarge judged, TaskScheduler scheduler)
    {
        (this.judged, this.scheduler) = (judged, scheduler);
        budget = new(judged.Layout, judged.Discharge.Cases.Length);
        trials = new(Trials.SizeOf(judged.Layout), judged.Cancellation);
        Flow = FlowOf(judged.Layout);
        before = Flow is null ? null : FlowRules.FindPlaces(Flow);
    }

    /// <summary>The layout's steady flow; null where there is none.</summary>
    public FlowCase? Flow { get; }

    /// <summary>The steady flow with a change, by which changes of shares are chosen; null where there is none, or where enough has been done.</summary>
    public FlowCase? FlowWith(LayoutChange change) => trials.Solve(change.Changed) is { } flow && Flow is { } now ? new FlowCase(change.Changed, flow, judged.Units, now.Limits, judged.Cancellation) : null;

    /// <summary>The attempts for one finding.</summary>
    public IAttempts For(DischargeMeasure measure) => new OfFinding(this, measure);

    FlowCase? FlowOf(Layout layout)
    {
        var flow = SteadyFlow.Solve(layout, judged.Cancellation);
        return flow.Report.Converged ? new FlowCase(layout, flow, judged.Units, Limits.DefaultLimits.For(layout.Limits, Limits.LimitUse.Flow), judged.Cancellation) : null;
    }

    IReadOnlyList<Attempt?> Try(IReadOnlyList<LayoutChange> changes, DischargeMeasure measure)
    {
        var at = measure.At;
        var depth = measure.IsAtRest ? DischargeDepth.AtRest : DischargeDepth.Brief;
        // What is to be followed is settled before any thread begins.
        var open = changes.DistinctBy(change => change.Key).Where(change => !brief.ContainsKey((change.Key, at, depth)) && budget.AllowsOne(measure.IsAtRest)).ToArray();
        var solved = new Attempt[open.Length];
        Parallel.For(0, open.Length, new ParallelOptions { TaskScheduler = scheduler, CancellationToken = judged.Cancellation }, one =>
            solved[one] = Judged(open[one], LayoutDischarge.SolveOne(open[one].Changed, at, depth, judged.Cancellation), measure.IsAtRest));
        foreach (var attempt in solved) brief.Add((attempt.Change.Key, at, depth), attempt);
        return [.. changes.Select(change => brief.GetValueOrDefault((change.Key, at, depth)))];
    }

    // A change that mends the discharge must not spoil the steady flow, nor ask for bends that cannot be made.
    Attempt? Whole(LayoutChange change)
    {
        if (whole.TryGetValue(change.Key, out var known)) return known;
        if (!budget.AllowsWhole()) return null;
        if (SpoilsFlow(change)) return whole[change.Key] = null;
        var attempt = Judged(change, LayoutDischarge.Solve(change.Changed, DischargeDepth.WithoutBand, scheduler, judged.Cancellation));
        if (attempt.Found.Verdict == Severity.Pass && HangsOnBand(attempt))
        {
            if (!budget.AllowsBand()) return whole[change.Key] = null;
            attempt = Judged(change, LayoutDischarge.Solve(change.Changed, scheduler, judged.Cancellation));
        }
        return whole[change.Key] = attempt;
    }

    // Rules make notes of a band and no more, so that it can only turn what has no finding at all into one of a note.
    static bool HangsOnBand(Attempt attempt) => attempt.Change.Changed.Agent.IsExpanding && ((JudgedDischarge)attempt.Judged).Discharge.Requirement is not null;

    bool SpoilsFlow(LayoutChange change)
    {
        if (before is null) return false;
        if (FlowOf(change.Changed) is not { } flow) return true;
        foreach (var (place, severity) in FlowRules.FindPlaces(flow).Places)
            if (severity == Severity.Fail && before.Places.GetValueOrDefault(place) != Severity.Fail) return true;
        return false;
    }

    Attempt Judged(LayoutChange change, DischargeResult discharge, bool isAtRest = false)
    {
        var after = new JudgedDischarge(change.Changed, ((BottleSupply)change.Changed.Supply).Bottle, discharge, judged.Units, judged.Limits, judged.Cancellation);
        return new(change, after, isAtRest ? DischargeRules.FindAtRest(after) : DischargeRules.Find(after));
    }

    sealed class OfFinding(DischargeAttempts all, DischargeMeasure measure) : IAttempts
    {
        public bool IsBrief => true;

        public bool IsCutShort => all.budget.IsCutShort;

        public IReadOnlyList<Attempt?> Try(IReadOnlyList<LayoutChange> changes) => all.Try(changes, measure);

        public Attempt? Whole(Attempt attempt) => all.Whole(attempt.Change);

        public double Badness(JudgedLayout layout) => measure.Badness((JudgedDischarge)layout);
    }
}
