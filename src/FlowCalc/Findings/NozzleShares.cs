using FlowCalc.Flows;

namespace FlowCalc.Findings;

/// <summary>Nozzles that get too little or too much of the flow.</summary>
static class NozzleShares
{
    public static List<Hit>? Starved(FlowCase flowCase)
    {
        var limit = flowCase.Limit(FindingCodes.StarvedNozzle);
        List<Hit>? hits = null;
        foreach (var nozzle in flowCase.Flow.Nozzles)
        {
            if (nozzle.Deviation is not { } deviation) continue;
            var (severity, step) = Grading.Of(limit, -deviation);
            // Nothing at all is no matter of degree: no stated limit makes it less than a failure.
            if (IsClosed(nozzle)) (severity, step) = (Severity.Fail, limit.Fail?.Si ?? 1);
            if (severity != Severity.Pass) Add(ref hits, flowCase, nozzle, severity, deviation, -step);
        }
        return hits;
    }

    public static List<Hit>? Overfed(FlowCase flowCase)
    {
        var limit = flowCase.Limit(FindingCodes.OverfedNozzle);
        List<Hit>? hits = null;
        foreach (var nozzle in flowCase.Flow.Nozzles)
        {
            if (nozzle.Deviation is not { } deviation) continue;
            var (severity, step) = Grading.Of(limit, deviation);
            if (severity != Severity.Pass) Add(ref hits, flowCase, nozzle, severity, deviation, step);
        }
        return hits;
    }

    public static bool IsClosed(NozzleFlow nozzle) => nozzle.MassFlow.KilogramsPerSecond <= 0;

    /// <summary>The sentence for one nozzle, by its place among the flow's nozzles.</summary>
    public static string Sentence(FlowCase flowCase, int index, Hit hit)
    {
        var nozzle = flowCase.Flow.Nozzles[index];
        var id = Wording.Id(hit.Id);
        if (IsClosed(nozzle))
            return $"{id} gets nothing where {Wording.Share(nozzle.WantedShare)} of the flow is wanted: with the rise to it no more than {Wording.Gauge(nozzle.Pressure.Pascals, flowCase)} is left there, so that it would draw air";
        var wanted = $"{id} gets {Wording.Share(nozzle.Share)} of the flow where {Wording.Share(nozzle.WantedShare)} is wanted";
        var off = Math.Abs(hit.Measured);
        var step = Math.Abs(hit.Bound);
        return $"{wanted}: {Wording.Percent(off, step)} too {(hit.Measured < 0 ? "little" : "much")}, limit {Wording.Percent(step)}";
    }

    static void Add(ref List<Hit>? hits, FlowCase flowCase, NozzleFlow nozzle, Severity severity, double deviation, double bound) =>
        (hits ??= []).Add(new Hit(nozzle.Point, flowCase.PointId(nozzle.Point), severity, Math.Abs(deviation), deviation, bound));
}
