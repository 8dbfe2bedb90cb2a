using FlowCalc.Layouts;
using FlowCalc.Limits;
using FlowCalc.Quantities;

namespace FlowCalc.Findings;

/// <summary>Bends that are too tight, and bends with too little straight tube between them.</summary>
static class Bends
{
    const string TubesStatement = "the tube's statement";

    public static void TooTight(FlowCase flowCase, FindingList findings)
    {
        if (TightRuns(flowCase) is not { } tight) return;
        foreach (var stated in (ReadOnlySpan<bool>)[true, false])
        {
            var hits = tight.FindAll(hit => flowCase.Layout.Runs[hit.Item].Tube.MinimumBendRadius is not null == stated);
            findings.Add(FindingCodes.BendTooTight, stated ? TubesStatement : flowCase.Limit(FindingCodes.BendTooTight).Source, QuantityKind.Length, "run", hits, hit => TooTightSentence(flowCase, hit));
        }
    }

    public static void Overlap(FlowCase flowCase, FindingList findings)
    {
        var (overlap, interact) = (flowCase.Limit(FindingCodes.BendsOverlap), flowCase.Limit(FindingCodes.BendsInteract));
        List<Hit>? overlapping = null, close = null;
        var runs = flowCase.Layout.Runs;
        for (var index = 0; index < runs.Length; index++)
        {
            flowCase.Pass(index);
            if (runs[index] is not { Route: { } route } run || run.Bends.Length == 0) continue;
            var (least, between) = Straights(route);
            if (AddOverlap(run, index, least, between, overlap, ref overlapping) && least < 0) continue;

            var bores = between / run.Tube.Bore.Meters;
            var (severity, step) = Grading.Of(interact, bores, lowerIsWorse: true);
            if (severity != Severity.Pass) (close ??= []).Add(new Hit(index, run.Id, severity, -bores, bores, step));
        }
        findings.Add(FindingCodes.BendsOverlap, overlap.Source, QuantityKind.Length, "run", overlapping, hit => OverlapSentence(flowCase, hit));
        findings.Add(FindingCodes.BendsInteract, interact.Source, null, "run", close, hit =>
            $"Two bends of {Wording.Id(hit.Id)} are {Wording.Number(hit.Measured)} bores of straight tube apart, limit {Wording.Number(hit.Bound)}: each changes the other's loss by -30 % to +20 %, which is not counted");
    }

    /// <summary>The radius that a tube allows, and whether the tube states it; null where nothing is known of it.</summary>
    public static (double Radius, bool IsStated)? Least(Tube tube, Limit limit) => tube switch
    {
        { MinimumBendRadius: { } stated } => (stated.Meters, true),
        { OutsideDiameter: { } outside } when (limit.Warn ?? limit.Fail) is { } step => (step.Si * outside.Meters, false),
        _ => null,
    };

    // What is measured is the least radius.
    static List<Hit>? TightRuns(FlowCase flowCase)
    {
        var limit = flowCase.Limit(FindingCodes.BendTooTight);
        List<Hit>? hits = null;
        var runs = flowCase.Layout.Runs;
        for (var index = 0; index < runs.Length; index++)
        {
            flowCase.Pass(index);
            var run = runs[index];
            if (run.Bends.Length == 0) continue;
            var radius = run.Bends[0].Radius.Meters;
            foreach (var bend in run.Bends) radius = Math.Min(radius, bend.Radius.Meters);

            if (run.Tube.MinimumBendRadius is { } least)
            {
                if (Grading.IsBeyond(radius / least.Meters, 1, lowerIsWorse: true))
                    (hits ??= []).Add(new Hit(index, run.Id, Severity.Fail, -radius / least.Meters, radius, least.Meters));
            }
            else if (run.Tube.OutsideDiameter is { } outside)
            {
                var (severity, step) = Grading.Of(limit, radius / outside.Meters, lowerIsWorse: true);
                if (severity != Severity.Pass) (hits ??= []).Add(new Hit(index, run.Id, severity, -radius / outside.Meters, radius, step * outside.Meters));
            }
        }
        return hits;
    }

    static string TooTightSentence(FlowCase flowCase, Hit hit)
    {
        var tube = flowCase.Layout.Runs[hit.Item].Tube;
        var (radius, least) = (Wording.Of(hit.Measured, QuantityKind.Length, flowCase.Units), Wording.Of(hit.Bound, QuantityKind.Length, flowCase.Units));
        return tube.MinimumBendRadius is not null
            ? $"A bend of {Wording.Id(hit.Id)} has a radius of {radius}, below the least radius of its tube, {least}"
            : $"A bend of {Wording.Id(hit.Id)} has a radius of {radius}, {Wording.Number(hit.Measured / tube.OutsideDiameter!.Value.Meters)} outside diameters, "
                + $"limit {Wording.Number(hit.Bound / tube.OutsideDiameter.Value.Meters)} ({least})";
    }

    /// <summary>The least straight of a route, and the least between two bends, m; infinite where there are no two.</summary>
    public static (double Least, double Between) Straights(RunRoute route)
    {
        var between = double.PositiveInfinity;
        for (var straight = 1; straight < route.Straights.Length - 1; straight++) between = Math.Min(between, route.Straights[straight].Meters);
        return (Math.Min(between, Math.Min(route.Straights[0].Meters, route.Straights[^1].Meters)), between);
    }

    static bool AddOverlap(Run run, int index, double least, double between, Limit limit, ref List<Hit>? hits)
    {
        // Without an outside diameter only a straight below nothing can be told; any length over the bore stands for it.
        var outside = (run.Tube.OutsideDiameter ?? run.Tube.Bore).Meters;
        var known = run.Tube.OutsideDiameter is not null;
        // A bend may begin at a fitting, so only what lies between two bends has to leave room for the bender.
        var (severity, step) = least < 0 || !known ? Grading.Of(limit, least / outside, lowerIsWorse: true) : Grading.Of(limit, between / outside, lowerIsWorse: true);
        if (severity == Severity.Pass || (!known && least >= 0)) return false;
        var measured = least < 0 ? least : between;
        (hits ??= []).Add(new Hit(index, run.Id, severity, -measured, measured, step * outside));
        return true;
    }

    static string OverlapSentence(FlowCase flowCase, Hit hit)
    {
        var id = Wording.Id(hit.Id);
        var size = Wording.Of(Math.Abs(hit.Measured), QuantityKind.Length, flowCase.Units);
        return hit.Measured < 0
            ? $"The bends of {id} do not fit: a straight comes out {size} below nothing"
            : $"Two bends of {id} have {size} of straight tube between them, limit {Wording.Of(hit.Bound, QuantityKind.Length, flowCase.Units)} to grip";
    }
}
