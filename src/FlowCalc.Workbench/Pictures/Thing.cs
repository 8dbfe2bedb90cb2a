using System.Collections.Immutable;

namespace FlowCalc.Workbench.Pictures;

/// <summary>Marks that belong to one thing of the layout, which a page lets people choose.</summary>
/// <param name="Path">What it is in the document, such as <c>points/T1</c> or <c>runs/R4</c>; a path of changes.</param>
/// <param name="Label">Its name and its numbers in words, for a screen reader and as a tip.</param>
/// <param name="Marks">Its marks, the lowest first.</param>
public sealed record Thing(string Path, string Label, ImmutableArray<Mark> Marks) : Mark
{
    /// <summary>Whether it is more of a thing that is on the picture already, such as its name above all other marks: chosen with the mouse too, and passed over by keyboard and screen reader.</summary>
    public bool IsRest { get; init; }
}
