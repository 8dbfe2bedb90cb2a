namespace FlowCalc.Workbench.Reports.Paper;

/// <summary>A sheet.</summary>
public enum PaperSize
{
    /// <summary>ISO 216 A4, 210 mm by 297 mm.</summary>
    A4,

    /// <summary>Letter, 8.5 in by 11 in.</summary>
    Letter,
}
