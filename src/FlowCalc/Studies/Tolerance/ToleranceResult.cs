using System.Collections.Immutable;
using FlowCalc.Findings;
using FlowCalc.Studies.Sampling;

namespace FlowCalc.Studies.Tolerance;

/// <summary>How the spread of the inputs spreads an answer, and which input matters most.</summary>
/// <param name="Cases">The figures, by case.</param>
/// <param name="Verdicts">By severity, mildest first, the chance that it is the verdict.</param>
/// <param name="Unsolved">The chance that a sample has no answer to judge; a failed case of a discharge is a finding instead.</param>
/// <param name="Findings">What is found in any sample, the gravest first, then the likeliest.</param>
/// <param name="Sensitivities">What the inputs explain of the main figures.</param>
/// <param name="Assumptions">What was taken for what the question left open.</param>
public sealed record ToleranceResult(
    ImmutableArray<CaseSpread> Cases, ImmutableArray<(Severity Severity, Chance Chance)> Verdicts, Chance Unsolved,
    ImmutableArray<FindingChance> Findings, ImmutableArray<FigureSensitivity> Sensitivities, ImmutableArray<Assumption> Assumptions);
