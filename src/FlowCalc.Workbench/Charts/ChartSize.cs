namespace FlowCalc.Workbench.Charts;

/// <summary>Size of a chart's sheet, points.</summary>
/// <param name="Width">Its width, 300 or more for every label to have its place.</param>
/// <param name="Height">Its height, 160 or more; a chart of rows takes the height that its rows need instead.</param>
public readonly record struct ChartSize(double Width, double Height)
{
    /// <summary>On a page.</summary>
    public static ChartSize Page => new(680, 340);

    /// <summary>On a sheet of A4 or Letter between its margins.</summary>
    public static ChartSize Paper => new(500, 260);
}
