namespace FlowCalc.Findings;

/// <summary>Zones that get too little of the flow.</summary>
static class ZoneShares
{
    public static List<Hit>? Starved(FlowCase flowCase)
    {
        var limit = flowCase.Limit(FindingCodes.StarvedZone);
        List<Hit>? hits = null;
        var zones = flowCase.Flow.Zones;
        for (var zone = 0; zone < zones.Length; zone++)
        {
            flowCase.Pass(zone);
            if (zones[zone].Deviation is not { } deviation) continue;
            var (severity, step) = Grading.Of(limit, -deviation);
            if (severity != Severity.Pass)
                (hits ??= []).Add(new Hit(zone, zones[zone].Zone, severity, -deviation, deviation, -step));
        }
        return hits;
    }

    public static string Sentence(FlowCase flowCase, Hit hit)
    {
        var zone = flowCase.Flow.Zones[hit.Item];
        return NozzleShares.Off($"The zone {Wording.Id(hit.Id)}", zone.Share, zone.WantedShare, "the flow", hit);
    }
}
