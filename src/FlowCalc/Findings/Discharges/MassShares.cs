using FlowCalc.Discharge;

namespace FlowCalc.Findings.Discharges;

/// <summary>Nozzles and zones that get too little or too much of what is delivered over the whole discharge.</summary>
static class MassShares
{
    const string Whole = "the agent delivered";

    public static void Find(JudgedDischarge judged, FindingList findings)
    {
        var (starved, overfed, zone) = (judged.Limit(FindingCodes.StarvedNozzle), judged.Limit(FindingCodes.OverfedNozzle), judged.Limit(FindingCodes.StarvedZone));
        CaseHits starvedHits = new(judged), overfedHits = new(judged), zoneHits = new(judged);
        foreach (var (at, one) in judged.Answered)
        {
            // A bottle that gives nothing starves no nozzle more than another; it is told by itself.
            if (DipTubes.GivesNothing(judged, one)) continue;
            foreach (var nozzle in one.Nozzles)
            {
                judged.Pass(nozzle.Point);
                var deviation = NozzleShares.Telling(nozzle.Deviation);
                var (severity, step) = NozzleShares.OfStarved(starved, GetsNothing(nozzle), deviation);
                if (severity != Severity.Pass) Add(starvedHits, at, judged, nozzle, severity, GetsNothing(nozzle) ? -1 : deviation ?? 0, -step);
                (severity, step) = NozzleShares.OfOverfed(overfed, deviation, nozzle.Share);
                if (severity != Severity.Pass) Add(overfedHits, at, judged, nozzle, severity, deviation ?? nozzle.Share, step);
            }
            for (var index = 0; index < one.Zones.Length; index++)
            {
                judged.Pass(index);
                if (one.Zones[index].Deviation is not { } deviation) continue;
                var (severity, step) = Grading.Of(zone, -deviation);
                if (severity != Severity.Pass) zoneHits.Add(at, new Hit(index, one.Zones[index].Zone, severity, -deviation, deviation, -step));
            }
        }
        starvedHits.AddTo(findings, FindingCodes.StarvedNozzle, starved.Source, null, "nozzle", (one, hit) => OfNozzle(judged, one, hit));
        overfedHits.AddTo(findings, FindingCodes.OverfedNozzle, overfed.Source, null, "nozzle", (one, hit) => OfNozzle(judged, one, hit));
        zoneHits.AddTo(findings, FindingCodes.StarvedZone, zone.Source, null, "zone", OfZone);
    }

    public static bool GetsNothing(NozzleDischarge nozzle) => nozzle.Arrival is null || nozzle.Mass.Kilograms <= 0;

    static void Add(CaseHits hits, int at, JudgedDischarge judged, NozzleDischarge nozzle, Severity severity, double measured, double bound) =>
        hits.Add(at, new Hit(nozzle.Point, judged.PointId(nozzle.Point), severity, Math.Abs(measured), measured, bound));

    static string OfNozzle(JudgedDischarge judged, DischargeCase one, Hit hit)
    {
        var nozzle = one.Nozzles.First(nozzle => nozzle.Point == hit.Item);
        var id = Wording.Id(hit.Id);
        if (GetsNothing(nozzle))
            return $"{id} never gets {judged.Matter}{(NozzleShares.Telling(nozzle.Deviation) is null ? "" : $", where {Wording.Share(nozzle.WantedShare)} of the agent is wanted")}";
        return NozzleShares.Telling(nozzle.Deviation) is null ? NozzleShares.Unwanted(id, nozzle.Share, Whole, hit) : NozzleShares.Off(id, nozzle.Share, nozzle.WantedShare, Whole, hit);
    }

    static string OfZone(DischargeCase one, Hit hit)
    {
        var zone = one.Zones[hit.Item];
        return NozzleShares.Off($"the zone {Wording.Id(hit.Id)}", zone.Share, zone.WantedShare, Whole, hit);
    }
}
