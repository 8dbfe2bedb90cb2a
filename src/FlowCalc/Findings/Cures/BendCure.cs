using FlowCalc.Quantities;
using UnitsNet;

namespace FlowCalc.Findings.Cures;

/// <summary>The least radius that a tube allows, for a run whose bends are tighter.</summary>
static class BendCure
{
    public static Cure? Of(FlowCase flowCase, Trials trials, Hit hit)
    {
        if (Bends.Least(flowCase.Layout.Runs[hit.Item].Tube, flowCase.Limit(FindingCodes.BendTooTight)) is not var (least, _)) return null;
        var run = flowCase.Layout.Runs[hit.Item];
        if (Rebending.WithRadius(flowCase.Layout, run, Length.FromMeters(least)) is not { } changed || !Rebending.Fits(changed)) return null;
        if (trials.Solve(flowCase.Layout with { Runs = flowCase.Layout.Runs.SetItem(hit.Item, changed) }) is not { } flow) return null;
        if (Imbalance.BringsFailure(flowCase, flow)) return null;

        var effect = Imbalance.Words(flow) is { } after && Imbalance.Words(flowCase.Flow) is { } before ? $"the worst nozzle is {after} off its share instead of {before}" : "no nozzle has a share to be off";
        var (from, to) = (Wording.Of(hit.Measured, QuantityKind.Length, flowCase.Units), Wording.Of(least, QuantityKind.Length, flowCase.Units));
        var path = run.Route is null ? $"runs/{run.Id}/bends" : $"runs/{run.Id}/bendRadius";
        var fits = run.Route is null ? "" : ", which fits its route,";
        return new Cure($"With a radius of {to} in {Wording.Id(run.Id)}{fits} {effect}.",
            [new CureChange(path, from, to)], new Measure(hit.Measured, QuantityKind.Length), new Measure(least, QuantityKind.Length));
    }
}
