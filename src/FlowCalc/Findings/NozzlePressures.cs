using FlowCalc.Layouts;
using FlowCalc.Quantities;

namespace FlowCalc.Findings;

/// <summary>Nozzles outside their own range of pressures, and pressures that differ much from nozzle to nozzle.</summary>
static class NozzlePressures
{
    /// <summary>Whose limit a range is.</summary>
    public const string Statement = "the nozzle's statement";

    // Of the reservoir's gauge pressure: below this a difference of two pressures is mostly rounding.
    const double LeastPart = 1e-9;

    public static List<Hit>? BelowRange(FlowCase flowCase) => OutsideRange(flowCase, below: true);

    public static List<Hit>? AboveRange(FlowCase flowCase) => OutsideRange(flowCase, below: false);

    public static string Sentence(FlowCase flowCase, Hit hit)
    {
        var below = hit.Measured < hit.Bound;
        return $"{Wording.Id(hit.Id)} works at {Wording.Of(hit.Measured, QuantityKind.Pressure, flowCase.Units)}, {(below ? "below" : "above")} the {(below ? "least" : "most")} "
            + $"of its range, {Wording.Of(hit.Bound, QuantityKind.Pressure, flowCase.Units)}";
    }

    public static void Spread(FlowCase flowCase, FindingList findings)
    {
        if (Ends(flowCase) is not var (least, most, ratio)) return;
        var limit = flowCase.Limit(FindingCodes.PressureSpread);
        var (severity, step) = Grading.Of(limit, ratio);
        if (severity == Severity.Pass) return;

        var nozzles = flowCase.Flow.Nozzles;
        var (lowId, highId) = (flowCase.PointId(nozzles[least].Point), flowCase.PointId(nozzles[most].Point));
        findings.Add(new Finding(FindingCodes.PressureSpread, severity, [highId, lowId],
            $"Nozzle pressures run from {Wording.Gauge(nozzles[least].Pressure.Pascals, flowCase)} at {Wording.Id(lowId)} to "
            + $"{Wording.Gauge(nozzles[most].Pressure.Pascals, flowCase)} at {Wording.Id(highId)}, {Wording.Number(ratio)} times as much, limit {Wording.Number(step)}.",
            new Measure(ratio, null), new Measure(step, null), limit.Source, null), nozzles[least].Point);
    }

    /// <summary>The nozzles at the lowest and the highest pressure, and the ratio of these; null where there are not two, or where it says nothing.</summary>
    public static (int Least, int Most, double Ratio)? Ends(FlowCase flowCase)
    {
        var (least, most) = (-1, -1);
        var nozzles = flowCase.Flow.Nozzles;
        for (var index = 0; index < nozzles.Length; index++)
        {
            flowCase.Pass(index);
            // A nozzle that delivers nothing is told by itself; it has no pressure to compare.
            if (NozzleShares.IsClosed(nozzles[index])) continue;
            if (least < 0 || nozzles[index].Pressure < nozzles[least].Pressure) least = index;
            if (most < 0 || nozzles[index].Pressure > nozzles[most].Pressure) most = index;
        }
        if (least == most) return null;

        var low = nozzles[least].Pressure.Pascals - flowCase.Ambient;
        var high = nozzles[most].Pressure.Pascals - flowCase.Ambient;
        // Where the lower one is next to nothing their ratio says nothing either; what little flows there is told by itself.
        if (flowCase.Flow.Supply is not { } supply || !(low > LeastPart * (supply.ReservoirPressure.Pascals - flowCase.Ambient))) return null;
        return (least, most, high / low);
    }

    static List<Hit>? OutsideRange(FlowCase flowCase, bool below)
    {
        List<Hit>? hits = null;
        foreach (var flow in flowCase.Flow.Nozzles)
        {
            flowCase.Pass(flow.Point);
            if (Outside(flowCase, flow.Point, flow.Pressure.Pascals, below) is { } hit) (hits ??= []).Add(hit);
        }
        return hits;
    }

    /// <summary>A nozzle outside its own range by more than rounding.</summary>
    /// <param name="judged">The layout.</param>
    /// <param name="point">Index of the nozzle's point.</param>
    /// <param name="pressure">Absolute pressure at it, Pa.</param>
    /// <param name="below">True to look below the range, false above.</param>
    /// <returns>Null where it keeps that end of its range or has none.</returns>
    public static Hit? Outside(JudgedLayout judged, int point, double pressure, bool below)
    {
        if (judged.Layout.Points[point] is not Nozzle { PressureRange: { } range } nozzle) return null;
        var bound = below ? range.Least.Pascals : range.Most.Pascals;
        var excess = below ? bound - pressure : pressure - bound;
        return excess > 1e-9 * bound ? new Hit(point, nozzle.Id, Severity.Warn, excess, pressure - judged.Ambient, bound - judged.Ambient) : null;
    }
}
