using UnitsNet;

namespace FlowCalc.Studies.Comparing;

/// <summary>What a nozzle gets in one layout, less what it gets in another.</summary>
/// <param name="Pressure">Difference of the pressures.</param>
/// <param name="MassFlow">Flow over the other's flow, less 1; null where the other's is nothing.</param>
/// <param name="Share">Difference of the shares.</param>
/// <param name="LeastMass">Least mass over the other's, less 1; null without a discharge on either side, or where the other's is nothing.</param>
/// <param name="LatestArrival">Difference of the latest arrivals; null where either has none.</param>
/// <param name="LatestTime95">Difference of the latest 95 % times; null where either has none.</param>
public sealed record NozzleDifference(Pressure Pressure, double? MassFlow, double Share, double? LeastMass, Duration? LatestArrival, Duration? LatestTime95)
{
    /// <summary>The difference.</summary>
    /// <param name="one">What it gets.</param>
    /// <param name="before">What it gets in the layout that this one is held against.</param>
    public static NozzleDifference Of(NozzlePlace one, NozzlePlace before)
    {
        ArgumentNullException.ThrowIfNull(one);
        ArgumentNullException.ThrowIfNull(before);
        return new(
            one.Flow.Pressure - before.Flow.Pressure,
            Over(one.Flow.MassFlow.KilogramsPerSecond, before.Flow.MassFlow.KilogramsPerSecond),
            one.Flow.Share - before.Flow.Share,
            Over(one.Discharge?.LeastMass.Kilograms, before.Discharge?.LeastMass.Kilograms),
            Less(one.Discharge?.LatestArrival, before.Discharge?.LatestArrival),
            Less(one.Discharge?.LatestTime95, before.Discharge?.LatestTime95));
    }

    static double? Over(double? one, double? before) => one is { } value && before is > 0 and var divisor ? value / divisor - 1 : null;

    static Duration? Less(Duration? one, Duration? before) => one is { } value && before is { } other ? value - other : null;
}
