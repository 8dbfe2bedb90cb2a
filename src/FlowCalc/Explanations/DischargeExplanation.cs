using System.Collections.Immutable;

namespace FlowCalc.Explanations;

/// <summary>How the numbers of a discharge come about.</summary>
/// <param name="Equations">The equations used in any case, each once.</param>
/// <param name="Cases">One entry a case, in the order of the answer.</param>
/// <param name="LeftOut">What it does not hold.</param>
public sealed record DischargeExplanation(ImmutableArray<Equation> Equations, ImmutableArray<CaseExplanation> Cases, ImmutableArray<string> LeftOut);
