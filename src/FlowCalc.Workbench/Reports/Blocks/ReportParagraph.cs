namespace FlowCalc.Workbench.Reports.Blocks;

/// <summary>A paragraph.</summary>
/// <param name="Text">Its text.</param>
public sealed record ReportParagraph(string Text) : ReportBlock;
