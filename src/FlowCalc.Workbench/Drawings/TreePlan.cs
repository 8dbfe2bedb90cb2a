using System.Collections.Immutable;
using FlowCalc.Layouts;
using FlowCalc.Workbench.Pictures;

namespace FlowCalc.Workbench.Drawings;

/// <summary>
/// Lays a layout on the sheet as a tidy tree from left to right. A column holds the points so many runs from the supply, with their symbols and names; between two columns lie the runs that lead to the next
/// and the labels of what ends in the last. The run leg of a tee goes straight on, its branch aside; of a bullhead one leg goes up and one down; of a junction all leave from a bar.
/// </summary>
sealed class TreePlan
{
    const double Gap = 9, Beside = 5, SymbolRoom = 14, LeastLeg = 30, RunRoom = 24, FittingRoom = 22;

    /// <summary>Most fittings of a run that are drawn.</summary>
    public const int MostFittings = 6;

    static readonly Spot Onwards = new(1, 0);

    readonly Layout layout;
    readonly LineTree tree;
    readonly LabelBlock[] points, runs;
    readonly double[] aside;
    readonly TreeNode[] nodes;

    TreePlan(Layout layout, LineTree tree, LabelBlock[] points, LabelBlock[] runs)
    {
        (this.layout, this.tree, this.points, this.runs) = (layout, tree, points, runs);
        aside = new double[points.Length];
        nodes = [.. layout.Points.Select((point, at) => new TreeNode(PointSymbols.Of(layout, point), points[at], tree.Children(at).Length))];
    }

    /// <summary>The plan of a layout.</summary>
    /// <param name="layout">The layout.</param>
    /// <param name="tree">Its tree.</param>
    /// <param name="points">Labels of its points.</param>
    /// <param name="runs">Labels of its runs.</param>
    public static SheetPlan Of(Layout layout, LineTree tree, LabelBlock[] points, LabelBlock[] runs) => new TreePlan(layout, tree, points, runs).Plan();

    SheetPlan Plan()
    {
        Spread();
        var (x, left, right) = Columns();
        var y = new double[points.Length];
        foreach (var point in tree.Order)
            if (tree.Feed[point] is >= 0 and var feed) y[point] = y[layout.Runs[feed].From] + aside[point];
        var planned = layout.Points.Select((_, at) => Point(at, new(x[tree.Depth[at]], y[at]), y)).ToImmutableArray();
        var ways = layout.Runs.Select((run, at) => Run(at, planned[run.From].At, planned[run.To].At, (left[tree.Depth[run.To]] + right[tree.Depth[run.To]]) / 2)).ToImmutableArray();
        return new(planned, ways, [.. tree.Order], [.. tree.Order.Where(point => tree.Feed[point] >= 0).Select(point => tree.Feed[point])]);
    }

    // From the leaves to the root: every point's legs are put as near to each other as what is on them allows.
    void Spread()
    {
        var contours = new TreeContour?[points.Length];
        for (var at = tree.Order.Length - 1; at >= 0; at--)
        {
            var point = tree.Order[at];
            var children = tree.Children(point);
            var contour = children.Length == 0 ? new TreeContour() : Join(point, children, contours);
            foreach (var child in children) contours[child] = null;
            var node = nodes[point];
            if (children.Length == 0) contour.Add(-node.Behind / 2, node.Behind / 2);
            var (high, low) = (-node.Up, node.Down);
            foreach (var child in children) (high, low) = (Math.Min(high, aside[child] - TreeNode.Leg), Math.Max(low, aside[child] + TreeNode.Leg));
            if (node.IsBar) high -= node.Label.Height + Beside;
            contour.Add(high, low);
            if (tree.Feed[point] is >= 0 and var feed) contour.Add(-Beside - RunHalf(feed) - runs[feed].Height, RunHalf(feed));
            contours[point] = contour;
        }
    }

    TreeContour Join(int point, ReadOnlySpan<int> children, TreeContour?[] contours)
    {
        var first = contours[children[0]]!;
        if (children.Length == 1) return first;
        if (children.Length == 2 && nodes[point].Symbol == DrawnSymbol.Tee)
        {
            var branch = contours[children[1]]!;
            var (down, up) = (Math.Max(first.RoomTo(branch, Gap), LeastLeg), Math.Max(branch.RoomTo(first, Gap), LeastLeg));
            var below = Math.Max(first.Bottom, branch.Bottom + down) - Math.Min(first.Top, branch.Top + down);
            var above = Math.Max(first.Bottom, branch.Bottom - up) - Math.Min(first.Top, branch.Top - up);
            nodes[point].TurnsUp = above < below;
            aside[children[1]] = above < below ? -up : down;
            branch.Move(aside[children[1]]);
            return above < below ? TreeContour.Join(branch, first) : TreeContour.Join(first, branch);
        }
        // One below the other, then all moved so that the middle of the outer two is level with the point.
        var least = Math.Max(LeastLeg, nodes[point].Symbol == DrawnSymbol.Bullhead ? points[point].Height + 2 * SymbolRoom : 0);
        var (joined, at) = (first, 0.0);
        for (var next = 1; next < children.Length; next++)
        {
            var contour = contours[children[next]]!;
            at = Math.Max(joined.RoomTo(contour, Gap), at + least);
            aside[children[next]] = at;
            contour.Move(at);
            joined = TreeContour.Join(joined, contour);
        }
        foreach (var child in children) aside[child] -= at / 2;
        joined.Move(-at / 2);
        return joined;
    }

    // Where each column of points stands, and where the stretch of runs before it begins and ends.
    (double[] X, double[] Left, double[] Right) Columns()
    {
        var columns = 1 + tree.Depth.Max();
        var (before, behind, stretch) = (new double[columns], new double[columns], new double[columns + 1]);
        for (var point = 0; point < points.Length; point++)
        {
            var (depth, node) = (tree.Depth[point], nodes[point]);
            before[depth] = Math.Max(before[depth], node.Left);
            behind[depth] = Math.Max(behind[depth], node.Right);
            if (node.IsEnd) stretch[depth + 1] = Math.Max(stretch[depth + 1], node.Label.Width + 2 * Beside);
            if (tree.Feed[point] is >= 0 and var feed)
                stretch[depth] = Math.Max(stretch[depth], Math.Max(runs[feed].Width, FittingRoom * Math.Min(layout.Runs[feed].Fittings.Length, MostFittings)) + RunRoom);
        }
        var (x, left, right) = (new double[columns], new double[columns], new double[columns]);
        var end = 0.0;
        for (var column = 0; column < columns; column++)
        {
            left[column] = end;
            right[column] = end + stretch[column];
            x[column] = right[column] + before[column];
            end = x[column] + behind[column];
        }
        return (x, left, right);
    }

    PlannedPoint Point(int point, Spot at, double[] y)
    {
        var node = nodes[point];
        var symbol = SymbolMarks.BoxOf(node.Symbol, at, Onwards);
        var children = tree.Children(point);
        var bar = ImmutableArray<Spot>.Empty;
        var (top, bottom) = (at.Y, at.Y);
        if (node.IsBar)
        {
            (top, bottom) = (y[children[0]], y[children[^1]]);
            bar = [new(at.X, top), new(at.X, bottom)];
            symbol = symbol.With(Box.Of(bar).Grown(2));
        }
        return new(at, Onwards, 1, symbol, new(node.Label, node.LabelBox(at, (top, bottom)), node.Symbol is DrawnSymbol.Bottle or DrawnSymbol.HeldSupply, [])) { Bar = bar };
    }

    PlannedRun Run(int run, Spot from, Spot to, double middle)
    {
        var way = Math.Abs(from.Y - to.Y) < 1e-9 || nodes[layout.Runs[run].From].IsBar ? ImmutableArray.Create(new Spot(from.X, to.Y), to) : [from, new(from.X, to.Y), to];
        var drawn = Math.Min(layout.Runs[run].Fittings.Length, MostFittings);
        var fittings = layout.Runs[run].Fittings.Take(drawn).Select((placed, at) => new PlacedSymbol(PointSymbols.Of(placed.Fitting), new(middle + FittingRoom * (at - (drawn - 1) / 2.0), to.Y), Onwards));
        var label = runs[run];
        return new(way, [.. fittings], new(label, Box.At(middle - label.Width / 2, to.Y - RunHalf(run) - label.Height - 1, label.Width, label.Height), false, []));
    }

    // Half the height that a run and its fittings take.
    double RunHalf(int run) => layout.Runs[run].Fittings.IsEmpty ? 7 : 11;
}
