using FlowCalc.Discharge;
using FlowCalc.Limits;
using FlowCalc.Quantities;

namespace FlowCalc.Findings.Discharges;

/// <summary>Contents that do not come out, and what is left behind where.</summary>
static class DeliveredParts
{
    public static void Find(JudgedDischarge judged, FindingList findings)
    {
        NotDelivered(judged, findings);
        LeftBehind(judged, findings);
    }

    static void NotDelivered(JudgedDischarge judged, FindingList findings)
    {
        var hits = new CaseHits(judged);
        foreach (var (at, one) in judged.Answered)
        {
            if (one.Time95 is not null) continue;
            var part = JudgedDischarge.Delivered(one) / judged.Contents;
            hits.Add(at, new Hit(-1, judged.SupplyId, Severity.Warn, -part, part, LayoutDischarge.UsualPart));
        }
        hits.AddTo(findings, FindingCodes.ContentsNotDelivered, DefaultLimits.CommonPractice, null, _ => [judged.SupplyId],
            (one, hit) => $"{Wording.Percent(LayoutDischarge.UsualPart)} of the contents never come out of the nozzles, so that there is no time of it: "
                + $"{Mass(judged, JudgedDischarge.Delivered(one))} come out, {Wording.Percent(hit.Measured, hit.Bound)}");
    }

    static void LeftBehind(JudgedDischarge judged, FindingList findings)
    {
        var limit = judged.Limit(FindingCodes.AgentLeftBehind);
        var hits = new CaseHits(judged);
        foreach (var (at, one) in judged.Answered)
        {
            var part = (one.LeftInBottle.Kilograms + one.LeftInTubes.Kilograms) / judged.Contents;
            var (severity, step) = Grading.Of(limit, part);
            if (severity != Severity.Pass) hits.Add(at, new Hit(-1, judged.SupplyId, severity, part, part, step));
        }
        hits.AddTo(findings, FindingCodes.AgentLeftBehind, limit.Source, null, _ => [judged.SupplyId],
            (one, hit) => $"{Wording.Percent(hit.Measured, hit.Bound)} of the contents stay behind, {Mass(judged, one.LeftInBottle.Kilograms)} in the bottle and "
                + $"{Mass(judged, one.LeftInTubes.Kilograms)} in the tubes, limit {Wording.Percent(hit.Bound)}");
    }

    static string Mass(JudgedDischarge judged, double kilograms) => Wording.Of(kilograms, QuantityKind.Mass, judged.Units);
}
