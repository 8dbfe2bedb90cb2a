using FlowCalc.Findings;
using FlowCalc.Flows;
using FlowCalc.Layouts;
using FlowCalc.Workbench.Figures;
using FlowCalc.Workbench.Pictures;
using FlowCalc.Workbench.Solving;

namespace FlowCalc.Workbench.Drawings;

/// <summary>The drawing of a layout: as a tree or in space, its tubes in width by bore and in colour by result, with names, numbers, findings where they are, and a legend.</summary>
public static class LayoutDrawing
{
    /// <summary>Whether a layout can be drawn in space: every point has a place.</summary>
    public static bool HasPlaces(Layout layout)
    {
        ArgumentNullException.ThrowIfNull(layout);
        return layout.Points.All(point => point.At is not null);
    }

    /// <summary>Draws a layout with its results; without them where its flow has not converged.</summary>
    /// <param name="solved">The layout and its results.</param>
    /// <param name="choice">What to show.</param>
    /// <param name="shown">How numbers are written.</param>
    /// <param name="cancel">Stops the work.</param>
    /// <exception cref="ArgumentException">The isometric view was asked for and a point has no place.</exception>
    /// <exception cref="OperationCanceledException">The token was cancelled.</exception>
    public static Picture Of(SolvedLayout solved, DrawingChoice choice, Shown shown, CancellationToken cancel = default)
    {
        ArgumentNullException.ThrowIfNull(solved);
        var flow = solved.Flow.Report.Converged ? solved.Flow : null;
        return Of(solved.Layout, flow, solved.Findings, flow is null ? null : solved.Verdict, choice, shown, cancel);
    }

    /// <summary>Draws a layout alone.</summary>
    /// <param name="layout">The layout.</param>
    /// <param name="choice">What to show; there is nothing to colour by.</param>
    /// <param name="shown">How numbers are written.</param>
    /// <param name="cancel">Stops the work.</param>
    /// <exception cref="ArgumentException">The isometric view was asked for and a point has no place.</exception>
    /// <exception cref="OperationCanceledException">The token was cancelled.</exception>
    public static Picture Of(Layout layout, DrawingChoice choice, Shown shown, CancellationToken cancel = default) => Of(layout, null, [], null, choice, shown, cancel);

    static Picture Of(Layout layout, FlowResult? flow, IEnumerable<Finding> findings, Severity? verdict, DrawingChoice choice, Shown shown, CancellationToken cancel)
    {
        ArgumentNullException.ThrowIfNull(layout);
        ArgumentNullException.ThrowIfNull(choice);
        ArgumentNullException.ThrowIfNull(shown);
        var view = choice.View ?? (HasPlaces(layout) ? DrawingView.Isometric : DrawingView.Tree);
        if (view == DrawingView.Isometric && !HasPlaces(layout)) throw new ArgumentException("Not every point of the layout has a place.", nameof(choice));
        var values = flow is null ? DrawnValues.None : DrawnValues.Of(layout, flow, choice.Colour, shown);
        var lettered = new Lettered(layout, flow, values, new FoundPlaces(findings), choice.Colour, shown);
        var plan = Plan(layout, lettered, view, cancel);
        return new DrawnSheet(layout, plan, values, lettered, shown).Picture(view, verdict, choice.HasCautions);
    }

    /// <summary>Where everything lies, before it is drawn.</summary>
    internal static SheetPlan Plan(Layout layout, Lettered lettered, DrawingView view, CancellationToken cancel)
    {
        LabelBlock[] points = [.. Enumerable.Range(0, layout.Points.Length).Select(lettered.OfPoint)], runs = [.. Enumerable.Range(0, layout.Runs.Length).Select(lettered.OfRun)];
        var tree = LineTree.Of(layout);
        return view == DrawingView.Tree ? TreePlan.Of(layout, tree, points, runs) : IsometricPlan.Of(layout, tree, points, runs, cancel);
    }
}
