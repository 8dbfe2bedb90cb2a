namespace FlowCalc.Workbench.Reports.Blocks;

/// <summary>A line to sign on, with a place for the date.</summary>
/// <param name="Role">Who signs there.</param>
public sealed record ReportSignature(string Role) : ReportBlock;
