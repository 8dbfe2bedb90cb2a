using System.Collections.Immutable;
using FlowCalc.Limits;

namespace FlowCalc.Findings;

/// <summary>What was found in the readings of a test.</summary>
/// <param name="Verdict">The worst severity of all findings; <see cref="Severity.Pass"/> where there is none.</param>
/// <param name="Findings">The findings: worst severity first, then by code, then in the order of the readings.</param>
/// <param name="Limits">The limits that were applied, one a row of <see cref="DefaultLimits.All"/> that is held against a test.</param>
/// <param name="Changes">What makes the document that of the system as built; empty where the layout stands as drawn.</param>
/// <param name="Drawn">The flow of the layout as drawn, in short.</param>
/// <param name="Built">The flow of the layout as built, in short.</param>
public sealed record CalibrationJudgement(
    Severity Verdict, ImmutableArray<Finding> Findings, ImmutableArray<Limit> Limits, ImmutableArray<CureChange> Changes, CureOutcome Drawn, CureOutcome Built);
