using FlowCalc.Layouts;
using FlowCalc.Losses;
using FlowCalc.Quantities;

namespace FlowCalc.Findings;

/// <summary>Parts that see more than their marked pressure while every outlet is shut: the reservoir's pressure and the liquid's weight.</summary>
static class WorkingPressures
{
    public const string Mark = "the part's mark";

    public static void Find(FlowCase flowCase, FindingList findings)
    {
        if (flowCase.Flow.Supply is not { } supply) return;
        var reservoir = supply.ReservoirPressure.Pascals;
        var bottle = (flowCase.Layout.Supply as BottleSupply)?.Bottle;
        if (bottle?.WorkingPressure is { } marked && IsOver(reservoir, marked.Pascals))
            AddBottle(flowCase, findings, reservoir, marked.Pascals);

        OfTubes(flowCase, findings, reservoir, flowCase.Layout.Temperature.Kelvins);
    }

    /// <summary>Whether a pressure is above a mark by more than rounding; both absolute, Pa.</summary>
    public static bool IsOver(double pressure, double mark) => pressure > mark * (1 + 1e-9);

    /// <summary>Holds the tubes against a pressure in the reservoir.</summary>
    /// <param name="judged">The layout, as drawn: upright.</param>
    /// <param name="findings">What to add to.</param>
    /// <param name="reservoir">Absolute pressure in the reservoir, Pa.</param>
    /// <param name="temperature">Temperature of the liquid, K.</param>
    /// <param name="inCase">The case of a discharge; null for none.</param>
    public static void OfTubes(JudgedLayout judged, FindingList findings, double reservoir, double temperature, string? inCase = null)
    {
        // A marked pressure may belong to any tube; without one there is nothing to hold against.
        for (var index = 0; index < judged.Layout.Runs.Length; index++)
        {
            judged.Pass(index);
            if (judged.Layout.Runs[index].Tube.WorkingPressure is null) continue;
            AddTubes(judged, findings, reservoir, temperature, inCase);
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

    static void AddTubes(JudgedLayout judged, FindingList findings, double reservoir, double temperature, string? inCase)
    {
        List<Hit>? over = null, unregulated = null;
        var held = Held(judged.Layout, reservoir);
        foreach (var (index, head) in Heads(judged, reservoir, temperature))
        {
            if (judged.Layout.Runs[index].Tube.WorkingPressure is not { } marked) continue;
            var (pressure, worst, mark) = (held + head, reservoir + head, marked.Pascals);
            if (IsOver(pressure, mark)) (over ??= []).Add(Exceeded(judged, index, Severity.Fail, pressure, mark));
            else if (IsOver(worst, mark)) (unregulated ??= []).Add(Exceeded(judged, index, Severity.Warn, worst, mark));
        }
        Sort(over);
        Sort(unregulated);
        findings.Add(FindingCodes.OverWorkingPressure, Mark, QuantityKind.Pressure, "run", over,
            hit => Sentence(judged, hit, inCase is null ? "With every outlet shut" : $"At {inCase} with every outlet shut"), _ => (inCase, -1));
        findings.Add(FindingCodes.OverWorkingPressure, Mark, QuantityKind.Pressure, "run", unregulated,
            hit => Sentence(judged, hit, $"Should the regulator fail{(inCase is null ? "" : $" at {inCase}")}, with every outlet shut,"), _ => (inCase, -1));
    }

    /// <summary>What stands in a run while every outlet is shut, absolute, Pa.</summary>
    /// <param name="judged">The layout, as drawn: upright.</param>
    /// <param name="run">The run.</param>
    /// <param name="reservoir">Absolute pressure in the reservoir, Pa.</param>
    /// <param name="temperature">Temperature of the liquid, K.</param>
    public static double InRun(JudgedLayout judged, int run, double reservoir, double temperature)
    {
        foreach (var (index, head) in Heads(judged, reservoir, temperature))
            if (index == run) return Held(judged.Layout, reservoir) + head;
        throw new ArgumentOutOfRangeException(nameof(run), run, "Not a run.");
    }

    // What the weight of the liquid adds at the lowest place of each run, Pa.
    static IEnumerable<(int Run, double Head)> Heads(JudgedLayout judged, double reservoir, double temperature)
    {
        var weight = judged.Layout.Agent.RestDensity(temperature, reservoir) * HydrostaticRise.StandardGravity;
        var heights = new double[judged.Layout.Points.Length];
        foreach (var index in judged.OutwardRuns())
        {
            judged.Pass(index);
            var run = judged.Layout.Runs[index];
            heights[run.To] = heights[run.From] + run.Rise.Meters;
            yield return (index, -weight * Lowest(judged.Layout, run, heights));
        }
    }

    // What stands behind a regulator that works.
    static double Held(Layout layout, double reservoir) =>
        (layout.Supply as BottleSupply)?.Bottle.Outlet?.Regulator is { } regulator ? Math.Min(reservoir, regulator.SetPressure.Pascals) : reservoir;

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

    static Hit Exceeded(JudgedLayout judged, int run, Severity severity, double pressure, double mark) =>
        new(run, judged.RunId(run), severity, pressure - mark, pressure - judged.Ambient, mark - judged.Ambient);

    static string Sentence(JudgedLayout judged, Hit hit, string when) =>
        $"{when} {Wording.Id(hit.Id)} sees {Wording.Of(hit.Measured, QuantityKind.Pressure, judged.Units)}, above the marked {Wording.Of(hit.Bound, QuantityKind.Pressure, judged.Units)} of its tube";
}
