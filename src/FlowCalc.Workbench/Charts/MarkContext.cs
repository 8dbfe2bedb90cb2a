using System.Collections.Immutable;
using FlowCalc.Workbench.Pictures;
using OxyPlot;

namespace FlowCalc.Workbench.Charts;

/// <summary>Takes what the plotting library draws as marks of a picture.</summary>
sealed class MarkContext : ClippingRenderContext
{
    readonly ImmutableArray<Mark>.Builder marks = ImmutableArray.CreateBuilder<Mark>();

    /// <summary>The marks drawn so far, the lowest first.</summary>
    public ImmutableArray<Mark> Marks => marks.ToImmutable();

    // The library counts dashes in widths of their line.
    /// <inheritdoc/>
    public override void DrawLine(IList<ScreenPoint> points, OxyColor stroke, double thickness, EdgeRenderingMode edgeRenderingMode, double[] dashArray, LineJoin lineJoin)
    {
        if (points.Count < 2 || ChartInk.Of(stroke) is not { } ink) return;
        marks.Add(new Stroke(Spots(points), ink, thickness) { Dashes = dashArray is null ? [] : [.. dashArray.Select(length => length * thickness)] });
    }

    /// <inheritdoc/>
    public override void DrawPolygon(IList<ScreenPoint> points, OxyColor fill, OxyColor stroke, double thickness, EdgeRenderingMode edgeRenderingMode, double[] dashArray, LineJoin lineJoin)
    {
        var (area, edge) = (ChartInk.Of(fill), ChartInk.Of(stroke));
        if (points.Count > 2 && (area ?? edge) is not null) marks.Add(new Patch(Spots(points), area, edge, thickness));
    }

    /// <inheritdoc/>
    public override void DrawEllipse(OxyRect extents, OxyColor fill, OxyColor stroke, double thickness, EdgeRenderingMode edgeRenderingMode)
    {
        var (area, edge) = (ChartInk.Of(fill), ChartInk.Of(stroke));
        if ((area ?? edge) is not null) marks.Add(new Disc(new(extents.Center.X, extents.Center.Y), extents.Width / 2, area, edge, thickness));
    }

    /// <inheritdoc/>
    public override void DrawText(
        ScreenPoint p, string text, OxyColor fill, string fontFamily, double fontSize, double fontWeight, double rotation, HorizontalAlignment horizontalAlignment, VerticalAlignment verticalAlignment, OxySize? maxSize)
    {
        if (string.IsNullOrEmpty(text) || ChartInk.Of(fill) is not { } ink) return;
        var down = fontSize * verticalAlignment switch
        {
            VerticalAlignment.Top => Lettering.Ascent,
            VerticalAlignment.Bottom => -Lettering.Descent,
            _ => (Lettering.Ascent - Lettering.Descent) / 2,
        };
        var (sine, cosine) = Math.SinCos(rotation * Math.PI / 180);
        marks.Add(new Words(new(p.X - down * sine, p.Y + down * cosine), text, fontSize, ink)
        {
            Anchor = horizontalAlignment switch { HorizontalAlignment.Left => TextAnchor.Start, HorizontalAlignment.Right => TextAnchor.End, _ => TextAnchor.Middle },
            IsBold = fontWeight > FontWeights.Normal,
            Turn = rotation,
        });
    }

    /// <inheritdoc/>
    public override OxySize MeasureText(string text, string fontFamily, double fontSize, double fontWeight) =>
        string.IsNullOrEmpty(text) ? OxySize.Empty : new(Lettering.Width(text, fontSize, fontWeight > FontWeights.Normal), fontSize * (Lettering.Ascent + Lettering.Descent));

    // Axes hold all of their data, so that there is nothing to clip.
    /// <inheritdoc/>
    protected override void SetClip(OxyRect clippingRectangle)
    {
    }

    /// <inheritdoc/>
    protected override void ResetClip()
    {
    }

    static ImmutableArray<Spot> Spots(IList<ScreenPoint> points) => [.. points.Select(point => new Spot(point.X, point.Y))];
}
