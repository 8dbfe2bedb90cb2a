using System.Collections.Immutable;
using FlowCalc.Limits;

namespace FlowCalc.Findings;

/// <summary>What was found in a firing circuit.</summary>
/// <param name="Verdict">The worst severity of all findings; <see cref="Severity.Pass"/> where there is none.</param>
/// <param name="Findings">The findings: worst severity first, then by code, then in the document's order.</param>
/// <param name="Limits">The limits that were applied, one a row of <see cref="DefaultLimits.All"/> that is held against a circuit.</param>
public sealed record CircuitJudgement(Severity Verdict, ImmutableArray<Finding> Findings, ImmutableArray<Limit> Limits);
