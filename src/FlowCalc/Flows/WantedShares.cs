using FlowCalc.Layouts;

namespace FlowCalc.Flows;

/// <summary>
/// The part of the agent that each nozzle should get: its own share; else its zone's share, less what nozzles of the zone ask themselves,
/// split by K-factor; else what is left over, split by K-factor.
/// </summary>
public static class WantedShares
{
    /// <summary>Wanted shares of all points.</summary>
    /// <param name="layout">The layout.</param>
    /// <returns>One entry a point, in the order of <see cref="Layout.Points"/>: 0 to 1 for a nozzle, 0 for others.</returns>
    public static double[] Of(Layout layout)
    {
        var zoneOf = new Dictionary<string, int>(layout.Zones.Length);
        for (var z = 0; z < layout.Zones.Length; z++)
            if (layout.Zones[z].Share is not null) zoneOf[layout.Zones[z].Id] = z;
        double[] asked = new double[layout.Zones.Length], factors = new double[layout.Zones.Length];
        double taken = 0, factorsLeft = 0;
        foreach (var zone in zoneOf.Values) taken += layout.Zones[zone].Share!.Value;
        foreach (var point in layout.Points)
        {
            if (point is not Nozzle nozzle) continue;
            var zone = Zone(zoneOf, nozzle);
            if (nozzle.Share is { } own)
            {
                if (zone < 0) taken += own;
                else asked[zone] += own;
            }
            else if (zone < 0) factorsLeft += nozzle.KFactor;
            else factors[zone] += nozzle.KFactor;
        }

        var left = Math.Max(1 - taken, 0);
        var wanted = new double[layout.Points.Length];
        for (var i = 0; i < wanted.Length; i++)
        {
            if (layout.Points[i] is not Nozzle nozzle) continue;
            var zone = Zone(zoneOf, nozzle);
            wanted[i] = nozzle.Share
                ?? (zone < 0
                    ? left * nozzle.KFactor / factorsLeft
                    : Math.Max(layout.Zones[zone].Share!.Value - asked[zone], 0) * nozzle.KFactor / factors[zone]);
        }
        return wanted;
    }

    static int Zone(Dictionary<string, int> zoneOf, Nozzle nozzle) =>
        nozzle.Zone is { } id && zoneOf.TryGetValue(id, out var zone) ? zone : -1;
}
