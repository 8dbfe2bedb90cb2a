using FlowCalc.Quantities;

namespace FlowCalc.Findings.Cures;

/// <summary>A wider run for a nozzle that works below its range.</summary>
static class PressureCure
{
    const int MostRuns = 4;

    public static Cure? Of(FlowCase flowCase, Trials trials, int nozzle, Hit hit)
    {
        var (best, most) = ((LayoutChange?)null, hit.Measured);
        foreach (var run in Dearest(flowCase, hit.Item))
            foreach (var change in TubeChanges.Wider(flowCase, run, 1))
            {
                if (change.Doubt is not null || trials.Solve(change.Changed) is not { } flow) continue;
                var pressure = flow.Nozzles[nozzle].Pressure.Pascals - flowCase.Ambient;
                if (pressure > most && Imbalance.IsNoWorse(flowCase, flow)) (best, most) = (change, pressure);
            }
        if (best is null) return null;

        var reaches = Grading.IsBeyond((most + flowCase.Ambient) / (hit.Bound + flowCase.Ambient), 1, lowerIsWorse: true) ? "still below its range" : "within its range";
        return new Cure($"With {best.Words} {Wording.Id(hit.Id)} works at {Wording.Of(most, QuantityKind.Pressure, flowCase.Units)} instead of "
            + $"{Wording.Of(hit.Measured, QuantityKind.Pressure, flowCase.Units)}, {reaches}.",
            [best.Change], new Measure(hit.Measured, QuantityKind.Pressure), new Measure(most, QuantityKind.Pressure));
    }

    // The runs on the way to the nozzle that lose most, dearest first.
    static IEnumerable<int> Dearest(FlowCase flowCase, int point)
    {
        var way = new List<int>();
        for (var run = flowCase.FeedRun[point]; run >= 0; run = flowCase.FeedRun[flowCase.Layout.Runs[run].From]) way.Add(run);
        return way.OrderByDescending(run => flowCase.Flow.Runs[run].Losses.Total.Pascals).Take(MostRuns);
    }
}
