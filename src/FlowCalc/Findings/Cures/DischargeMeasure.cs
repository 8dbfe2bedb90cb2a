using FlowCalc.Discharge;
using FlowCalc.Findings.Discharges;
using FlowCalc.Quantities;

namespace FlowCalc.Findings.Cures;

/// <summary>What a finding of a discharge measures, in its case of any discharge of the same points and runs.</summary>
sealed class DischargeMeasure
{
    readonly FoundEntry entry;
    readonly JudgedDischarge before;
    readonly string code;
    readonly int item;

    public DischargeMeasure(FoundEntry entry, JudgedDischarge before)
    {
        (this.entry, this.before, code, item) = (entry, before, entry.Finding.Code, entry.Worst);
        At = entry.At >= 0 ? entry.At : Hottest(before);
    }

    /// <summary>Index of the case.</summary>
    public int At { get; }

    /// <summary>Whether it is one of the bottle before its valve opens, for which nothing has to be followed.</summary>
    public bool IsAtRest => code is FindingCodes.HotOverpressure or FindingCodes.NoDrivingPressure or FindingCodes.BottleLiquidFull or FindingCodes.OverWorkingPressure;

    /// <summary>The kind of the measure; null for a plain number.</summary>
    public QuantityKind? Kind => entry.Finding.Measured?.Kind;

    /// <summary>Whether the measure is a deviation, told with its sign.</summary>
    public bool IsDeviation => CureFamilies.IsOfShares(code);

    /// <summary>What is measured, to follow "With a change,".</summary>
    public string Subject => code switch
    {
        FindingCodes.StarvedNozzle or FindingCodes.OverfedNozzle => $"the deviation of {Wording.Id(before.PointId(item))}",
        FindingCodes.StarvedZone => $"the deviation of the zone {Wording.Id(before.Layout.Zones[item].Id)}",
        FindingCodes.DischargeTooSlow or FindingCodes.ColdUnderpowered or FindingCodes.DischargeTooFast => Kind is null ? "the part that comes out" : "the time of the required part",
        FindingCodes.AgentLeftBehind => "the part that stays behind",
        FindingCodes.AgentInTube => "the part that the tubes hold at most",
        FindingCodes.LateArrival => "the time from the first arrival to the last",
        FindingCodes.BottleBlindWhenInverted or FindingCodes.DipTubeUncoversEarly => "the part out of the dip tube's reach",
        FindingCodes.HotOverpressure or FindingCodes.NoDrivingPressure => "the pressure in the bottle",
        FindingCodes.BottleLiquidFull => "the liquid's part of the bottle",
        FindingCodes.OverWorkingPressure => $"the pressure in {Wording.Id(before.RunId(item))}",
        _ => throw new InvalidOperationException($"{code} has no measure."),
    };

    /// <summary>The measure in a discharge; null where its case has none.</summary>
    /// <param name="judged">All cases, or the finding's alone.</param>
    public double? Of(JudgedDischarge judged)
    {
        var one = judged.Discharge.Cases[judged.Discharge.Cases.Length == 1 ? 0 : At];
        return code switch
        {
            FindingCodes.StarvedNozzle or FindingCodes.OverfedNozzle => one.Nozzles.FirstOrDefault(nozzle => nozzle.Point == item) is { } nozzle ? Deviation(nozzle) : null,
            FindingCodes.StarvedZone => one.Failure is null ? one.Zones[item].Deviation : null,
            FindingCodes.DischargeTooSlow or FindingCodes.ColdUnderpowered or FindingCodes.DischargeTooFast => one.Failure is not null ? null
                : Kind is null ? JudgedDischarge.Delivered(one) / new RequirementWording(judged, judged.Discharge.Requirement!).Whole : one.RequiredTime?.Seconds,
            FindingCodes.AgentLeftBehind => one.Failure is null ? (one.LeftInBottle.Kilograms + one.LeftInTubes.Kilograms) / judged.Contents : null,
            FindingCodes.AgentInTube => one.MostInTubes?.Kilograms / judged.Contents,
            FindingCodes.LateArrival => Arrivals.Ends(one) is var (first, last) ? (last.Arrival!.Value - first.Arrival!.Value).Seconds : null,
            FindingCodes.BottleBlindWhenInverted or FindingCodes.DipTubeUncoversEarly => one.Failure is null ? one.OutOfReach : null,
            FindingCodes.HotOverpressure or FindingCodes.NoDrivingPressure => one.StartPressure?.Pascals - judged.Ambient,
            FindingCodes.BottleLiquidFull => one.LiquidPart,
            FindingCodes.OverWorkingPressure => one.StartPressure is { } start ? WorkingPressures.InRun(judged, item, start.Pascals, one.Temperature.Kelvins) - judged.Ambient : null,
            _ => null,
        };
    }

    /// <summary>How bad the case is in this respect; less is better. Of shares, the worst nozzle of all.</summary>
    public double Badness(JudgedDischarge judged)
    {
        if (IsDeviation)
        {
            var one = judged.Discharge.Cases[judged.Discharge.Cases.Length == 1 ? 0 : At];
            return one.Nozzles.IsEmpty ? double.PositiveInfinity : one.Nozzles.Max(nozzle => Imbalance.Badness(Deviation(nozzle)));
        }
        return Of(judged) is { } measure && double.IsFinite(measure) ? Math.Abs(measure - (entry.Finding.Limit?.Si ?? 0)) : double.PositiveInfinity;
    }

    /// <summary>The deviation of a nozzle as findings have it: nothing at all is as bad as can be.</summary>
    public static double Deviation(NozzleDischarge nozzle) => MassShares.GetsNothing(nozzle) ? -1 : NozzleShares.Telling(nozzle.Deviation) ?? 0;

    static int Hottest(JudgedDischarge judged)
    {
        var cases = judged.Discharge.Cases;
        var at = 0;
        for (var one = 1; one < cases.Length; one++)
            if (cases[one].StartPressure is { } start && !(cases[at].StartPressure >= start)) at = one;
        return at;
    }
}
