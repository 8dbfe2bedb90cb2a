using FlowCalc.Workbench.Pictures;
using PdfSharp.Drawing;
using PdfSharp.Fonts;
using PdfSharp.Pdf;

namespace FlowCalc.Workbench.Reports.Paper;

/// <summary>The fonts of the PDF, which come with the program: no font of the machine is looked for.</summary>
sealed class PaperFonts : IFontResolver
{
    const string Family = "DejaVu Sans", Bold = "bold", Regular = "regular";

    static readonly XPdfFontOptions Options = new(PdfFontEncoding.Unicode);

    static PaperFonts() => GlobalFontSettings.FontResolver = new PaperFonts();

    PaperFonts()
    {
    }

    /// <summary>A font.</summary>
    /// <param name="size">Height of the em, points.</param>
    /// <param name="isBold">Whether it is bold.</param>
    public static XFont Of(double size, bool isBold = false) => new(Family, size, isBold ? XFontStyleEx.Bold : XFontStyleEx.Regular, Options);

    /// <inheritdoc/>
    public FontResolverInfo ResolveTypeface(string familyName, bool isBold, bool isItalic) => new(isBold ? Bold : Regular);

    /// <inheritdoc/>
    public byte[] GetFont(string faceName) => Lettering.Font(faceName == Bold);
}
