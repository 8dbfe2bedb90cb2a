using OxyPlot;

namespace FlowCalc.Workbench.Charts;

/// <summary>Thins a line to what can be seen of it.</summary>
/// <remarks>
/// Of every column of the plot the first, the last, the least and the greatest point stay, which draws the same pixels (Jugel, Jerzak, Hackenbroich and Markl, M4, PVLDB 7(10) 2014, from memory); then what lies on the straight
/// line between its neighbours goes. Every point kept is one of the line's own, and its extremes are among them.
/// </remarks>
static class LineThinning
{
    /// <summary>The points to draw.</summary>
    /// <param name="points">The line, x rising; equal x are a jump.</param>
    /// <param name="columns">Columns to thin to, 1 or more.</param>
    /// <param name="grain">What cannot be seen of a difference in y.</param>
    public static List<DataPoint> Of(IReadOnlyList<DataPoint> points, int columns, double grain)
    {
        if (points.Count < 3) return [.. points];
        var (first, width) = (points[0].X, points[^1].X - points[0].X);
        List<DataPoint> kept = [];
        int Column(int at) => width > 0 ? Math.Min(columns - 1, (int)((points[at].X - first) / width * columns)) : 0;
        for (int start = 0, end; start < points.Count; start = end)
        {
            for (end = start + 1; end < points.Count && Column(end) == Column(start); end++) ;
            int least = start, most = start;
            for (var at = start + 1; at < end; at++)
            {
                if (points[at].Y < points[least].Y) least = at;
                if (points[at].Y > points[most].Y) most = at;
            }
            foreach (var at in new SortedSet<int> { start, least, most, end - 1 }) kept.Add(points[at]);
        }
        return Straight(kept, grain);
    }

    // Douglas and Peucker 1973, by the distance in y alone, as all points of one x matter; the whole line's extremes stay whatever the grain.
    static List<DataPoint> Straight(List<DataPoint> points, double grain)
    {
        var stays = new bool[points.Count];
        int least = 0, most = 0;
        for (var at = 1; at < points.Count; at++)
        {
            if (points[at].Y < points[least].Y) least = at;
            if (points[at].Y > points[most].Y) most = at;
        }
        stays[0] = stays[^1] = stays[least] = stays[most] = true;
        var ends = new Stack<(int From, int To)>();
        for (int from = 0, to = 1; to < points.Count; to++)
        {
            if (!stays[to]) continue;
            ends.Push((from, to));
            from = to;
        }
        while (ends.TryPop(out var part))
        {
            var (worst, at) = (grain, -1);
            var (a, b) = (points[part.From], points[part.To]);
            for (var i = part.From + 1; i < part.To; i++)
            {
                var y = b.X > a.X ? a.Y + (b.Y - a.Y) * (points[i].X - a.X) / (b.X - a.X) : a.Y;
                if (Math.Abs(points[i].Y - y) is var off && off > worst) (worst, at) = (off, i);
            }
            if (at < 0) continue;
            stays[at] = true;
            ends.Push((part.From, at));
            ends.Push((at, part.To));
        }
        return [.. points.Where((_, at) => stays[at])];
    }
}
