using System.Collections.Immutable;
using FlowCalc.Flows;
using FlowCalc.Layouts;
using UnitsNet;

namespace FlowCalc.Discharge;

/// <summary>Numbers of a case with units, where not every number is there.</summary>
internal static class CaseValues
{
    /// <summary>An instant; null for one that never comes.</summary>
    /// <param name="seconds">s; NaN for never.</param>
    public static Duration? At(double seconds) => double.IsNaN(seconds) ? null : Duration.FromSeconds(seconds);

    /// <summary>A pressure; null where there is none.</summary>
    /// <param name="pascals">Pa absolute; NaN for none.</param>
    public static Pressure? PressureOf(double pascals) => double.IsNaN(pascals) ? null : Pressure.FromPascals(pascals);

    /// <summary>What each zone got.</summary>
    /// <param name="layout">The layout.</param>
    /// <param name="nozzles">What its nozzles gave.</param>
    /// <param name="wanted">Wanted share of each point.</param>
    public static ImmutableArray<ZoneShare> Zones(Layout layout, ImmutableArray<NozzleDischarge> nozzles, double[] wanted)
    {
        var shares = new double[layout.Points.Length];
        foreach (var nozzle in nozzles) shares[nozzle.Point] = nozzle.Share;
        return ZoneShare.Of(layout, shares, wanted);
    }
}
