using System.Collections.Immutable;
using FlowCalc.Workbench.Pictures;

namespace FlowCalc.Workbench.Drawings;

/// <summary>Where everything of a layout lies on the sheet.</summary>
/// <param name="Points">Each point, in the order of the layout.</param>
/// <param name="Runs">Each run, in the order of the layout.</param>
/// <param name="PointOrder">Indices of the points as they are drawn, whatever the order of the document.</param>
/// <param name="RunOrder">Indices of the runs as they are drawn.</param>
sealed record SheetPlan(ImmutableArray<PlannedPoint> Points, ImmutableArray<PlannedRun> Runs, ImmutableArray<int> PointOrder, ImmutableArray<int> RunOrder)
{
    /// <summary>Directions of the layout's x, y and z on the sheet, for a view in space; empty for a tree.</summary>
    public ImmutableArray<Spot> Axes { get; init; } = [];

    /// <summary>The box of all.</summary>
    public Box Bounds()
    {
        var box = Box.Nothing;
        foreach (var point in Points) box = box.With(point.Symbol).With(point.Label.Box).With(Box.Of(point.Bar));
        foreach (var run in Runs) box = box.With(Box.Of(run.Way)).With(run.Label.Box);
        return box;
    }
}

/// <summary>Where a point lies.</summary>
/// <param name="At">Its place.</param>
/// <param name="Along">Direction of its symbol; see <see cref="SymbolMarks"/>.</param>
/// <param name="Scale">How large its symbol is.</param>
/// <param name="Symbol">The box of its symbol.</param>
/// <param name="Label">Its label.</param>
sealed record PlannedPoint(Spot At, Spot Along, double Scale, Box Symbol, PlacedLabel Label)
{
    /// <summary>Both ends of the bar from which the runs of a junction leave in a tree; empty elsewhere.</summary>
    public ImmutableArray<Spot> Bar { get; init; } = [];
}

/// <summary>Where a run lies.</summary>
/// <param name="Way">Its start, its corners and its end.</param>
/// <param name="Fittings">Its fittings that are drawn.</param>
/// <param name="Label">Its label.</param>
sealed record PlannedRun(ImmutableArray<Spot> Way, ImmutableArray<PlacedSymbol> Fittings, PlacedLabel Label);

/// <summary>A symbol at its place.</summary>
/// <param name="Symbol">The symbol.</param>
/// <param name="At">Its place.</param>
/// <param name="Along">Its direction; see <see cref="SymbolMarks"/>.</param>
readonly record struct PlacedSymbol(DrawnSymbol Symbol, Spot At, Spot Along);

/// <summary>A label at its place.</summary>
/// <param name="Block">The label.</param>
/// <param name="Box">Where it stands.</param>
/// <param name="IsToTheRight">Whether its lines end at its right edge.</param>
/// <param name="Leader">From what it labels to the label; empty where it stands close.</param>
/// <param name="IsOnTube">Whether a tube lies under it, which is then broken off around it.</param>
sealed record PlacedLabel(LabelBlock Block, Box Box, bool IsToTheRight, ImmutableArray<Spot> Leader, bool IsOnTube = false);
