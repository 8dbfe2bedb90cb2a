using FlowCalc.Layouts;

namespace FlowCalc.Findings.Cures;

/// <summary>What may clear a finding of a steady flow, in stages.</summary>
static class FlowRemedies
{
    public const string WiderTubes = "wider tubes";
    public const string NarrowerTubes = "narrower tubes";
    public const string OtherTubes = "other tubes";

    const int MostRuns = 8;
    const int MostSizes = 3;
    const int MostCatalogueRuns = 6;
    const int MostCatalogueSizes = 4;
    const int MostNozzles = 6;
    const int MostSized = 3;

    static readonly double[] SizePowers = [0.25, 0.5, 0.75, 1, 1.5, 2.2];

    /// <summary>Whether there is any remedy for a code: findings that no change of the layout clears have none.</summary>
    public static bool Has(string code) => CureFamilies.IsOfShares(code) || code is FindingCodes.VelocityHigh or FindingCodes.NozzleBelowRange or FindingCodes.BelowVapourPressure
        or FindingCodes.BendTooTight or FindingCodes.BendsOverlap or FindingCodes.BendsInteract or FindingCodes.TeePortOffAngle or FindingCodes.BottleLiquidFull or FindingCodes.OverWorkingPressure;

    /// <summary>The remedies of a finding that is not of shares; none for one that no change of the layout clears.</summary>
    public static IEnumerable<IReadOnlyList<Remedy>> Of(FlowCase flowCase, FoundEntry entry) => entry.Finding.Code switch
    {
        FindingCodes.VelocityHigh => [[Wider(flowCase, entry.Worst)], [OfCatalogue(flowCase, entry.Worst)]],
        FindingCodes.NozzleBelowRange => [[.. Dearest(flowCase, entry.Worst).Select(run => Wider(flowCase, run))]],
        FindingCodes.BelowVapourPressure => [[.. Dearest(flowCase, entry.Worst).Select(run => Wider(flowCase, run))], [BottleRemedies.MorePressure(flowCase)]],
        FindingCodes.BendTooTight => [[Remedy.Each("a larger radius", BendChanges.ToLeast(flowCase, entry.Worst))], [Remedy.Each(OtherTubes, TubeChanges.Bendable(flowCase, entry.Worst, MostSizes))]],
        FindingCodes.BendsOverlap or FindingCodes.BendsInteract => [[Remedy.Ladder("smaller radii", ratio => BendChanges.Scaled(flowCase, entry.Worst, ratio), 0.9, 0.8, 0.65, 0.5, 0.35)], [Remedy.Each(OtherTubes, TubeChanges.Bendable(flowCase, entry.Worst, MostSizes))]],
        FindingCodes.TeePortOffAngle => [[Remedy.Each("tees turned round", TeeChanges.TurnedInPlace(flowCase, entry.Worst))]],
        FindingCodes.BottleLiquidFull => [[BottleRemedies.LessFill(flowCase)]],
        FindingCodes.OverWorkingPressure when entry.Worst < 0 => [[BottleRemedies.LessPressure(flowCase), BottleRemedies.LessFill(flowCase)]],
        FindingCodes.OverWorkingPressure =>
            [[Remedy.Each("stronger tubes", TubeChanges.Stronger(flowCase, entry.Worst, entry.Finding.Measured!.Value.Si + flowCase.Ambient, MostSizes))], [BottleRemedies.LessPressure(flowCase), BottleRemedies.LessFill(flowCase)]],
        _ => [],
    };

    /// <summary>What may even out the shares.</summary>
    public static IEnumerable<IReadOnlyList<Remedy>> OfShares(FlowCase flowCase)
    {
        var dearest = flowCase.Costs.Dearest(MostRuns);
        yield return [.. dearest.SelectMany(run => OfRun(flowCase, run)), .. AnyStarved(flowCase) ? [] : Throttled(flowCase)];
        yield return [.. dearest.Take(MostCatalogueRuns).Select(run => Remedy.Each(WiderTubes, TubeChanges.WiderOfCatalogue(flowCase, run, MostCatalogueSizes))), .. Exchanged(flowCase)];
        yield return [.. Sized(flowCase), .. flowCase.Flow.Nozzles.Any(NozzleShares.IsClosed) ? [BottleRemedies.MorePressure(flowCase)] : Array.Empty<Remedy>()];
    }

    static IEnumerable<Remedy> OfRun(FlowCase flowCase, int run) =>
    [
        Remedy.Each(WiderTubes, TubeChanges.Wider(flowCase, run, MostSizes).Concat(TubeChanges.AsSibling(flowCase, run, MostSizes))),
        Remedy.Each("wider fittings", FittingChanges.Opened(flowCase, run)),
        Remedy.Each("smooth tees", TeeChanges.Smooth(flowCase, run)),
        Remedy.Each("tees turned round", TeeChanges.Turned(flowCase, run)),
    ];

    // With nobody starved the fault is a nozzle that gets too much: its own last run may be too wide.
    static IEnumerable<Remedy> Throttled(FlowCase flowCase) =>
        flowCase.Flow.Nozzles.Select(nozzle => flowCase.FeedRun[nozzle.Point]).Where(run => run >= 0 && flowCase.Costs.Missing[run] < 0)
            .OrderBy(run => flowCase.Costs.Missing[run]).ThenBy(run => run).Take(MostNozzles)
            .Select(run => Remedy.Each(NarrowerTubes, TubeChanges.Narrower(flowCase, run, 2)));

    static IEnumerable<Remedy> Exchanged(FlowCase flowCase) =>
        Off(flowCase).Take(MostNozzles).Select(nozzle => Remedy.Each("other nozzles", NozzleChanges.Exchanged(flowCase, nozzle.Point, larger: nozzle.Deviation < 0, 1)));

    // A nozzle whose wanted share follows from its own size gains nothing by another size.
    static IEnumerable<Remedy> Sized(FlowCase flowCase)
    {
        var inZone = flowCase.Layout.Points.OfType<Nozzle>().Where(nozzle => nozzle.Zone is not null).CountBy(nozzle => nozzle.Zone!).ToDictionary();
        bool IsWantedApart(int point) => flowCase.Layout.Points[point] is Nozzle nozzle && (nozzle.Share is not null || (nozzle.Zone is { } zone && inZone[zone] == 1));
        return Off(flowCase).Where(nozzle => IsWantedApart(nozzle.Point)).Take(MostSized).Select(nozzle =>
        {
            // What a nozzle takes more the whole gives more as well, so that the ratio of shares is not enough.
            var ratio = Math.Clamp(1 / Math.Max(1e-3, 1 + nozzle.Deviation!.Value), 0.1, 10);
            return Remedy.Ladder("nozzles of another size", at => NozzleChanges.Sized(flowCase, nozzle.Point, at), [.. SizePowers.Select(power => Math.Pow(ratio, power))]);
        });
    }

    // Starved ones first: a larger nozzle there keeps the whole flow, a smaller one elsewhere throttles it.
    static IEnumerable<Flows.NozzleFlow> Off(FlowCase flowCase) =>
        flowCase.Flow.Nozzles.Where(nozzle => NozzleShares.Deviation(nozzle) is not null && !Imbalance.IsWithinLimits(flowCase, nozzle))
            .OrderBy(nozzle => nozzle.Deviation > 0).ThenByDescending(nozzle => Math.Abs(nozzle.Deviation!.Value));

    static bool AnyStarved(FlowCase flowCase) => NozzleShares.Starved(flowCase) is not null || ZoneShares.Starved(flowCase) is not null;

    static Remedy Wider(FlowCase flowCase, int run) => Remedy.Each(WiderTubes, TubeChanges.Wider(flowCase, run, 2));

    static Remedy OfCatalogue(FlowCase flowCase, int run) => Remedy.Each(WiderTubes, TubeChanges.WiderOfCatalogue(flowCase, run, 2));

    // The runs on the way to a point that lose most, dearest first.
    static IEnumerable<int> Dearest(FlowCase flowCase, int point)
    {
        const int mostRuns = 4;
        var way = new List<int>();
        for (var run = flowCase.FeedRun[point]; run >= 0; run = flowCase.FeedRun[flowCase.Layout.Runs[run].From]) way.Add(run);
        return way.OrderByDescending(run => flowCase.Flow.Runs[run].Losses.Total.Pascals).Take(mostRuns);
    }
}
