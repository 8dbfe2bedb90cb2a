using System.Collections.Immutable;

namespace FlowCalc.Explanations;

/// <summary>How the lengths and marks of a cut list come about, so that each may be done again by hand.</summary>
/// <param name="Equations">The equations used, each once.</param>
/// <param name="Steps">The calculation: run by run, then tube by tube.</param>
/// <param name="LeftOut">What it does not hold.</param>
public sealed record CutListExplanation(ImmutableArray<Equation> Equations, ImmutableArray<ExplanationStep> Steps, ImmutableArray<string> LeftOut);
