using System.Collections.Immutable;
using FlowCalc.Limits;

namespace FlowCalc.Findings;

/// <summary>What was found in dates, weight and gauge of a bottle.</summary>
/// <param name="Verdict">The worst severity of all findings; <see cref="Severity.Pass"/> where there is none.</param>
/// <param name="Findings">The findings: worst severity first, then by code, then in the order of the rules.</param>
/// <param name="Limits">The limits that were applied, one a row of <see cref="DefaultLimits.All"/> that is held against the upkeep.</param>
public sealed record UpkeepJudgement(Severity Verdict, ImmutableArray<Finding> Findings, ImmutableArray<Limit> Limits);
