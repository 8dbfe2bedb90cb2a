
namespace FlowCalc.Findings.Cures;

/// <summary>Looks for the one change that evens out the shares best.</summary>
sealed class BalanceSearch
{
    const string WiderTubes = "wider tubes";
    const int MostRuns = 8;
    const int MostSizes = 3;
    const int MostCatalogueRuns = 6;
    const int MostCatalogueSizes = 4;
    const int MostNozzles = 6;

    // A change that gains less than half a per cent, or less than a twentieth of what is wrong, is not worth a spanner.
    const double LeastGain = 0.005;
    const double LeastPart = 0.05;

    // Of changes that differ by less than this the smaller job is the better.
    const double Alike = 0.01;

    readonly FlowCase flowCase;
    readonly Trials trials;
    readonly double before;
    readonly List<Trial> solved = [];
    readonly List<string> kinds = [];

    BalanceSearch(FlowCase flowCase, Trials trials)
    {
        (this.flowCase, this.trials) = (flowCase, trials);
        before = Imbalance.Worst(flowCase.Flow).Badness;
    }

    /// <summary>The best change found, and what was tried in words.</summary>
    public static (Trial? Best, string Tried) Run(FlowCase flowCase, BranchCosts costs, Trials trials, bool anyStarved)
    {
        var search = new BalanceSearch(flowCase, trials);
        var dearest = costs.Dearest(MostRuns);
        search.TryTubesAndFittings(dearest);
        if (!anyStarved) search.TryNarrower(costs);
        if (!search.IsWithinLimits()) search.TryCatalogueAndNozzles(dearest);
        return (search.Best(), search.Tried());
    }

    void TryTubesAndFittings(List<int> runs)
    {
        foreach (var run in runs)
        {
            Try(WiderTubes, TubeChanges.Wider(flowCase, run, MostSizes));
            Try(WiderTubes, TubeChanges.AsSibling(flowCase, run, MostSizes));
            Try("wider fittings", FittingChanges.Opened(flowCase, run));
            if (TeeChanges.Smooth(flowCase, run) is { } smooth && !solved.Exists(trial => trial.Change.Change == smooth.Change)) Try("smooth tees", [smooth]);
        }
    }

    // With nobody starved the fault is a nozzle that gets too much: its own last run may be too wide.
    void TryNarrower(BranchCosts costs)
    {
        var runs = flowCase.Flow.Nozzles.Select(nozzle => flowCase.FeedRun[nozzle.Point]).Where(run => run >= 0 && costs.Missing[run] < 0)
            .OrderBy(run => costs.Missing[run]).ThenBy(run => run).Take(MostNozzles);
        foreach (var run in runs) Try("narrower tubes", TubeChanges.Narrower(flowCase, run, 2));
    }

    void TryCatalogueAndNozzles(List<int> runs)
    {
        foreach (var run in runs.Take(MostCatalogueRuns)) Try(WiderTubes, TubeChanges.WiderOfCatalogue(flowCase, run, MostCatalogueSizes));

        var types = NozzleChanges.Types(flowCase.Layout);
        // Starved ones first: a larger nozzle there keeps the whole flow, a smaller one elsewhere throttles it.
        var off = flowCase.Flow.Nozzles.Where(nozzle => NozzleShares.Deviation(nozzle) is not null && !Imbalance.IsWithinLimits(flowCase, nozzle))
            .OrderBy(nozzle => nozzle.Deviation > 0).ThenByDescending(nozzle => Math.Abs(nozzle.Deviation!.Value)).Take(MostNozzles);
        foreach (var nozzle in off) Try("other nozzles", NozzleChanges.Exchanged(flowCase, types, nozzle.Point, larger: nozzle.Deviation < 0, 1));
    }

    void Try(string kind, IEnumerable<LayoutChange> changes)
    {
        if (trials.IsCutShort) return;
        foreach (var change in changes)
        {
            if (trials.Solve(change.Changed) is not { } flow) continue;
            if (!kinds.Contains(kind)) kinds.Add(kind);
            var (worst, nozzle) = Imbalance.Worst(flow);
            solved.Add(new Trial(change, flow, worst, nozzle));
        }
    }

    bool IsWithinLimits() => solved.Exists(trial => trial.Change.Doubt is null && Imbalance.IsWithinLimits(flowCase, trial.Flow));

    Trial? Best()
    {
        // A change that mends one nozzle by failing another is none to tell of, whatever it gains.
        var better = solved.FindAll(trial => IsBetter(trial.Worst) && !Imbalance.BringsFailure(flowCase, trial.Flow));
        if (better.Exists(trial => trial.Change.Doubt is null)) better.RemoveAll(trial => trial.Change.Doubt is not null);
        if (better.Count == 0) return null;
        var most = better.Min(trial => trial.Worst) + Alike;
        better.RemoveAll(trial => trial.Worst > most);
        // Where one change brings every nozzle within its limits, one that leaves a nozzle outside is no match for it.
        if (better.Exists(trial => Imbalance.IsWithinLimits(flowCase, trial.Flow))) better.RemoveAll(trial => !Imbalance.IsWithinLimits(flowCase, trial.Flow));
        return better.OrderBy(trial => trial.Change.Length).ThenBy(trial => trial.Change.Step).ThenBy(trial => Math.Round(trial.Worst, 6)).First();
    }

    // Out of nothing at all, which counts as infinitely bad, any flow is a gain.
    bool IsBetter(double worst) => double.IsInfinity(before) ? double.IsFinite(worst) : worst < before - Math.Max(LeastGain, LeastPart * before);

    string Tried()
    {
        var cut = trials.IsCutShort ? "; the search ended there because of the layout's size" : "";
        var which = kinds.Count == 0 ? "" : $" ({string.Join(", ", kinds)})";
        return $"{Wording.Count(solved.Count, "single change")} tried{which}{cut}";
    }
}
