namespace FlowCalc.Workbench.Pictures;

/// <summary>The font of pictures and reports, DejaVu Sans, and how much room its words take.</summary>
public static class Lettering
{
    /// <summary>Font families of pictures, the nearest in width first.</summary>
    public const string Families = "DejaVu Sans, Verdana, sans-serif";

    /// <summary>Height of an ascender and depth of a descender, parts of the em.</summary>
    public const double Ascent = 0.76, Descent = 0.24;

    static readonly Lazy<GlyphWidths> Regular = new(() => new GlyphWidths(Font(false))), Bold = new(() => new GlyphWidths(Font(true)));

    /// <summary>Width of a text.</summary>
    /// <param name="text">The text, one line.</param>
    /// <param name="size">Height of the em; the width is in the same unit.</param>
    /// <param name="isBold">Whether it is bold.</param>
    public static double Width(string text, double size, bool isBold = false)
    {
        ArgumentNullException.ThrowIfNull(text);
        return size * (isBold ? Bold : Regular).Value.Of(text);
    }

    /// <summary>The font file, TrueType.</summary>
    public static byte[] Font(bool isBold)
    {
        using var stream = typeof(Lettering).Assembly.GetManifestResourceStream(isBold ? "fonts/DejaVuSans-Bold.ttf" : "fonts/DejaVuSans.ttf")
            ?? throw new InvalidOperationException("A font is missing from the assembly.");
        using var bytes = new MemoryStream();
        stream.CopyTo(bytes);
        return bytes.ToArray();
    }
}
