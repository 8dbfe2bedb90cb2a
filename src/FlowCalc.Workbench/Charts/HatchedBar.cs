using System.Collections.Immutable;
using FlowCalc.Workbench.Pictures;

namespace FlowCalc.Workbench.Charts;

/// <summary>An upright rectangle in the look of a kind.</summary>
static class HatchedBar
{
    const double Spacing = 4.5, LineWidth = 0.9;

    /// <summary>Its marks.</summary>
    /// <param name="left">Its left edge.</param>
    /// <param name="right">Its right edge.</param>
    /// <param name="top">Its upper edge.</param>
    /// <param name="bottom">Its lower edge.</param>
    /// <param name="kind">What it shows.</param>
    /// <param name="isHollow">Whether it is hollow: what is given back instead of lost.</param>
    public static IEnumerable<Mark> Of(double left, double right, double top, double bottom, DropKind kind, bool isHollow = false)
    {
        ImmutableArray<Spot> corners = [new(left, top), new(right, top), new(right, bottom), new(left, bottom)];
        yield return new Patch(corners, isHollow ? Ink.Sheet : kind.Ink, isHollow ? kind.Ink : null, 1);
        var ink = isHollow ? kind.Ink : Ink.Sheet;
        if (kind.Hatch is Hatch.Upright)
            for (var x = left + Spacing / 2; x < right; x += Spacing) yield return Line(new(x, top), new(x, bottom));
        if (kind.Hatch is Hatch.Level)
            for (var y = top + Spacing / 2; y < bottom; y += Spacing) yield return Line(new(left, y), new(right, y));
        var height = bottom - top;
        for (var from = left - height + Spacing / 2; kind.Hatch is Hatch.Rising or Hatch.Falling or Hatch.Crossed && from < right; from += Spacing)
        {
            var (start, end) = (Math.Max(from, left), Math.Min(from + height, right));
            if (end <= start) continue;
            if (kind.Hatch != Hatch.Falling) yield return Line(new(start, bottom - (start - from)), new(end, bottom - (end - from)));
            if (kind.Hatch != Hatch.Rising) yield return Line(new(start, top + (start - from)), new(end, top + (end - from)));
        }

        Stroke Line(Spot a, Spot b) => new([a, b], ink, LineWidth);
    }
}
