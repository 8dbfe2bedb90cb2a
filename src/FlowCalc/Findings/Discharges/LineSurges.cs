using FlowCalc.Discharge;
using FlowCalc.Quantities;

namespace FlowCalc.Findings.Discharges;

/// <summary>Tubes whose mark the blow may pass when the liquid meets the nozzle at their end.</summary>
static class LineSurges
{
    public static void Find(JudgedDischarge judged, FindingList findings)
    {
        var hits = new CaseHits(judged);
        foreach (var (at, one) in judged.Answered)
            foreach (var nozzle in one.Nozzles)
            {
                judged.Pass(nozzle.Point);
                var run = judged.FeedRun[nozzle.Point];
                if (judged.Layout.Runs[run].Tube.WorkingPressure?.Pascals is not { } mark || Bound(nozzle) is not { } bound) continue;
                if (WorkingPressures.IsOver(bound, mark)) hits.Add(at, new Hit(run, judged.RunId(run), Severity.Note, bound - mark, bound - judged.Ambient, mark - judged.Ambient));
            }
        hits.AddTo(findings, FindingCodes.LineSurge, $"{WorkingPressures.Mark}; the bound: N. Joukowsky (1898), from memory", QuantityKind.Pressure, "run",
            (one, hit) => Sentence(judged, one, hit));
    }

    // The greatest pressure at the nozzle need not stand there at that moment; a bound may say too much.
    static double? Bound(NozzleDischarge nozzle) => nozzle.Surge?.Pascals + nozzle.GreatestPressure?.Pascals;

    static string Sentence(JudgedDischarge judged, DischargeCase one, Hit hit)
    {
        var end = judged.Layout.Runs[hit.Item].To;
        var surge = one.Nozzles.First(nozzle => nozzle.Point == end).Surge!.Value.Pascals;
        string Pressure(double pascals) => Wording.Of(pascals, QuantityKind.Pressure, judged.Units);
        return $"the blow of the liquid on {Wording.Id(judged.PointId(end))} can add {Pressure(surge)}, so that {Wording.Id(hit.Id)} may see up to {Wording.Of(hit.Measured, hit.Bound, QuantityKind.Pressure, judged.Units)} "
            + $"for a moment, above the marked {Pressure(hit.Bound)} of its tube";
    }
}
