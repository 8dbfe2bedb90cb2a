using FlowCalc.Quantities;

namespace FlowCalc.Findings.Discharges;

/// <summary>Marked pressures of bottle and tubes against the pressure of the bottle before its valve opens.</summary>
static class RestPressures
{
    public static void Find(JudgedDischarge judged, FindingList findings)
    {
        var hits = new CaseHits(judged, isOfTemperature: true);
        var marked = judged.Bottle.WorkingPressure?.Pascals;
        var highest = -1;
        var cases = judged.Discharge.Cases;
        for (var at = 0; at < cases.Length; at++)
        {
            judged.Pass(at);
            if (cases[at].StartPressure is not { } start) continue;
            if (highest < 0 || start > cases[highest].StartPressure!.Value) highest = at;
            if (marked is { } mark && WorkingPressures.IsOver(start.Pascals, mark))
                hits.Add(at, new Hit(-1, judged.SupplyId, Severity.Fail, start.Pascals, start.Pascals - judged.Ambient, mark - judged.Ambient));
        }
        hits.AddTo(findings, FindingCodes.HotOverpressure, WorkingPressures.Mark, QuantityKind.Pressure, _ => [judged.SupplyId],
            (_, hit) => $"the bottle holds {Wording.Of(hit.Measured, hit.Bound, QuantityKind.Pressure, judged.Units)}, above its marked working pressure of {Wording.Of(hit.Bound, QuantityKind.Pressure, judged.Units)}");
        if (highest >= 0)
            WorkingPressures.OfTubes(judged, findings, cases[highest].StartPressure!.Value.Pascals, cases[highest].Temperature.Kelvins, judged.TemperatureOf(cases[highest]));
    }
}
