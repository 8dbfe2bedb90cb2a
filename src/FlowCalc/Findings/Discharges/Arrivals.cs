using System.Collections.Immutable;
using FlowCalc.Discharge;
using FlowCalc.Quantities;

namespace FlowCalc.Findings.Discharges;

/// <summary>Nozzles that liquid reaches long after the first; one that it never reaches is starved.</summary>
static class Arrivals
{
    public static void Find(JudgedDischarge judged, FindingList findings)
    {
        var limit = judged.Limit(FindingCodes.LateArrival);
        var hits = new CaseHits(judged);
        foreach (var (at, one) in judged.Answered)
        {
            if (Ends(one) is not var (first, last)) continue;
            var late = (last.Arrival!.Value - first.Arrival!.Value).Seconds;
            var (severity, step) = Grading.Of(limit, late);
            if (severity != Severity.Pass) hits.Add(at, new Hit(-1, judged.PointId(last.Point), severity, late, late, step));
        }
        hits.AddTo(findings, FindingCodes.LateArrival, limit.Source, QuantityKind.Time, one => Where(judged, one), (one, hit) => Sentence(judged, one, hit));
    }

    // The first and the last nozzle that liquid comes to; of equals the first in the document.
    public static (NozzleDischarge First, NozzleDischarge Last)? Ends(DischargeCase one)
    {
        NozzleDischarge? first = null, last = null;
        foreach (var nozzle in one.Nozzles)
        {
            if (nozzle.Arrival is not { } arrival) continue;
            if (first is null || arrival < first.Arrival!.Value) first = nozzle;
            if (last is null || arrival > last.Arrival!.Value) last = nozzle;
        }
        return first is null ? null : (first, last!);
    }

    static ImmutableArray<string> Where(JudgedDischarge judged, DischargeCase one)
    {
        var (first, last) = Ends(one)!.Value;
        return [judged.PointId(last.Point), judged.PointId(first.Point)];
    }

    static string Sentence(JudgedDischarge judged, DischargeCase one, Hit hit)
    {
        var (first, last) = Ends(one)!.Value;
        string Time(double seconds) => Wording.Of(seconds, QuantityKind.Time, judged.Units);
        return $"{judged.Matter} comes to {Wording.Id(judged.PointId(last.Point))} after {Time(last.Arrival!.Value.Seconds)}, "
            + $"{Wording.Of(hit.Measured, hit.Bound, QuantityKind.Time, judged.Units)} later than to {Wording.Id(judged.PointId(first.Point))}, limit {Time(hit.Bound)}";
    }
}
