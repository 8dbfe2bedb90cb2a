using FlowCalc.Agents;
using FlowCalc.Discharge;

namespace FlowCalc.Findings.Discharges;

/// <summary>Temperatures at which the liquid leaves the bottle's gas little or no room.</summary>
static class LiquidParts
{
    public static void Find(JudgedDischarge judged, FindingList findings)
    {
        var limit = judged.Limit(FindingCodes.BottleLiquidFull);
        var hits = new CaseHits(judged, isOfTemperature: true);
        for (var at = 0; at < judged.Discharge.Cases.Length; at++)
        {
            judged.Pass(at);
            var one = judged.Discharge.Cases[at];
            // The pressure of a gas that is liquefied alone says more than its level.
            if (judged.Layout.Agent.Kind == AgentKind.LiquefiedGas || double.IsNaN(one.LiquidPart)) continue;
            var (severity, step) = Grading.Of(limit, one.LiquidPart);
            // Without a cushion there is no discharge, whatever part a document allows.
            if (one.Failure?.Kind == DischargeFailureKind.LiquidFull && severity != Severity.Fail) (severity, step) = (Severity.Fail, 1);
            if (severity != Severity.Pass) hits.Add(at, new Hit(-1, judged.SupplyId, severity, one.LiquidPart, one.LiquidPart, step));
        }
        hits.AddTo(findings, FindingCodes.BottleLiquidFull, limit.Source, null, _ => [judged.SupplyId], Sentence);
    }

    static string Sentence(DischargeCase one, Hit hit)
    {
        var fills = BottleFilling.Fills(hit.Measured, hit.Bound);
        if (one.Failure?.Kind != DischargeFailureKind.LiquidFull) return $"{fills}: {BottleFilling.Little}";
        if (one.StartPressure is not null) return $"{fills}: no gas is left over it, the pressure rises by several bar a kelvin, and the bottle may burst";
        return hit.Measured < 1
            ? "there is no answer: the liquid fills the whole bottle when it is charged, and no cushion is left to drive it"
            : $"{fills}: no cushion is left to drive it, its pressure is not known, and the bottle may burst";
    }
}
