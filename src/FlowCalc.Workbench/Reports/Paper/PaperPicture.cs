using FlowCalc.Workbench.Pictures;
using PdfSharp.Drawing;

namespace FlowCalc.Workbench.Reports.Paper;

/// <summary>Draws a picture as vectors.</summary>
static class PaperPicture
{
    /// <summary>Draws it.</summary>
    /// <param name="graphics">What it is drawn on.</param>
    /// <param name="picture">The picture.</param>
    /// <param name="x">Its left edge on the sheet.</param>
    /// <param name="y">Its upper edge.</param>
    /// <param name="scale">Points of the sheet a point of the picture.</param>
    public static void Draw(XGraphics graphics, Picture picture, double x, double y, double scale)
    {
        var before = graphics.Save();
        graphics.TranslateTransform(x, y);
        graphics.ScaleTransform(scale);
        foreach (var mark in picture.Marks) Draw(graphics, mark);
        graphics.Restore(before);
    }

    /// <summary>A pen of an ink.</summary>
    public static XPen Pen(Ink ink, double width) => new(Colour(ink), width) { LineJoin = XLineJoin.Round };

    /// <summary>A brush of an ink.</summary>
    public static XBrush Brush(Ink ink) => new XSolidBrush(Colour(ink));

    static void Draw(XGraphics graphics, Mark mark)
    {
        switch (mark)
        {
            case Stroke stroke:
                graphics.DrawLines(Of(stroke), Spots(stroke.Spots));
                break;
            case Patch patch:
                if (patch.Fill is { } area) graphics.DrawPolygon(Brush(area), Spots(patch.Spots), XFillMode.Winding);
                if (patch.Edge is { } edge) graphics.DrawPolygon(Pen(edge, patch.EdgeWidth), Spots(patch.Spots));
                break;
            case Disc disc:
                var (left, top, size) = (disc.Centre.X - disc.Radius, disc.Centre.Y - disc.Radius, 2 * disc.Radius);
                if (disc.Fill is { } inside) graphics.DrawEllipse(Brush(inside), left, top, size, size);
                if (disc.Edge is { } round) graphics.DrawEllipse(Pen(round, disc.EdgeWidth), left, top, size, size);
                break;
            case Words words:
                Write(graphics, words);
                break;
            case Thing thing:
                foreach (var part in thing.Marks) Draw(graphics, part);
                break;
            default:
                throw new ArgumentOutOfRangeException(nameof(mark), mark, "No such mark.");
        }
    }

    // A pen counts dashes in its own width.
    static XPen Of(Stroke stroke)
    {
        var pen = Pen(stroke.Ink, stroke.Width);
        if (stroke.Dashes.IsEmpty) pen.LineCap = XLineCap.Round;
        else if (stroke.Width > 0) pen.DashPattern = [.. stroke.Dashes.Select(length => length / stroke.Width)];
        return pen;
    }

    static void Write(XGraphics graphics, Words words)
    {
        var text = PaperText.Clean(words.Text);
        if (text.Length == 0) return;
        var width = Lettering.Width(text, words.Size, words.IsBold);
        var left = words.At.X - words.Anchor switch { TextAnchor.Middle => width / 2, TextAnchor.End => width, _ => 0 };
        var before = graphics.Save();
        if (words.Turn != 0) graphics.RotateAtTransform(words.Turn, new XPoint(words.At.X, words.At.Y));
        graphics.DrawString(text, PaperFonts.Of(words.Size, words.IsBold), Brush(words.Ink), left, words.At.Y);
        graphics.Restore(before);
    }

    static XPoint[] Spots(IEnumerable<Spot> spots) => [.. spots.Select(spot => new XPoint(spot.X, spot.Y))];

    static XColor Colour(Ink ink)
    {
        var colour = PaperInk.Of(ink).AsSpan(1);
        byte Part(ReadOnlySpan<char> hex) => byte.Parse(hex, System.Globalization.NumberStyles.HexNumber, System.Globalization.CultureInfo.InvariantCulture);
        return XColor.FromArgb(Part(colour[..2]), Part(colour[2..4]), Part(colour[4..6]));
    }
}
