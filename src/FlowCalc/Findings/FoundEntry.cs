namespace FlowCalc.Findings;

/// <summary>A finding with the place that it was found at.</summary>
/// <param name="Finding">The finding.</param>
/// <param name="Item">Its place in the document's order: the index of a point, run or zone; -1 for none.</param>
/// <param name="IsMany">Whether it stands for many places.</param>
/// <param name="At">Index of its case; -1 for none.</param>
readonly record struct FoundEntry(Finding Finding, int Item, bool IsMany, int At)
{
    /// <summary>The place that it measures: its own, or the worst of many.</summary>
    public int Worst { get; init; } = Item;
}
