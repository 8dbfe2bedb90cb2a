using FlowCalc.Flows;
using FlowCalc.Limits;

namespace FlowCalc.Findings;

/// <summary>Nozzles that get too little or too much of the flow.</summary>
static class NozzleShares
{
    const double MostDeviation = 1e12;

    public static List<Hit>? Starved(FlowCase flowCase)
    {
        var limit = flowCase.Limit(FindingCodes.StarvedNozzle);
        List<Hit>? hits = null;
        foreach (var nozzle in flowCase.Flow.Nozzles)
        {
            flowCase.Pass(nozzle.Point);
            var (severity, step) = OfStarved(limit, nozzle);
            if (severity != Severity.Pass) Add(ref hits, flowCase, nozzle, severity, IsClosed(nozzle) ? -1 : Deviation(nozzle) ?? 0, -step);
        }
        return hits;
    }

    public static List<Hit>? Overfed(FlowCase flowCase)
    {
        var limit = flowCase.Limit(FindingCodes.OverfedNozzle);
        List<Hit>? hits = null;
        foreach (var nozzle in flowCase.Flow.Nozzles)
        {
            flowCase.Pass(nozzle.Point);
            var (severity, step) = OfOverfed(limit, nozzle);
            if (severity != Severity.Pass) Add(ref hits, flowCase, nozzle, severity, Deviation(nozzle) ?? nozzle.Share, step);
        }
        return hits;
    }

    /// <summary>How badly a nozzle is starved.</summary>
    public static (Severity Severity, double Step) OfStarved(Limit limit, NozzleFlow nozzle) => OfStarved(limit, IsClosed(nozzle), Deviation(nozzle));

    /// <summary>How badly a nozzle is starved that gets nothing, or deviates so from its wanted share.</summary>
    public static (Severity Severity, double Step) OfStarved(Limit limit, bool getsNothing, double? deviation)
    {
        // Nothing at all is no matter of degree: no stated limit makes it less than a failure, and a nozzle is there to be fed though no share of it is named.
        if (getsNothing) return (Severity.Fail, Math.Min(1, limit.Fail?.Si ?? 1));
        return deviation is { } off ? Grading.Of(limit, -off) : (Severity.Pass, 0);
    }

    /// <summary>How badly a nozzle is overfed; one of which nothing is wanted never more than to be warned of.</summary>
    public static (Severity Severity, double Step) OfOverfed(Limit limit, NozzleFlow nozzle) => OfOverfed(limit, Deviation(nozzle), nozzle.Share);

    /// <summary>How badly a nozzle is overfed that deviates so from its wanted share; null where none is wanted, and then its share of the whole counts.</summary>
    public static (Severity Severity, double Step) OfOverfed(Limit limit, double? deviation, double share)
    {
        if (deviation is { } off) return Grading.Of(limit, off);
        return (limit.Warn ?? limit.Fail) is { } step && Grading.IsBeyond(share, step.Si) ? (Severity.Warn, step.Si) : (Severity.Pass, 0);
    }

    public static bool IsClosed(NozzleFlow nozzle) => nozzle.MassFlow.KilogramsPerSecond <= 0;

    /// <summary>Share over wanted share, less 1; null where nothing is wanted, or so little that the ratio says no more than that.</summary>
    public static double? Deviation(NozzleFlow nozzle) => Telling(nozzle.Deviation);

    /// <summary>A deviation that says something; null for one that only says that next to nothing is wanted.</summary>
    public static double? Telling(double? deviation) => deviation is { } told and < MostDeviation ? told : null;

    /// <summary>The sentence for one nozzle, by its place among the flow's nozzles.</summary>
    public static string Sentence(FlowCase flowCase, int index, Hit hit)
    {
        var nozzle = flowCase.Flow.Nozzles[index];
        var id = Wording.Id(hit.Id);
        if (IsClosed(nozzle))
        {
            var instead = Deviation(nozzle) is null ? "" : $" where {Wording.Share(nozzle.WantedShare)} of the flow is wanted";
            return $"{id} gets nothing{instead}: with the rise to it no more than {Wording.Gauge(nozzle.Pressure.Pascals, flowCase)} is left there, so that it would draw air";
        }
        return Deviation(nozzle) is null ? Unwanted(id, nozzle.Share, "the flow", hit) : Off(id, nozzle.Share, nozzle.WantedShare, "the flow", hit);
    }

    /// <summary>What is so of a nozzle or a zone whose share is off.</summary>
    /// <param name="who">The nozzle or zone.</param>
    /// <param name="share">Its share.</param>
    /// <param name="wanted">Its wanted share.</param>
    /// <param name="whole">What the share is of.</param>
    /// <param name="hit">The deviation, and the step that it is beyond.</param>
    public static string Off(string who, double share, double wanted, string whole, Hit hit)
    {
        var (off, step) = (Math.Abs(hit.Measured), Math.Abs(hit.Bound));
        return $"{who} gets {Wording.Share(share)} of {whole} where {Wording.Share(wanted)} is wanted: "
            + $"{Wording.Percent(off, step)} too {(hit.Measured < 0 ? "little" : "much")}, limit {Wording.Percent(step)}";
    }

    /// <summary>What is so of a nozzle that gets a share where none is wanted.</summary>
    /// <param name="who">The nozzle.</param>
    /// <param name="share">Its share.</param>
    /// <param name="whole">What the share is of.</param>
    /// <param name="hit">The step that it is beyond.</param>
    public static string Unwanted(string who, double share, string whole, Hit hit) =>
        $"{who} gets {Wording.Share(share)} of {whole} where none is wanted, limit {Wording.Percent(hit.Bound)} of the whole";

    static void Add(ref List<Hit>? hits, FlowCase flowCase, NozzleFlow nozzle, Severity severity, double measured, double bound) =>
        (hits ??= []).Add(new Hit(nozzle.Point, flowCase.PointId(nozzle.Point), severity, Math.Abs(measured), measured, bound));
}
