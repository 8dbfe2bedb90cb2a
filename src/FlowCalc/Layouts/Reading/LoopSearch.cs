namespace FlowCalc.Layouts.Reading;

/// <summary>Looks for runs that go round in a ring which the supply never reaches.</summary>
static class LoopSearch
{
    const int MostNamed = 8;

    /// <summary>Adds one fault a ring.</summary>
    /// <param name="context">The reading.</param>
    /// <param name="points">The points.</param>
    /// <param name="runs">The runs.</param>
    /// <param name="feeding">By point, the run that comes to it; −1 for none.</param>
    /// <param name="isExcused">By point, whether its feeds have been reported as wrong.</param>
    public static void Run(ReadingContext context, PointDraft[] points, RunDraft[] runs, int[] feeding, bool[] isExcused)
    {
        // Every point has one feed at most, so going upstream from anywhere ends at a point without one, at a walk made before, or in a ring.
        var walks = new int[points.Length];
        for (var start = 0; start < points.Length; start++)
        {
            context.Pass(start);
            var point = start;
            while (point >= 0 && walks[point] == 0)
            {
                walks[point] = start + 1;
                point = feeding[point] < 0 ? -1 : runs[feeding[point]].From;
            }
            if (point >= 0 && walks[point] == start + 1) Report(context, points, runs, feeding, isExcused, point);
        }
    }

    static void Report(ReadingContext context, PointDraft[] points, RunDraft[] runs, int[] feeding, bool[] isExcused, int start)
    {
        List<int> ring = [];
        var point = start;
        do
        {
            // A point with two feeds has its fault already; the ring is the other side of it.
            if (isExcused[point]) return;
            ring.Add(feeding[point]);
            point = runs[feeding[point]].From;
        }
        while (point != start);
        ring.Sort();
        var names = string.Join(", ", ring.Take(MostNamed).Select(run => Label(points, runs[run])));
        if (ring.Count > MostNamed) names += ", …";
        context.Faults.Add(runs[ring[0]].Element, $"{ring.Count} runs make a loop that the supply does not reach: {names}");
    }

    static string Label(PointDraft[] points, RunDraft run) =>
        run.Run is { } known ? Said.Name(known.Id) : $"{Said.Name(points[run.From].Id ?? "")} to {Said.Name(points[run.To].Id ?? "")}";
}
