using FlowCalc.Flows;

namespace FlowCalc.Findings.Cures;

/// <summary>How far a flow is from the wanted shares.</summary>
static class Imbalance
{
    /// <summary>The largest deviation of a nozzle, without its sign, and the nozzle's index in the flow; 0 and -1 where nothing is wanted.</summary>
    public static (double Deviation, int Nozzle) Worst(FlowResult flow)
    {
        var (worst, at) = (0.0, -1);
        for (var nozzle = 0; nozzle < flow.Nozzles.Length; nozzle++)
            if (flow.Nozzles[nozzle].Deviation is { } deviation && (at < 0 || Math.Abs(deviation) > worst)) (worst, at) = (Math.Abs(deviation), nozzle);
        return (worst, at);
    }

    /// <summary>The deviation up to which a nozzle is neither warned of as starved nor as overfed.</summary>
    public static double Allowed(FlowCase flowCase)
    {
        var starved = flowCase.Limit(FindingCodes.StarvedNozzle);
        var overfed = flowCase.Limit(FindingCodes.OverfedNozzle);
        return Math.Min(First(starved), First(overfed));
    }

    static double First(Limits.Limit limit) => (limit.Warn ?? limit.Fail ?? limit.Note)?.Si ?? double.PositiveInfinity;
}
