using System.Collections.Immutable;
using FlowCalc.Limits;

namespace FlowCalc.Findings;

/// <summary>What was found in a mount.</summary>
/// <param name="Verdict">The worst severity of all findings; <see cref="Severity.Pass"/> where there is none.</param>
/// <param name="Findings">The findings: worst severity first, then by code, then bolts of the structure, of the adapter, straps, ends.</param>
/// <param name="Limits">The limits that were applied, one a row of <see cref="DefaultLimits.All"/> that is held against a mount.</param>
/// <param name="Assumptions">What the document left open, and what was taken, of the layout and of the mount.</param>
public sealed record MountJudgement(Severity Verdict, ImmutableArray<Finding> Findings, ImmutableArray<Limit> Limits, ImmutableArray<Assumption> Assumptions);
