using FlowCalc.Workbench.Pictures;

namespace FlowCalc.Workbench.Reports.Blocks;

/// <summary>A picture with its title and what it says.</summary>
/// <param name="Picture">The picture.</param>
public sealed record ReportFigure(Picture Picture) : ReportBlock
{
    // Width of the text between the margins of the narrower sheet, and a quarter: beyond that its letters would become small; and how much wider than high it must be to gain by a turned sheet.
    const double WidestUpright = 625, LeastRatio = 1.5;

    /// <summary>Whether it stands on a sheet of its own that lies on its side.</summary>
    public bool IsWide => Picture.Width > WidestUpright && Picture.Width > LeastRatio * Picture.Height;
}
