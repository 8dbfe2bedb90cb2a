using System.Collections.Immutable;
using FlowCalc.Workbench.Pictures;

namespace FlowCalc.Workbench.Drawings;

/// <summary>Draws tubes: as wide as their bore says, in the colour of their step, with dashes that fill the more of the tube the higher the step, between two edges that are seen on a light and on a dark sheet.</summary>
static class TubeMarks
{
    const double LeastWidth = 2.2, MostMore = 5.2, Edges = 2.2, Halo = 5, Joint = 12, Radius = 9, Period = 16;

    // Parts of the period that the dashes of each step fill.
    static readonly double[] Filled = [0.3, 0.42, 0.54, 0.65, 0.76, 0.87, 1];

    /// <summary>Width of a tube between its edges, points.</summary>
    /// <param name="bore">Its bore, m.</param>
    /// <param name="widest">The widest bore on the drawing, m.</param>
    public static double Width(double bore, double widest) => LeastWidth + MostMore * bore / widest;

    /// <summary>Half its width with its edges, points.</summary>
    /// <inheritdoc cref="Width" path="/param"/>
    public static double Half(double bore, double widest) => (Width(bore, widest) + Edges) / 2;

    /// <summary>Marks of a tube.</summary>
    /// <param name="way">Its way.</param>
    /// <param name="width">Its width between its edges, points.</param>
    /// <param name="step">Its step, 0 to 6; null for none.</param>
    /// <param name="parts">Whether it parts what lies beneath it, as a nearer tube does.</param>
    public static IEnumerable<Mark> Of(ImmutableArray<Spot> way, double width, int? step, bool parts)
    {
        var line = WayLine.Rounded(way, Radius);
        if (parts && WayLine.Trimmed(line, Joint) is { IsEmpty: false } middle) yield return new Stroke(middle, Ink.Sheet, width + Edges + Halo);
        if (step is not { } known)
        {
            yield return new Stroke(line, Ink.Muted, width);
            yield break;
        }
        yield return new Stroke(line, Ink.Muted, width + Edges);
        if (known < ColourScale.Steps - 1) yield return new Stroke(line, Ink.Sheet, width);
        yield return new Stroke(line, ColourScale.InkOf(known), width) { Dashes = known < ColourScale.Steps - 1 ? [Filled[known] * Period, (1 - Filled[known]) * Period] : [] };
    }
}
