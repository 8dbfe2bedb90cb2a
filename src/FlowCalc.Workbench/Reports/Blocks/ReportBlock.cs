namespace FlowCalc.Workbench.Reports.Blocks;

/// <summary>A part of a section of a report: what it says, whatever it is written on.</summary>
public abstract record ReportBlock;
