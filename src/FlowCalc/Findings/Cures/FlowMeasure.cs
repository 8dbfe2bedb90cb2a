using FlowCalc.Flows;
using FlowCalc.Layouts;
using FlowCalc.Quantities;

namespace FlowCalc.Findings.Cures;

/// <summary>What a finding of a steady flow measures, in any flow of the same points and runs.</summary>
/// <param name="entry">The finding.</param>
/// <param name="flowCase">The flow that it was found in.</param>
sealed class FlowMeasure(FoundEntry entry, FlowCase flowCase)
{
    readonly string code = entry.Finding.Code;
    readonly int item = entry.Worst;
    readonly double limit = entry.Finding.Limit?.Si ?? 0;

    // The leg of an uneven branch is measured at its worst nozzle.
    readonly int nozzle = entry.Finding.Code switch
    {
        FindingCodes.StarvedNozzle or FindingCodes.OverfedNozzle or FindingCodes.NozzleBelowRange => flowCase.NozzleAt(entry.Worst),
        FindingCodes.UnevenBranch => WorstBehind(flowCase, entry),
        _ => -1,
    };

    /// <summary>What is measured, to follow "With a change,".</summary>
    public string Subject => code switch
    {
        FindingCodes.StarvedNozzle or FindingCodes.OverfedNozzle or FindingCodes.UnevenBranch => $"the deviation of {NozzleId}",
        FindingCodes.StarvedZone => $"the deviation of the zone {Wording.Id(flowCase.Layout.Zones[item].Id)}",
        FindingCodes.PressureSpread => "the ratio of nozzle pressures",
        FindingCodes.VelocityHigh => $"the velocity in {RunId}",
        FindingCodes.NozzleBelowRange => $"the pressure at {NozzleId}",
        FindingCodes.BelowVapourPressure => $"the pressure at {Wording.Id(flowCase.PointId(item))}",
        FindingCodes.BendTooTight => $"the least radius in {RunId}",
        FindingCodes.BendsOverlap => $"the least straight of {RunId}",
        FindingCodes.BendsInteract => $"the straight between two bends of {RunId}, in bores,",
        FindingCodes.TeePortOffAngle => $"the angle of {RunId} to its port",
        FindingCodes.BottleLiquidFull => "the liquid's part of the bottle",
        FindingCodes.OverWorkingPressure when item < 0 => "the pressure in the bottle",
        FindingCodes.OverWorkingPressure => $"the pressure in {RunId}",
        _ => throw new InvalidOperationException($"{code} has no measure."),
    };

    /// <summary>The kind of the measure; null for a plain number.</summary>
    public QuantityKind? Kind => entry.Finding.Measured?.Kind;

    /// <summary>Whether the measure is a part or a deviation, told in per cent.</summary>
    public bool IsDeviation => CureFamilies.IsOfShares(code) && code != FindingCodes.PressureSpread;

    string NozzleId => Wording.Id(flowCase.PointId(flowCase.Flow.Nozzles[nozzle].Point));

    string RunId => Wording.Id(flowCase.RunId(item));

    /// <summary>The measure in a flow; null where it has none.</summary>
    public double? Of(FlowCase judged) => code switch
    {
        FindingCodes.StarvedNozzle or FindingCodes.OverfedNozzle or FindingCodes.UnevenBranch => Deviation(judged.Flow.Nozzles[nozzle]),
        FindingCodes.StarvedZone => judged.Flow.Zones[item].Deviation,
        FindingCodes.PressureSpread => NozzlePressures.Ends(judged)?.Ratio,
        FindingCodes.VelocityHigh => judged.Flow.Runs[item].Velocity.MetersPerSecond,
        FindingCodes.NozzleBelowRange => judged.Flow.Nozzles[nozzle].Pressure.Pascals - judged.Ambient,
        FindingCodes.BelowVapourPressure => VapourPressures.Lowest(judged)[item] - judged.Ambient,
        FindingCodes.BendTooTight => judged.Layout.Runs[item].Bends.Min(bend => bend.Radius.Meters),
        FindingCodes.BendsOverlap => Straight(judged.Layout.Runs[item]),
        FindingCodes.BendsInteract => judged.Layout.Runs[item] is { Route: { } route, Tube: var tube } ? Bends.Straights(route).Between / tube.Bore.Meters : null,
        FindingCodes.TeePortOffAngle => TeePorts.OfRun(judged, item),
        FindingCodes.BottleLiquidFull => BottleFilling.PartAt(((BottleSupply)judged.Layout.Supply).Bottle, judged.Layout.Agent, judged.Layout.Temperature.Kelvins),
        FindingCodes.OverWorkingPressure when item < 0 => judged.Flow.Supply!.ReservoirPressure.Pascals - judged.Ambient,
        FindingCodes.OverWorkingPressure => WorkingPressures.InRun(judged, item, judged.Flow.Supply!.ReservoirPressure.Pascals, judged.Layout.Temperature.Kelvins) - judged.Ambient,
        _ => null,
    };

    /// <summary>How bad a flow is in this respect; less is better. Of shares, the worst nozzle of all.</summary>
    public double Badness(FlowCase judged)
    {
        if (CureFamilies.IsOfShares(code)) return Imbalance.Worst(judged.Flow).Badness;
        return Of(judged) is { } measure && double.IsFinite(measure) ? Math.Abs(measure - limit) : double.PositiveInfinity;
    }

    // Where nothing is wanted of a nozzle, nothing at all is too little and its share of the whole may be too much, as the findings have it.
    double? Deviation(NozzleFlow flow) => NozzleShares.IsClosed(flow) ? -1 : NozzleShares.Deviation(flow) ?? (code == FindingCodes.OverfedNozzle ? flow.Share : 0);

    static double? Straight(Run run)
    {
        if (run.Route is not { } route) return null;
        var (least, between) = Bends.Straights(route);
        return least < 0 || double.IsInfinity(between) ? least : between;
    }

    static int WorstBehind(FlowCase flowCase, FoundEntry entry) =>
        UnevenBranches.Of(flowCase, flowCase.Costs).Find(branch => branch.Leg == entry.Item)!.Worst;
}
