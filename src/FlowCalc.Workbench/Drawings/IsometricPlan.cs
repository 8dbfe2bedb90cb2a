using System.Collections.Immutable;
using FlowCalc.Layouts;
using FlowCalc.Workbench.Pictures;

namespace FlowCalc.Workbench.Drawings;

/// <summary>Lays a layout on the sheet in isometric projection, to scale, seen from where least of it lies on each other, and finds places for its labels.</summary>
sealed class IsometricPlan
{
    const double SideOfOne = 190, LeastSide = 520, UsualRun = 74, MostSides = 2.5;

    /// <summary>Nearer than this a symbol counts as lying on another, and is drawn larger beneath it; points.</summary>
    const double OnEachOther = 5;

    const double Larger = 0.55;
    const int MostEnlarged = 4, MostAnchors = 3;

    readonly Layout layout;
    readonly LineTree tree;
    readonly IsometricAxes axes;
    readonly ImmutableArray<ImmutableArray<Place>> places;
    readonly ImmutableArray<Spot>[] ways;
    readonly Spot[] spots;

    IsometricPlan(Layout layout, LineTree tree, CancellationToken cancel)
    {
        (this.layout, this.tree) = (layout, tree);
        places = [.. layout.Runs.Select(run => ImmutableArray.Create<Place>([layout.Points[run.From].At!.Value, .. run.Route?.Corners ?? [], layout.Points[run.To].At!.Value]))];
        axes = Viewpoint.Of(layout, places, cancel);
        spots = [.. layout.Points.Select(point => axes.Of(point.At!.Value))];
        ways = [.. places.Select(way => way.Select(axes.Of).ToImmutableArray())];
        var box = Box.Of(spots.Concat(ways.SelectMany(way => way)));
        var (scale, middle) = (Scale(box), box.Middle);
        spots = [.. spots.Select(Scaled)];
        ways = [.. ways.Select(way => way.Select(Scaled).ToImmutableArray())];

        // From the middle, so that a small layout far from its origin keeps its digits.
        Spot Scaled(Spot spot) => new(scale * (spot.X - middle.X), scale * (spot.Y - middle.Y));
    }

    /// <summary>The plan of a layout, every point of which has a place.</summary>
    /// <param name="layout">The layout.</param>
    /// <param name="tree">Its tree.</param>
    /// <param name="points">Labels of its points.</param>
    /// <param name="runs">Labels of its runs.</param>
    /// <param name="cancel">Stops the work.</param>
    public static SheetPlan Of(Layout layout, LineTree tree, LabelBlock[] points, LabelBlock[] runs, CancellationToken cancel) => new IsometricPlan(layout, tree, cancel).Plan(points, runs, cancel);

    // As large as its labels need room, larger where its runs would be short beside their labels, and within bounds.
    double Scale(Box box)
    {
        var size = Math.Max(box.Width, 1.3 * box.Height);
        if (size == 0) return 1;
        double[] lengths = [.. ways.Select(WayLine.Length).Order()];
        var side = Math.Max(LeastSide, SideOfOne * Math.Sqrt(layout.Points.Length));
        return Math.Clamp(UsualRun / lengths[lengths.Length / 2], side / size, MostSides * side / size);
    }

    SheetPlan Plan(LabelBlock[] pointLabels, LabelBlock[] runLabels, CancellationToken cancel)
    {
        var symbols = Symbols();
        PlacedSymbol[][] fittings = [.. layout.Runs.Select((run, at) => Fittings(run, at))];
        var taken = new BoxGrid();
        foreach (var (_, _, box) in symbols) taken.Add(box);
        foreach (var fitting in fittings.SelectMany(run => run)) taken.Add(SymbolMarks.BoxOf(fitting.Symbol, fitting.At, fitting.Along));
        var widest = layout.Runs.Max(run => run.Tube.Bore.Meters);
        double[] halves = [.. layout.Runs.Select(run => TubeMarks.Half(run.Tube.Bore.Meters, widest))];
        for (var run = 0; run < ways.Length; run++)
            for (var at = 1; at < ways[run].Length; at++) taken.Add(ways[run][at - 1], ways[run][at], halves[run]);

        var search = new LabelSearch(taken);
        var (points, runs) = (new PlannedPoint[spots.Length], new PlannedRun[ways.Length]);
        // Nozzles and the supply have the most to say, so they choose first.
        foreach (var isFirst in (ReadOnlySpan<bool>)[true, false])
            foreach (var point in tree.Order)
                if (isFirst == layout.Points[point] is Nozzle or SupplyPoint)
                {
                    var (along, scale, box) = symbols[point];
                    var away = Math.Min(box.Width, box.Height) / 2;
                    points[point] = new(spots[point], along, scale, box, search.Place(pointLabels[point], [layout.Points[point] is SupplyPoint or Nozzle ? box.Middle : spots[point]], away, cancel));
                }
        foreach (var point in tree.Order)
            if (tree.Feed[point] is >= 0 and var run) runs[run] = new(ways[run], [.. fittings[run]], search.Place(runLabels[run], Anchors(ways[run]), halves[run], cancel));
        return new([.. points], [.. runs], [.. tree.Order], FarthestFirst()) { Axes = [axes.Of(1, 0, 0), axes.Of(0, 1, 0), axes.Of(0, 0, 1)] };
    }

    (Spot Along, double Scale, Box Box)[] Symbols()
    {
        var symbols = new (Spot Along, double Scale, Box Box)[spots.Length];
        var done = new List<int>();
        foreach (var point in tree.Order)
        {
            var on = done.Count(other => WayLine.Distance(spots[other], spots[point]) < OnEachOther);
            done.Add(point);
            var scale = 1 + Larger * Math.Min(on, MostEnlarged);
            var along = Along(point);
            symbols[point] = (along, scale, SymbolMarks.BoxOf(PointSymbols.Of(layout, layout.Points[point]), spots[point], along, scale));
        }
        return symbols;
    }

    Spot Along(int point)
    {
        if (layout.Points[point] is SupplyPoint)
        {
            var leaves = ways[tree.Feed[tree.Children(point)[0]]];
            return layout.Supply is BottleSupply supply && supply.Bottle.Axis is [var x, var y, var z]
                ? WayLine.Direction(default, axes.Of(x, y, z), new(0, -1))
                : WayLine.Direction(leaves[0], leaves[1], new(1, 0));
        }
        var feed = ways[tree.Feed[point]];
        return WayLine.Direction(feed[^2], feed[^1], new(1, 0));
    }

    // A fitting at its place along the straight lines from corner to corner, which the arcs in the corners shorten a little; one without a place by itself.
    PlacedSymbol[] Fittings(Run run, int at)
    {
        var drawn = Math.Min(run.Fittings.Length, TreePlan.MostFittings);
        var corners = places[at];
        double[] ends = new double[corners.Length];
        for (var corner = 1; corner < corners.Length; corner++) ends[corner] = ends[corner - 1] + Distance(corners[corner - 1], corners[corner]);
        return [.. run.Fittings.Take(drawn).Select((placed, which) =>
        {
            var part = placed.At is { } known && run.Length.Meters > 0 ? Math.Clamp(known.Meters / run.Length.Meters, 0, 1) : (which + 1.0) / (drawn + 1);
            var (along, corner) = (part * ends[^1], 1);
            while (corner < ends.Length - 1 && ends[corner] < along) corner++;
            var (from, to) = (ways[at][corner - 1], ways[at][corner]);
            return new PlacedSymbol(PointSymbols.Of(placed.Fitting), WayLine.Between(from, to, (along - ends[corner - 1]) / (ends[corner] - ends[corner - 1])), WayLine.Direction(from, to, new(1, 0)));
        })];
    }

    static double Distance(Place one, Place other)
    {
        var (x, y, z) = (one.X.Meters - other.X.Meters, one.Y.Meters - other.Y.Meters, one.Z.Meters - other.Z.Meters);
        return Math.Sqrt(x * x + y * y + z * z);
    }

    // The middles of its longest straights, then places nearer to the ends of the longest.
    static Spot[] Anchors(ImmutableArray<Spot> way)
    {
        int[] longest = [.. Enumerable.Range(1, way.Length - 1).OrderByDescending(at => Math.Round(WayLine.Distance(way[at - 1], way[at]), 6)).ThenBy(at => at).Take(MostAnchors)];
        return [.. longest.Select(at => On(at, 0.5)), On(longest[0], 0.25), On(longest[0], 0.75)];

        Spot On(int straight, double part) => WayLine.Between(way[straight - 1], way[straight], part);
    }

    ImmutableArray<int> FarthestFirst() =>
        [.. tree.Order.Where(point => tree.Feed[point] >= 0).Select(point => tree.Feed[point]).OrderBy(run => Math.Round(places[run].Average(axes.Nearness), 6))];
}
