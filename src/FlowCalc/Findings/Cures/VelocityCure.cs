using FlowCalc.Quantities;

namespace FlowCalc.Findings.Cures;

/// <summary>The next bore up for a run whose liquid is fast.</summary>
static class VelocityCure
{
    public static Cure? Of(FlowCase flowCase, Trials trials, Hit hit)
    {
        var allowed = Math.Max(Imbalance.Worst(flowCase.Flow).Deviation, Imbalance.Allowed(flowCase));
        foreach (var change in TubeChanges.Wider(flowCase, hit.Item, 2).Concat(TubeChanges.WiderOfCatalogue(flowCase, hit.Item, 1)))
        {
            if (change.Doubt is not null || trials.Solve(change.Changed) is not { } flow) continue;
            var velocity = flow.Runs[hit.Item].Velocity.MetersPerSecond;
            var (worst, nozzle) = Imbalance.Worst(flow);
            if (Grading.IsBeyond(velocity, hit.Bound) || worst > allowed) continue;

            var balance = nozzle < 0 || flow.Nozzles.Length == 1 ? "" : $", and the worst nozzle is {Wording.Percent(worst)} off its share";
            return new Cure($"With {change.Words} the liquid there runs at {Wording.Of(velocity, QuantityKind.Speed, flowCase.Units)} instead of "
                + $"{Wording.Of(hit.Measured, QuantityKind.Speed, flowCase.Units)}{balance}.",
                [change.Change], new Measure(hit.Measured, QuantityKind.Speed), new Measure(velocity, QuantityKind.Speed));
        }
        return null;
    }
}
