namespace FlowCalc.Workbench.Reports.Blocks;

/// <summary>A heading within a section.</summary>
/// <param name="Text">Its text.</param>
public sealed record ReportHeading(string Text) : ReportBlock;
