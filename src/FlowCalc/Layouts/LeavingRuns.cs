namespace FlowCalc.Layouts;

/// <summary>The runs that leave each point, in the document's order.</summary>
internal sealed class LeavingRuns
{
    readonly int[] _start;
    readonly int[] _runs;

    LeavingRuns(int[] start, int[] runs, int supplyPoint) => (_start, _runs, SupplyPoint) = (start, runs, supplyPoint);

    /// <summary>Index of the supply point.</summary>
    public int SupplyPoint { get; }

    /// <summary>Sorts the runs of a layout by the point that they leave.</summary>
    /// <param name="layout">A checked layout.</param>
    public static LeavingRuns Of(Layout layout)
    {
        var start = new int[layout.Points.Length + 1];
        foreach (var run in layout.Runs) start[run.From + 1]++;
        for (var i = 0; i < layout.Points.Length; i++) start[i + 1] += start[i];
        var next = start.AsSpan(0, layout.Points.Length).ToArray();
        var runs = new int[layout.Runs.Length];
        for (var i = 0; i < runs.Length; i++) runs[next[layout.Runs[i].From]++] = i;
        var supply = 0;
        while (layout.Points[supply] is not Layouts.SupplyPoint) supply++;
        return new(start, runs, supply);
    }

    /// <summary>Indices in <see cref="Layout.Runs"/> of the runs that leave a point.</summary>
    /// <param name="point">Index in <see cref="Layout.Points"/>.</param>
    public ReadOnlySpan<int> Of(int point) => _runs.AsSpan(_start[point].._start[point + 1]);
}
