using FlowCalc.Flows;

namespace FlowCalc.Findings.Cures;

/// <summary>How far a flow is from the wanted shares.</summary>
static class Imbalance
{
    /// <summary>How bad a deviation is: too much counts as it is, too little by how many times more is wanted, so that half is as bad as twice as much, and nothing infinitely bad.</summary>
    public static double Badness(double deviation) => deviation >= 0 ? deviation : 1 / Math.Max(0, 1 + deviation) - 1;

    /// <summary>The badness of the worst nozzle and its index in the flow; 0 and -1 where nothing is wanted and every nozzle flows.</summary>
    public static (double Badness, int Nozzle) Worst(FlowResult flow)
    {
        var (worst, at) = (0.0, -1);
        for (var nozzle = 0; nozzle < flow.Nozzles.Length; nozzle++)
            if (Of(flow.Nozzles[nozzle]) is { } badness && (at < 0 || badness > worst)) (worst, at) = (badness, nozzle);
        return (worst, at);
    }

    /// <summary>The worst nozzle's deviation without sign, in words; null where nothing is wanted of any.</summary>
    public static string? Words(FlowResult flow) =>
        Worst(flow).Nozzle is >= 0 and var worst ? Wording.Percent(Math.Abs(NozzleShares.Deviation(flow.Nozzles[worst]) ?? -1)) : null;

    /// <summary>Whether a nozzle is warned of neither as starved nor as overfed.</summary>
    public static bool IsWithinLimits(FlowCase flowCase, NozzleFlow nozzle) =>
        NozzleShares.OfStarved(flowCase.Limit(FindingCodes.StarvedNozzle), nozzle).Severity == Severity.Pass
        && NozzleShares.OfOverfed(flowCase.Limit(FindingCodes.OverfedNozzle), nozzle).Severity == Severity.Pass;

    /// <summary>Whether every nozzle is within its limits.</summary>
    public static bool IsWithinLimits(FlowCase flowCase, FlowResult flow)
    {
        foreach (var nozzle in flow.Nozzles)
            if (!IsWithinLimits(flowCase, nozzle)) return false;
        return true;
    }

    /// <summary>Whether a change, made for another reason, leaves the shares no worse, or within their limits.</summary>
    public static bool IsNoWorse(FlowCase flowCase, FlowResult changed) =>
        !BringsFailure(flowCase, changed) && (Worst(changed).Badness <= Worst(flowCase.Flow).Badness || IsWithinLimits(flowCase, changed));

    /// <summary>Whether a change starves or overfeeds a nozzle, or starves a zone, to a failure that was none before it.</summary>
    public static bool BringsFailure(FlowCase flowCase, FlowResult changed)
    {
        var (starved, overfed, zone) = (flowCase.Limit(FindingCodes.StarvedNozzle), flowCase.Limit(FindingCodes.OverfedNozzle), flowCase.Limit(FindingCodes.StarvedZone));
        for (var index = 0; index < changed.Nozzles.Length; index++)
        {
            var (before, after) = (flowCase.Flow.Nozzles[index], changed.Nozzles[index]);
            if (NozzleShares.OfStarved(starved, after).Severity == Severity.Fail && NozzleShares.OfStarved(starved, before).Severity != Severity.Fail) return true;
            if (NozzleShares.OfOverfed(overfed, after).Severity == Severity.Fail && NozzleShares.OfOverfed(overfed, before).Severity != Severity.Fail) return true;
        }
        for (var index = 0; index < changed.Zones.Length; index++)
            if (IsFailed(changed.Zones[index]) && !IsFailed(flowCase.Flow.Zones[index])) return true;
        return false;

        bool IsFailed(ZoneShare share) => share.Deviation is { } deviation && Grading.Of(zone, -deviation).Severity == Severity.Fail;
    }

    static double? Of(NozzleFlow nozzle) => NozzleShares.IsClosed(nozzle) ? double.PositiveInfinity : NozzleShares.Deviation(nozzle) is { } deviation ? Badness(deviation) : null;
}
