using FlowCalc.Layouts;

namespace FlowCalc.Workbench.Drawings;

/// <summary>The tree of a layout in the order in which it is drawn, whatever the order of its document: legs of a run-fed tee by port, all others by the id of the point that they feed.</summary>
sealed class LineTree
{
    readonly int[] start, children;

    LineTree(int[] start, int[] children, int[] feed, int[] depth, int[] order) => (this.start, this.children, Feed, Depth, Order) = (start, children, feed, depth, order);

    /// <summary>Index of the run that feeds each point; −1 for the supply.</summary>
    public int[] Feed { get; }

    /// <summary>Runs between the supply and each point.</summary>
    public int[] Depth { get; }

    /// <summary>Indices of the points: each before those that it feeds, a whole leg before the next.</summary>
    public int[] Order { get; }

    /// <summary>Indices of the points that a point feeds.</summary>
    public ReadOnlySpan<int> Children(int point) => children.AsSpan(start[point]..start[point + 1]);

    /// <summary>The tree of a layout.</summary>
    public static LineTree Of(Layout layout)
    {
        var points = layout.Points.Length;
        var (feed, start, depth) = (new int[points], new int[points + 1], new int[points]);
        Array.Fill(feed, -1);
        for (var run = 0; run < layout.Runs.Length; run++)
        {
            feed[layout.Runs[run].To] = run;
            start[layout.Runs[run].From + 1]++;
        }
        for (var point = 0; point < points; point++) start[point + 1] += start[point];
        var (children, next) = (new int[layout.Runs.Length], start.AsSpan(0, points).ToArray());
        foreach (var run in layout.Runs) children[next[run.From]++] = run.To;
        for (var point = 0; point < points; point++)
            children.AsSpan(start[point]..start[point + 1]).Sort((one, other) => Compare(layout, feed, one, other));

        var (order, open) = (new List<int>(points), new Stack<int>());
        open.Push(Array.FindIndex([.. layout.Points], point => point is SupplyPoint));
        while (open.TryPop(out var point))
        {
            order.Add(point);
            for (var at = start[point + 1] - 1; at >= start[point]; at--)
            {
                depth[children[at]] = depth[point] + 1;
                open.Push(children[at]);
            }
        }
        return new(start, children, feed, depth, [.. order]);
    }

    static int Compare(Layout layout, int[] feed, int one, int other)
    {
        var byPort = (layout.Runs[feed[one]].Leaves ?? TeePort.Run).CompareTo(layout.Runs[feed[other]].Leaves ?? TeePort.Run);
        return byPort != 0 ? byPort : string.CompareOrdinal(layout.Points[one].Id, layout.Points[other].Id);
    }
}
