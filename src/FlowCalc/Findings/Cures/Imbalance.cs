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

    /// <summary>Whether a nozzle is warned of neither as starved nor as overfed.</summary>
    public static bool IsWithinLimits(FlowCase flowCase, NozzleFlow nozzle) =>
        NozzleShares.OfStarved(flowCase.Limit(FindingCodes.StarvedNozzle), nozzle).Severity == Severity.Pass
        && NozzleShares.OfOverfed(flowCase.Limit(FindingCodes.OverfedNozzle), nozzle).Severity == Severity.Pass;

    /// <summary>Whether a nozzle or a zone fails by its share.</summary>
    public static bool IsFailed(FlowCase flowCase)
    {
        var (starved, overfed, zone) = (flowCase.Limit(FindingCodes.StarvedNozzle), flowCase.Limit(FindingCodes.OverfedNozzle), flowCase.Limit(FindingCodes.StarvedZone));
        foreach (var nozzle in flowCase.Flow.Nozzles)
            if (NozzleShares.OfStarved(starved, nozzle).Severity == Severity.Fail || NozzleShares.OfOverfed(overfed, nozzle).Severity == Severity.Fail) return true;
        foreach (var share in flowCase.Flow.Zones)
            if (share.Deviation is { } deviation && Grading.Of(zone, -deviation).Severity == Severity.Fail) return true;
        return false;
    }

    static double? Of(NozzleFlow nozzle) => NozzleShares.IsClosed(nozzle) ? double.PositiveInfinity : NozzleShares.Deviation(nozzle) is { } deviation ? Badness(deviation) : null;
}
