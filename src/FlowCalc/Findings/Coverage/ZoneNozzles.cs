using FlowCalc.Layouts;
using FlowCalc.Quantities;

namespace FlowCalc.Findings.Coverage;

/// <summary>Zones without a nozzle, with a single one, and too few of them.</summary>
static class ZoneNozzles
{
    public static void Find(JudgedCoverage judged, FindingList findings)
    {
        var single = judged.Limit(CoverageCodes.OneNozzleZone);
        List<Hit>? empty = null, few = null;
        for (var at = 0; at < judged.Result.Zones.Length; at++)
        {
            var (count, id) = (judged.Result.Zones[at].Nozzles.Length, judged.Result.Zones[at].Zone.Id);
            if (count == 0) (empty ??= []).Add(new Hit(at, id, Severity.Fail, 0, 0, 1));
            else if (Grading.Of(single, count, lowerIsWorse: true) is { Severity: > Severity.Pass } found) (few ??= []).Add(new Hit(at, id, found.Severity, -count, count, found.Step));
        }
        findings.Add(CoverageCodes.ZoneWithoutNozzle, "the document", null, "zone", empty, hit => $"No nozzle is in zone {Wording.Id(hit.Id)}");
        findings.Add(CoverageCodes.OneNozzleZone, single.Source, null, "zone", few, hit =>
            $"Zone {Wording.Id(hit.Id)} has {Wording.Count((int)hit.Measured, "nozzle")}, fewer than {Wording.Number(hit.Bound)}: when one is blocked, bent or torn off, {(hit.Measured == 1 ? "nothing" : "less than was planned")} is left of its protection");
        TooFew(judged, findings);
    }

    static void TooFew(JudgedCoverage judged, FindingList findings)
    {
        if (ApplicationDefaults.Of(judged.Layout.Application).LeastZones is null && !judged.IsStated(CoverageCodes.TooFewZones)) return;
        var limit = judged.Limit(CoverageCodes.TooFewZones);
        var count = judged.Result.Zones.Count(zone => !zone.Nozzles.IsEmpty);
        var (severity, step) = Grading.Of(limit, count, lowerIsWorse: true);
        if (severity == Severity.Pass) return;
        findings.Add(new Finding(CoverageCodes.TooFewZones, severity, [], $"{Wording.Count(count, "zone")} {(count == 1 ? "has" : "have")} a nozzle, fewer than {Wording.Number(step)}: every space that is to be protected, such as a cockpit and an engine compartment, is a zone of its own with nozzles.",
            new Measure(count, null), new Measure(step, null), limit.Source, null), -1);
    }
}
