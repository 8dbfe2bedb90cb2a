using FlowCalc.Findings;

namespace FlowCalc.Workbench.Reports.Blocks;

/// <summary>What came out, in a sentence that stands out.</summary>
/// <param name="Verdict">The worst of the findings.</param>
/// <param name="Text">The sentence.</param>
public sealed record ReportVerdict(Severity Verdict, string Text) : ReportBlock;
