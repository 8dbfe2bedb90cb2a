using System.Collections.Immutable;

namespace FlowCalc.Workbench.Pictures;

/// <summary>A drawing or a chart as marks on a sheet: written as SVG for pages and files, and drawn in the PDF. Lengths are in points of the picture, x to the right, y downwards.</summary>
/// <param name="Width">Width of the sheet.</param>
/// <param name="Height">Height of the sheet.</param>
/// <param name="Title">What it shows, in a few words; its name for those who cannot see it.</param>
/// <param name="Description">The same in a sentence or two, with the numbers that matter.</param>
/// <param name="Marks">What is on it, the lowest first.</param>
public sealed record Picture(double Width, double Height, string Title, string Description, ImmutableArray<Mark> Marks);
