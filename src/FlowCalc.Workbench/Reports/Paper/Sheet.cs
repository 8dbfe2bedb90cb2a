namespace FlowCalc.Workbench.Reports.Paper;

/// <summary>Where things stand on a sheet, points.</summary>
/// <param name="Width">Its width.</param>
/// <param name="Height">Its height.</param>
readonly record struct Sheet(double Width, double Height)
{
    /// <summary>Margins: beside the text, and over and under it, where header and footer stand.</summary>
    public const double Side = 45, Above = 58, Below = 52;

    /// <summary>Width of the text.</summary>
    public double Column => Width - 2 * Side;

    /// <summary>Lower end of the text.</summary>
    public double Bottom => Height - Below;

    /// <summary>Height of the text.</summary>
    public double Room => Height - Above - Below;

    /// <summary>The sheet of a size.</summary>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="size"/> is no member of its enumeration.</exception>
    public static Sheet Of(PaperSize size) => size switch
    {
        PaperSize.A4 => new(210 / 25.4 * 72, 297 / 25.4 * 72),
        PaperSize.Letter => new(612, 792),
        _ => throw new ArgumentOutOfRangeException(nameof(size), size, "No such size."),
    };
}
