namespace FlowCalc.Workbench.Reports.Blocks;

/// <summary>A column of a table.</summary>
/// <param name="Title">Its heading.</param>
/// <param name="IsNumber">Whether it holds numbers, which stand to the right.</param>
public sealed record ReportColumn(string Title, bool IsNumber = false);
