using FlowCalc.Layouts;

namespace FlowCalc.Routes;

/// <summary>A clip whose place is fixed by a fitting or a bend.</summary>
/// <param name="At">Where, m along the run.</param>
/// <param name="IsBesideCarried">Whether the fitting beside it is one that the tube carries.</param>
readonly record struct ClipAnchor(double At, bool IsBesideCarried)
{
    /// <summary>Where the straight that it holds begins, m along the run.</summary>
    public double From { get; init; }

    /// <summary>Where that ends.</summary>
    public double To { get; init; }

    /// <summary>Where on the straight it sits.</summary>
    public ClipAnchorPlace Place { get; init; }
}

/// <summary>Where on a straight a clip sits that a fitting or a bend fixes.</summary>
enum ClipAnchorPlace
{
    /// <summary>Near its start.</summary>
    Start,

    /// <summary>In the middle of a short one.</summary>
    Middle,

    /// <summary>Near its end.</summary>
    End,
}

/// <summary>Clips that fittings and bends fix: along each straight at both its ends, or once in the middle where it is short.</summary>
static class ClipAnchors
{
    /// <summary>Farthest from a fitting or a bend to its clip, m.</summary>
    public const double First = 0.1;

    // A clip and its screw need about this much straight tube (common practice, no source), m.
    const double Width = 0.02;

    /// <summary>The clips of a run in order along it.</summary>
    public static List<ClipAnchor> Of(Layout layout, Run run, CancellationToken cancellation)
    {
        List<ClipAnchor> anchors = [];
        var (from, isCarried) = (0.0, Carries(layout.Points[run.From]));
        foreach (var (start, end, isFitting) in Breaks(run))
        {
            if ((anchors.Count & 0xFFF) == 0) cancellation.ThrowIfCancellationRequested();
            AddStraight(anchors, from, start, isCarried, isFitting);
            (from, isCarried) = (end, isFitting);
        }
        AddStraight(anchors, from, run.Length.Meters, isCarried, Carries(layout.Points[run.To]));
        return anchors;
    }

    /// <summary>What lies between each of them and the next.</summary>
    public static ClipGap[] Gaps(List<ClipAnchor> anchors, double spacing)
    {
        var gaps = new ClipGap[Math.Max(0, anchors.Count - 1)];
        for (var gap = 0; gap < gaps.Length; gap++) gaps[gap] = ClipGap.Between(anchors[gap], anchors[gap + 1], spacing);
        return gaps;
    }

    /// <summary>Whether the tube carries a fitting; what a panel holds it need not.</summary>
    public static bool IsCarried(Fitting fitting) => fitting.Kind != Fitting.BulkheadUnion;

    /// <summary>Whether the tube carries the fitting of a point; the bottle and a nozzle have a fixing of their own.</summary>
    public static bool Carries(LayoutPoint point) => point is Tee or Reducer or Junction or Cap;

    static void AddStraight(List<ClipAnchor> anchors, double from, double to, bool carriesBefore, bool carriesBehind)
    {
        var width = to - from;
        if (width < Width) return;
        if (width <= 2 * First)
        {
            anchors.Add(new(from + width / 2, carriesBefore || carriesBehind) { From = from, To = to, Place = ClipAnchorPlace.Middle });
            return;
        }
        anchors.Add(new(from + First, carriesBefore) { From = from, To = to, Place = ClipAnchorPlace.Start });
        anchors.Add(new(to - First, carriesBehind) { From = from, To = to, Place = ClipAnchorPlace.End });
    }

    // Arcs and fittings in order along the run.
    static IEnumerable<(double Start, double End, bool IsCarried)> Breaks(Run run)
    {
        var bends = PlacedBend.Of(run).Select(bend => (bend.Start, bend.End, IsCarried: false));
        var fittings = run.Fittings.Where(PieceCutter.IsCutAt)
            .Select(fitting => (Start: fitting.At!.Value.Meters, End: fitting.At!.Value.Meters, IsCarried: IsCarried(fitting.Fitting)));
        return bends.Concat(fittings).OrderBy(one => one.Start);
    }
}
