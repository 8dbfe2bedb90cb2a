using FlowCalc.Bottles;
using FlowCalc.Layouts;
using FlowCalc.Losses;
using FlowCalc.Quantities;

namespace FlowCalc.Findings;

/// <summary>Parts that see more than their marked pressure while every outlet is shut: the reservoir's pressure and the liquid's weight.</summary>
static class WorkingPressures
{
    const string Mark = "the part's mark";

    public static void Find(FlowCase flowCase, FindingList findings)
    {
        if (flowCase.Flow.Supply is not { } supply) return;
        var reservoir = supply.ReservoirPressure.Pascals;
        var bottle = (flowCase.Layout.Supply as BottleSupply)?.Bottle;
        if (bottle?.WorkingPressure is { } marked && reservoir > marked.Pascals * (1 + 1e-9))
            AddBottle(flowCase, findings, reservoir, marked.Pascals);

        // A marked pressure may belong to any tube; without one there is nothing to hold against.
        for (var index = 0; index < flowCase.Layout.Runs.Length; index++)
        {
            flowCase.Pass(index);
            if (flowCase.Layout.Runs[index].Tube.WorkingPressure is null) continue;
            AddTubes(flowCase, findings, reservoir, bottle?.Outlet?.Regulator);
            return;
        }
    }

    static void AddBottle(FlowCase flowCase, FindingList findings, double reservoir, double marked)
    {
        var point = flowCase.SupplyPoint;
        findings.Add(new Finding(FindingCodes.OverWorkingPressure, Severity.Fail, [flowCase.PointId(point)],
            $"The bottle holds {Wording.Gauge(reservoir, flowCase)} at {Wording.Of(flowCase.Layout.Temperature.Kelvins, QuantityKind.Temperature, flowCase.Units)}, "
            + $"above its marked working pressure of {Wording.Gauge(marked, flowCase)}.",
            new Measure(reservoir - flowCase.Ambient, QuantityKind.Pressure), new Measure(marked - flowCase.Ambient, QuantityKind.Pressure), Mark, null), -1);
    }

    static void AddTubes(FlowCase flowCase, FindingList findings, double reservoir, Regulator? regulator)
    {
        var held = regulator is null ? reservoir : Math.Min(reservoir, regulator.SetPressure.Pascals);
        var weight = flowCase.Layout.Agent.Density(flowCase.Layout.Temperature.Kelvins) * HydrostaticRise.StandardGravity;
        var heights = new double[flowCase.Layout.Points.Length];
        List<Hit>? over = null, unregulated = null;
        foreach (var index in flowCase.OutwardRuns())
        {
            flowCase.Pass(index);
            var run = flowCase.Layout.Runs[index];
            heights[run.To] = heights[run.From] + run.Rise.Meters;
            if (run.Tube.WorkingPressure is not { } marked) continue;
            var head = -weight * Lowest(flowCase.Layout, run, heights);
            var (pressure, worst, mark) = (held + head, reservoir + head, marked.Pascals);
            if (pressure > mark * (1 + 1e-9)) (over ??= []).Add(Exceeded(flowCase, index, Severity.Fail, pressure, mark));
            else if (worst > mark * (1 + 1e-9)) (unregulated ??= []).Add(Exceeded(flowCase, index, Severity.Warn, worst, mark));
        }
        Sort(over);
        Sort(unregulated);
        findings.Add(FindingCodes.OverWorkingPressure, Mark, QuantityKind.Pressure, "run", over, hit => Sentence(flowCase, hit, "With every outlet shut"));
        findings.Add(FindingCodes.OverWorkingPressure, Mark, QuantityKind.Pressure, "run", unregulated, hit => Sentence(flowCase, hit, "Should the regulator fail, with every outlet shut,"));
    }

    // Height of the lowest place of a run over the supply, corners included where they are given.
    static double Lowest(Layout layout, Run run, double[] heights)
    {
        var lowest = Math.Min(heights[run.From], heights[run.To]);
        if (run.Route is { } route && layout.Points[run.From].At is { } from)
            foreach (var corner in route.Corners) lowest = Math.Min(lowest, heights[run.From] + (corner.Z - from.Z).Meters);
        return lowest;
    }

    // The sweep from the supply need not keep the document's order.
    static void Sort(List<Hit>? hits) => hits?.Sort((first, second) => first.Item.CompareTo(second.Item));

    static Hit Exceeded(FlowCase flowCase, int run, Severity severity, double pressure, double mark) =>
        new(run, flowCase.RunId(run), severity, pressure - mark, pressure - flowCase.Ambient, mark - flowCase.Ambient);

    static string Sentence(FlowCase flowCase, Hit hit, string when) =>
        $"{when} {Wording.Id(hit.Id)} sees {Wording.Of(hit.Measured, QuantityKind.Pressure, flowCase.Units)}, above the marked {Wording.Of(hit.Bound, QuantityKind.Pressure, flowCase.Units)} of its tube";
}
