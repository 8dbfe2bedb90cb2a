using System.Collections.Immutable;
using FlowCalc.Limits;

namespace FlowCalc.Findings;

/// <summary>What was found in where sprays land and what zones get.</summary>
/// <param name="Verdict">The worst severity of all findings; <see cref="Severity.Pass"/> where there is none.</param>
/// <param name="Findings">The findings: worst severity first, then by code, then in the document's order.</param>
/// <param name="Limits">The limits that were applied, one a row of <see cref="DefaultLimits.All"/> that is held against a coverage.</param>
/// <param name="Assumptions">What the document left open of flow and coverage, and what was taken.</param>
public sealed record CoverageJudgement(Severity Verdict, ImmutableArray<Finding> Findings, ImmutableArray<Limit> Limits, ImmutableArray<Assumption> Assumptions);
