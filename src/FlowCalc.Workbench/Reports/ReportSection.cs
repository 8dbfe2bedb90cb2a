using System.Collections.Immutable;
using FlowCalc.Workbench.Reports.Blocks;

namespace FlowCalc.Workbench.Reports;

/// <summary>A section of a report.</summary>
/// <param name="Title">Its heading, without its number.</param>
/// <param name="Blocks">What it says.</param>
public sealed record ReportSection(string Title, ImmutableArray<ReportBlock> Blocks);
