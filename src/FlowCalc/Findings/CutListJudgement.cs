using System.Collections.Immutable;
using FlowCalc.Limits;

namespace FlowCalc.Findings;

/// <summary>What was found in a layout and its cut list.</summary>
/// <param name="Verdict">The worst severity of all findings; <see cref="Severity.Pass"/> where there is none.</param>
/// <param name="Findings">The findings: worst severity first, then by code, then in the document's order.</param>
/// <param name="Limits">The limits that were applied, one a row of <see cref="DefaultLimits.All"/> that is held against a cut list.</param>
/// <param name="Assumptions">What the document left open, and what was taken, of the layout and of the cutting.</param>
public sealed record CutListJudgement(Severity Verdict, ImmutableArray<Finding> Findings, ImmutableArray<Limit> Limits, ImmutableArray<Assumption> Assumptions);
