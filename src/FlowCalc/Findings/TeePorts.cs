using FlowCalc.Layouts;
using FlowCalc.Quantities;

namespace FlowCalc.Findings;

/// <summary>Tubes that leave a tee at an angle to its port, as far as places are given.</summary>
static class TeePorts
{
    public static void Find(FlowCase flowCase, FindingList findings)
    {
        var limit = flowCase.Limit(FindingCodes.TeePortOffAngle);
        List<Hit>? hits = null;
        var points = flowCase.Layout.Points;
        for (var point = 0; point < points.Length; point++)
        {
            flowCase.Pass(point);
            if (points[point] is not Tee tee || flowCase.FeedRun[point] < 0) continue;
            if (flowCase.Layout.Runs[flowCase.FeedRun[point]].Route is not { } feed) continue;
            var legs = flowCase.Leaving(point);
            var before = hits?.Count ?? 0;
            foreach (var leg in legs)
            {
                if (flowCase.Layout.Runs[leg].Route is not { } route) continue;
                var off = OffPort(tee, flowCase.Layout.Runs[leg], feed.EndDirection, route.StartDirection);
                var (severity, step) = Grading.Of(limit, off);
                if (severity != Severity.Pass) (hits ??= []).Add(new Hit(leg, flowCase.RunId(leg), severity, off, off, step));
            }
            // Each outlet may be square to the feed and yet the two not in line.
            if (tee.FedThrough == TeePort.Branch && (hits?.Count ?? 0) == before) AddBent(flowCase, limit, legs, ref hits);
        }
        findings.Add(FindingCodes.TeePortOffAngle, limit.Source, QuantityKind.Angle, "run", hits, hit =>
            $"{Wording.Id(hit.Id)} leaves {Wording.Id(flowCase.PointId(flowCase.Layout.Runs[hit.Item].From))} "
            + $"{Wording.Of(hit.Measured, QuantityKind.Angle, flowCase.Units)} off the axis of its port, limit {Wording.Of(hit.Bound, QuantityKind.Angle, flowCase.Units)}");
    }

    /// <summary>The angle between a run and the axis of the tee's port that it leaves by, rad; null where there is no tee or no way in space.</summary>
    public static double? OfRun(JudgedLayout judged, int run)
    {
        var leg = judged.Layout.Runs[run];
        return judged.Layout.Points[leg.From] is Tee tee && leg.Route is { } route && judged.FeedRun[leg.From] is >= 0 and var before && judged.Layout.Runs[before].Route is { } feed
            ? OffPort(tee, leg, feed.EndDirection, route.StartDirection)
            : null;
    }

    static double OffPort(Tee tee, Run leg, Direction feed, Direction start)
    {
        var turn = feed.AngleTo(start);
        return tee.FedThrough == TeePort.Run && leg.Leaves == TeePort.Run ? turn : Math.Abs(turn - Math.PI / 2);
    }

    // It is told of the second one.
    static void AddBent(FlowCase flowCase, Limits.Limit limit, ReadOnlySpan<int> legs, ref List<Hit>? hits)
    {
        if (legs.Length != 2) return;
        var (first, second) = (flowCase.Layout.Runs[legs[0]].Route, flowCase.Layout.Runs[legs[1]].Route);
        if (first is null || second is null) return;
        var off = Math.PI - first.StartDirection.AngleTo(second.StartDirection);
        var (severity, step) = Grading.Of(limit, off);
        if (severity == Severity.Pass) return;
        (hits ??= []).Add(new Hit(legs[1], flowCase.RunId(legs[1]), severity, off, off, step));
    }
}
