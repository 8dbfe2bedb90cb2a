namespace FlowCalc.Workbench.Drawings;

/// <summary>What a drawing shows of a layout.</summary>
public sealed record DrawingChoice
{
    /// <summary>The view; null for the isometric one where every point has a place, else the tree.</summary>
    public DrawingView? View { get; init; }

    /// <summary>What the colours tell; without a flow they tell nothing.</summary>
    public DrawingColour Colour { get; init; } = DrawingColour.Flow;

    /// <summary>Whether the cautions of the layout stand under the legend; a page or report that shows them itself leaves them out.</summary>
    public bool HasCautions { get; init; } = true;
}
