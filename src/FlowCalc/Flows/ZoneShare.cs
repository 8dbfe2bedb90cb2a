using System.Collections.Immutable;
using FlowCalc.Layouts;

namespace FlowCalc.Flows;

/// <summary>What a zone gets.</summary>
/// <param name="Zone">Id of the zone.</param>
/// <param name="Share">Part of the whole flow, 0 to 1.</param>
/// <param name="WantedShare">Its own wanted share, or else the sum of what its nozzles should get, 0 to 1.</param>
public sealed record ZoneShare(string Zone, double Share, double WantedShare)
{
    /// <summary>Share over wanted share, less 1; null where nothing is wanted.</summary>
    public double? Deviation => WantedShare > 0 ? Share / WantedShare - 1 : null;

    /// <summary>Sums the shares of nozzles by zone.</summary>
    /// <param name="layout">The layout.</param>
    /// <param name="share">Share of each point, 0 for one that is no nozzle.</param>
    /// <param name="wanted">Wanted share of each point.</param>
    /// <returns>One entry a zone, in the order of <see cref="Layout.Zones"/>.</returns>
    internal static ImmutableArray<ZoneShare> Of(Layout layout, double[] share, double[] wanted)
    {
        if (layout.Zones.IsEmpty) return [];
        var sums = new Dictionary<string, (double Share, double Wanted)>(layout.Zones.Length);
        foreach (var zone in layout.Zones) sums[zone.Id] = default;
        for (var i = 0; i < layout.Points.Length; i++)
            if (layout.Points[i] is Nozzle { Zone: { } zone } && sums.TryGetValue(zone, out var sum))
                sums[zone] = (sum.Share + share[i], sum.Wanted + wanted[i]);
        return [.. layout.Zones.Select(zone => new ZoneShare(zone.Id, sums[zone.Id].Share, zone.Share ?? sums[zone.Id].Wanted))];
    }
}
