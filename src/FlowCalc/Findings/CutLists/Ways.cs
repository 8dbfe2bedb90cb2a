using FlowCalc.Layouts;
using FlowCalc.Stock;

namespace FlowCalc.Findings.CutLists;

/// <summary>What the way of a run itself does wrong: straight between rigid ends, or sagging below both.</summary>
static class Ways
{
    // The span of temperature that a vehicle's or a boat's tube may see between assembly and use, K (common practice, no source).
    const double Warming = 80;

    public static void Find(JudgedCutList judged, FindingList findings)
    {
        var (rigid, low) = (judged.Limit(FindingCodes.StraightBetweenRigidEnds), judged.Limit(FindingCodes.LowPoint));
        List<Hit>? straight = null, sagging = null;
        foreach (var (index, run, _) in judged.Runs)
        {
            if (run.Route is not { } route) continue;
            if (run.Bends.IsEmpty) Add(rigid, run, index, run.Length.Meters, ref straight);
            if (!route.Corners.IsEmpty) Add(low, run, index, Sag(judged.Layout, run, route), ref sagging);
        }
        judged.Add(findings, FindingCodes.StraightBetweenRigidEnds, straight, hit => Sentence(judged, hit));
        judged.Add(findings, FindingCodes.LowPoint, sagging, hit =>
            $"{Wording.Id(hit.Id)} sags {judged.Text(hit.Measured, hit.Bound)} below the lower of its ends, limit {judged.Text(hit.Bound)}: it holds liquid after a discharge, and whatever gets in");
    }

    static void Add(Limits.Limit limit, Run run, int index, double measured, ref List<Hit>? hits)
    {
        var (severity, step) = Grading.Of(limit, measured);
        if (severity != Severity.Pass) (hits ??= []).Add(new Hit(index, run.Id, severity, measured, measured, step));
    }

    static double Sag(Layout layout, Run run, RunRoute route)
    {
        var lowest = double.PositiveInfinity;
        foreach (var corner in route.Corners) lowest = Math.Min(lowest, corner.Z.Meters);
        return Math.Min(layout.Points[run.From].At!.Value.Z.Meters, layout.Points[run.To].At!.Value.Z.Meters) - lowest;
    }

    static string Sentence(JudgedCutList judged, Hit hit)
    {
        var text = $"{Wording.Id(hit.Id)} is straight for {judged.Text(hit.Measured, hit.Bound)} between two fittings, limit {judged.Text(hit.Bound)}: an offset or a bend lets it give";
        return TubeMaterial.Of(judged.Layout.Runs[hit.Item].Tube.Material) is { } material
            ? $"{text}; warmer by {Wording.Number(Warming)} K it is {judged.Text(Growth(material, hit.Measured, Warming))} longer"
            : text;
    }

    /// <summary>How much longer a tube gets, m: expansion × length × warming.</summary>
    public static double Growth(TubeMaterial material, double length, double warming) => material.Expansion * length * warming;
}
