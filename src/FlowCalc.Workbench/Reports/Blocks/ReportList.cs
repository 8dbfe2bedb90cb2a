using System.Collections.Immutable;

namespace FlowCalc.Workbench.Reports.Blocks;

/// <summary>A list of sentences.</summary>
/// <param name="Items">The sentences.</param>
public sealed record ReportList(ImmutableArray<string> Items) : ReportBlock;
