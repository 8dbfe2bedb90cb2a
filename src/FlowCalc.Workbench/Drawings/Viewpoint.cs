using System.Collections.Immutable;
using FlowCalc.Layouts;
using FlowCalc.Workbench.Pictures;

namespace FlowCalc.Workbench.Drawings;

/// <summary>Chooses the quarter turn from which least of a layout lies on each other.</summary>
static class Viewpoint
{
    /// <summary>Parts of the size of the picture under which two points count as one on the other.</summary>
    const double Near = 0.03;

    const int MostSegments = 1500;

    /// <summary>The turn; the first of several that are as good.</summary>
    public static IsometricAxes Of(Layout layout, ImmutableArray<ImmutableArray<Place>> ways, CancellationToken cancel)
    {
        var (best, least) = (default(IsometricAxes), double.PositiveInfinity);
        for (var turns = 0; turns < 4; turns++)
        {
            var axes = new IsometricAxes(turns);
            var cost = Overlaps(layout, ways, axes, cancel);
            if (cost < least) (best, least) = (axes, cost);
        }
        return best;
    }

    static double Overlaps(Layout layout, ImmutableArray<ImmutableArray<Place>> ways, IsometricAxes axes, CancellationToken cancel)
    {
        Spot[] spots = [.. layout.Points.Select(point => axes.Of(point.At!.Value))];
        var box = Box.Of(spots.Concat(ways.SelectMany(way => way.Select(axes.Of))));
        var near = Near * Math.Max(box.Width, box.Height);
        if (near == 0) return double.MaxValue;
        var cost = 0.0;
        for (var one = 0; one < spots.Length; one++)
            for (var other = one + 1; other < spots.Length; other++)
                if (Math.Abs(spots[one].X - spots[other].X) < near) cost += 3 * Math.Max(0, 1 - WayLine.Distance(spots[one], spots[other]) / near);
        List<(Spot From, Spot To, Box Box, int Run)> segments = [];
        for (var run = 0; run < ways.Length; run++)
            for (var at = 1; at < ways[run].Length && segments.Count < MostSegments; at++)
            {
                var (from, to) = (axes.Of(ways[run][at - 1]), axes.Of(ways[run][at]));
                segments.Add((from, to, Box.Between(from, to).Grown(near / 4), run));
            }
        for (var one = 0; one < segments.Count; one++)
        {
            cancel.ThrowIfCancellationRequested();
            var (from, to, around, run) = segments[one];
            for (var other = one + 1; other < segments.Count; other++)
                if (around.Overlaps(segments[other].Box) && run != segments[other].Run) cost += Crossing(from, to, segments[other].From, segments[other].To, near);
        }
        return cost;
    }

    // 1 for two that cross within both, 4 for two that lie along each other.
    static double Crossing(Spot a, Spot b, Spot c, Spot d, double near)
    {
        var (ux, uy, vx, vy) = (b.X - a.X, b.Y - a.Y, d.X - c.X, d.Y - c.Y);
        var across = ux * vy - uy * vx;
        var (first, second) = (WayLine.Distance(a, b), WayLine.Distance(c, d));
        if (first == 0 || second == 0) return 0;
        if (Math.Abs(across) > 0.02 * first * second)
        {
            var (t, s) = (((c.X - a.X) * vy - (c.Y - a.Y) * vx) / across, ((c.X - a.X) * uy - (c.Y - a.Y) * ux) / across);
            return t is > 0.01 and < 0.99 && s is > 0.01 and < 0.99 ? 1 : 0;
        }
        var apart = Math.Abs((c.X - a.X) * uy - (c.Y - a.Y) * ux) / first;
        var (from, to) = (((c.X - a.X) * ux + (c.Y - a.Y) * uy) / first, ((d.X - a.X) * ux + (d.Y - a.Y) * uy) / first);
        var shared = Math.Min(first, Math.Max(from, to)) - Math.Max(0, Math.Min(from, to));
        return apart < near / 2 && shared > near ? 4 : 0;
    }
}
