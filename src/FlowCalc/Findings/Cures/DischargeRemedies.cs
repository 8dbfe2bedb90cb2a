using FlowCalc.Findings.Discharges;

namespace FlowCalc.Findings.Cures;

/// <summary>What may clear a finding of a discharge, in stages.</summary>
static class DischargeRemedies
{
    const int MostRuns = 4;
    const int MostSizes = 2;
    const int MostSized = 4;

    // Of the changes that the steady flow shows to even out the shares so many are followed: the smallest jobs, and those with the best shares.
    const int MostSmall = 4;
    const int MostGood = 4;

    /// <summary>Whether there is any remedy for a code: findings that no change of the layout clears have none.</summary>
    public static bool Has(string code) => CureFamilies.IsOfShares(code) || code is FindingCodes.DischargeTooSlow or FindingCodes.ColdUnderpowered or FindingCodes.DischargeTooFast
        or FindingCodes.BottleBlindWhenInverted or FindingCodes.DipTubeUncoversEarly or FindingCodes.AgentLeftBehind or FindingCodes.AgentInTube or FindingCodes.LateArrival
        or FindingCodes.HotOverpressure or FindingCodes.BottleLiquidFull or FindingCodes.NoDrivingPressure or FindingCodes.OverWorkingPressure;

    /// <summary>The remedies of a finding that is not of shares; none for one that no change of the layout clears.</summary>
    public static IEnumerable<IReadOnlyList<Remedy>> Of(JudgedDischarge judged, FoundEntry entry, DischargeAttempts attempts) => entry.Finding.Code switch
    {
        FindingCodes.DischargeTooSlow or FindingCodes.ColdUnderpowered =>
        [
            [BottleRemedies.Follower(judged), .. Dearest(attempts, run => TubeChanges.Wider(judged, run, MostSizes), FlowRemedies.WiderTubes)],
            [BottleRemedies.MorePressure(judged), BottleRemedies.WiderValve(judged), .. Sized(judged, attempts, 1.1, 1.25, 1.5, 2, 3)],
            [.. Dearest(attempts, run => TubeChanges.WiderOfCatalogue(judged, run, MostSizes), FlowRemedies.WiderTubes)],
            // Less agent is out sooner, but it is less agent: the last thing to think of.
            [BottleRemedies.LessFill(judged)],
        ],
        FindingCodes.DischargeTooFast =>
        [
            [.. Dearest(attempts, run => TubeChanges.Narrower(judged, run, MostSizes), FlowRemedies.NarrowerTubes)],
            [BottleRemedies.NarrowerValve(judged), BottleRemedies.LessPressure(judged), BottleRemedies.MoreFill(judged), .. Sized(judged, attempts, 0.9, 0.8, 0.65, 0.5, 0.3)],
            [.. Dearest(attempts, run => TubeChanges.NarrowerOfCatalogue(judged, run, MostSizes), FlowRemedies.NarrowerTubes)],
        ],
        FindingCodes.BottleBlindWhenInverted or FindingCodes.DipTubeUncoversEarly => [[BottleRemedies.Follower(judged)]],
        FindingCodes.AgentLeftBehind =>
            [[BottleRemedies.Follower(judged), .. Largest(judged, run => TubeChanges.Narrower(judged, run, MostSizes))], [BottleRemedies.MorePressure(judged), BottleRemedies.MoreFill(judged)]],
        FindingCodes.AgentInTube => [[.. Largest(judged, run => TubeChanges.Narrower(judged, run, MostSizes))], [.. Largest(judged, run => TubeChanges.NarrowerOfCatalogue(judged, run, MostSizes)), BottleRemedies.MoreFill(judged)]],
        FindingCodes.LateArrival => [[.. OnTheWay(judged, entry)], [BottleRemedies.MorePressure(judged)]],
        FindingCodes.HotOverpressure => [[BottleRemedies.LessPressure(judged), BottleRemedies.LessFill(judged)]],
        FindingCodes.BottleLiquidFull => [[BottleRemedies.LessFill(judged)]],
        FindingCodes.NoDrivingPressure => [[BottleRemedies.MorePressure(judged)]],
        FindingCodes.OverWorkingPressure =>
            [[Remedy.Each("stronger tubes", TubeChanges.Stronger(judged, entry.Worst, entry.Finding.Measured!.Value.Si + judged.Ambient, MostSizes))], [BottleRemedies.LessPressure(judged), BottleRemedies.LessFill(judged)]],
        _ => [],
    };

    /// <summary>What may even out the shares: the steady flow tells at little cost which changes are worth following.</summary>
    public static IEnumerable<IReadOnlyList<Remedy>> OfShares(DischargeAttempts attempts)
    {
        if (attempts.Flow is not { } flow) yield break;
        var before = Imbalance.Worst(flow.Flow).Badness;
        foreach (var stage in FlowRemedies.OfShares(flow))
        {
            List<(string Kind, LayoutChange Change, double Badness, bool IsWithin)> promising = [];
            foreach (var (kind, change) in stage.SelectMany(Changes).DistinctBy(one => one.Change.Key))
                if (change.Doubt is null && attempts.FlowWith(change) is { } with && Imbalance.Worst(with.Flow).Badness is var badness && badness < before)
                    promising.Add((kind, change, badness, !Imbalance.IsFailed(with)));
            var small = promising.Where(one => one.IsWithin).OrderBy(one => one.Change.Length).ThenBy(one => one.Change.Step).Take(MostSmall);
            var good = promising.OrderBy(one => one.Badness).Take(MostGood);
            yield return [.. small.Concat(good).DistinctBy(one => one.Change.Key).GroupBy(one => one.Kind).Select(kind => Remedy.Each(kind.Key, [.. kind.Select(one => one.Change)]))];
        }
    }

    static IEnumerable<(string Kind, LayoutChange Change)> Changes(Remedy remedy) => remedy switch
    {
        LadderRemedy ladder => ladder.Ratios.Select(ladder.At).OfType<LayoutChange>().Select(change => (ladder.Kind, change)),
        EachRemedy each => each.Changes.Select(change => (each.Kind, change)),
        _ => [],
    };

    // The runs that lose most, weighed by what flows through them.
    static IEnumerable<Remedy> Dearest(DischargeAttempts attempts, Func<int, IEnumerable<LayoutChange>> changes, string kind) => attempts.Flow is not { } flow ? []
        : Enumerable.Range(0, flow.Layout.Runs.Length).OrderByDescending(run => flow.Flow.Runs[run].Losses.Total.Pascals * flow.Flow.Runs[run].MassFlow.KilogramsPerSecond)
            .Take(MostRuns).Select(run => Remedy.Each(kind, changes(run).Where(change => change.Doubt is null)));

    // The nozzles that give most move the time of the whole most; where there are many, one of them moves it little.
    static IEnumerable<Remedy> Sized(JudgedDischarge judged, DischargeAttempts attempts, params double[] ratios) => attempts.Flow is not { Flow.Nozzles.Length: <= MostSized } flow ? []
        : flow.Flow.Nozzles.OrderByDescending(nozzle => nozzle.MassFlow.KilogramsPerSecond).Take(1)
            .Select(nozzle => Remedy.Ladder("nozzles of another size", ratio => NozzleChanges.Sized(judged, nozzle.Point, ratio), ratios));

    static IEnumerable<Remedy> Largest(JudgedDischarge judged, Func<int, IEnumerable<LayoutChange>> changes) =>
        Enumerable.Range(0, judged.Layout.Runs.Length).OrderByDescending(run => judged.Layout.Runs[run].Length.Meters * Math.Pow(judged.Layout.Runs[run].Tube.Bore.Meters, 2))
            .Take(MostRuns).Select(run => Remedy.Each(FlowRemedies.NarrowerTubes, changes(run).Where(change => change.Doubt is null)));

    // Less volume brings liquid sooner to the last nozzle, and so does less loss.
    static IEnumerable<Remedy> OnTheWay(JudgedDischarge judged, FoundEntry entry)
    {
        var point = Enumerable.Range(0, judged.Layout.Points.Length).First(at => judged.PointId(at) == entry.Finding.Where[0]);
        for (var (run, steps) = (judged.FeedRun[point], 0); run >= 0 && steps < MostRuns; (run, steps) = (judged.FeedRun[judged.Layout.Runs[run].From], steps + 1))
            yield return Remedy.Each(FlowRemedies.OtherTubes, TubeChanges.Narrower(judged, run, 1).Concat(TubeChanges.Wider(judged, run, MostSizes)).Where(change => change.Doubt is null));
    }
}
