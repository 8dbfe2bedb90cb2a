using FlowCalc.Quantities;

namespace FlowCalc.Findings.Cures;

/// <summary>The next bore up for a run whose liquid is fast.</summary>
static class VelocityCure
{
    public static Cure? Of(FlowCase flowCase, Trials trials, Hit hit)
    {
        foreach (var change in TubeChanges.Wider(flowCase, hit.Item, 2).Concat(TubeChanges.WiderOfCatalogue(flowCase, hit.Item, 1)))
        {
            if (change.Doubt is not null || trials.Solve(change.Changed) is not { } flow) continue;
            var velocity = flow.Runs[hit.Item].Velocity.MetersPerSecond;
            if (Grading.IsBeyond(velocity, hit.Bound) || !Imbalance.IsNoWorse(flowCase, flow)) continue;

            var balance = flow.Nozzles.Length > 1 && Imbalance.Words(flow) is { } worst ? $", and the worst nozzle is {worst} off its share" : "";
            return new Cure($"With {change.Words} the liquid there runs at {Wording.Of(velocity, QuantityKind.Speed, flowCase.Units)} instead of "
                + $"{Wording.Of(hit.Measured, QuantityKind.Speed, flowCase.Units)}{balance}.",
                [change.Change], new Measure(hit.Measured, QuantityKind.Speed), new Measure(velocity, QuantityKind.Speed));
        }
        return null;
    }
}
