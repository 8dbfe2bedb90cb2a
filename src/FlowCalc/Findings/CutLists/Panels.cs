using FlowCalc.Quantities;

namespace FlowCalc.Findings.CutLists;

/// <summary>Panels that are too thick for their bulkhead unions.</summary>
static class Panels
{
    public static void Find(JudgedCutList judged, FindingList findings)
    {
        List<Hit>? hits = null;
        foreach (var (index, run, _) in judged.Runs)
            foreach (var placed in run.Fittings)
                if (placed.Fitting is { Panel: { } panel, PanelGrip: { } most } && Grading.IsBeyond(panel.Meters / most.Meters, 1))
                    (hits ??= []).Add(new Hit(index, run.Id, Severity.Fail, panel.Meters, panel.Meters, most.Meters));
        findings.Add(FindingCodes.BulkheadGrip, "the fitting's statement", QuantityKind.Length, "fitting", hits, hit =>
            $"A bulkhead union of {Wording.Id(hit.Id)} goes through {judged.Text(hit.Measured, hit.Bound)} of panel and takes {judged.Text(hit.Bound)} at most");
    }
}
