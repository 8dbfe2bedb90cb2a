using FlowCalc.Workbench.Pictures;
using PdfSharp.Drawing;
using PdfSharp.Pdf;

namespace FlowCalc.Workbench.Reports.Paper;

/// <summary>The pages of a report while they are written, from the top down.</summary>
/// <param name="document">The document.</param>
/// <param name="upright">Its sheets.</param>
/// <param name="cancel">Asked at every page.</param>
sealed class PaperPages(PdfDocument document, Sheet upright, CancellationToken cancel) : IDisposable
{
    XGraphics? graphics;

    /// <summary>What is drawn on.</summary>
    public XGraphics Graphics => graphics ?? throw new InvalidOperationException("There is no page yet.");

    /// <summary>The sheet that is written.</summary>
    public Sheet Sheet { get; private set; }

    /// <summary>Whether the page lies on its side.</summary>
    public bool IsLandscape => Sheet.Width > Sheet.Height;

    /// <summary>The page that is written.</summary>
    public PdfPage Page { get; private set; } = null!;

    /// <summary>How far down the page is written, points.</summary>
    public double Y { get; set; }

    /// <summary>Room left on the page.</summary>
    public double Left => Sheet.Bottom - Y;

    /// <summary>Whether nothing stands on the page yet.</summary>
    public bool IsFresh => Y <= Sheet.Above;

    /// <summary>A new page.</summary>
    /// <param name="isLandscape">Whether it lies on its side.</param>
    public void Turn(bool isLandscape = false)
    {
        cancel.ThrowIfCancellationRequested();
        graphics?.Dispose();
        Sheet = isLandscape ? new(upright.Height, upright.Width) : upright;
        Page = document.AddPage();
        (Page.Width, Page.Height) = (XUnit.FromPoint(Sheet.Width), XUnit.FromPoint(Sheet.Height));
        graphics = XGraphics.FromPdfPage(Page);
        Y = Sheet.Above;
    }

    /// <summary>Turns the page unless so much room is left.</summary>
    /// <param name="height">The room, points.</param>
    public void Need(double height)
    {
        if (height > Left && !IsFresh) Turn();
    }

    /// <summary>Writes a line of text.</summary>
    /// <param name="text">The text.</param>
    /// <param name="x">Where it starts, ends or has its middle.</param>
    /// <param name="y">Its upper end.</param>
    /// <param name="size">Height of its letters.</param>
    /// <param name="ink">Its colour.</param>
    /// <param name="isBold">Whether it is bold.</param>
    /// <param name="anchor">What <paramref name="x"/> is.</param>
    public void Write(string text, double x, double y, double size, Ink ink = Ink.Line, bool isBold = false, TextAnchor anchor = TextAnchor.Start)
    {
        if (text.Length == 0) return;
        var left = anchor switch { TextAnchor.Start => x, TextAnchor.Middle => x - Lettering.Width(text, size, isBold) / 2, _ => x - Lettering.Width(text, size, isBold) };
        Graphics.DrawString(text, PaperFonts.Of(size, isBold), PaperPicture.Brush(ink), left, y + size * Lettering.Ascent);
    }

    /// <summary>Draws a level line from the left edge of the text.</summary>
    /// <param name="y">Where.</param>
    /// <param name="length">Its length.</param>
    /// <param name="ink">Its colour.</param>
    /// <param name="width">Its width.</param>
    public void Rule(double y, double length, Ink ink, double width) => Graphics.DrawLine(PaperPicture.Pen(ink, width), Sheet.Side, y, Sheet.Side + length, y);

    /// <inheritdoc/>
    public void Dispose() => graphics?.Dispose();
}
