using System.Collections.Immutable;

namespace FlowCalc.Api.Explanations;

/// <summary>How the numbers of a discharge come about: the start of every case.</summary>
/// <param name="Equations">The equations used in any case, each once.</param>
/// <param name="Cases">One entry a case, in the order of the answer.</param>
/// <param name="LeftOut">What it does not hold.</param>
public sealed record DischargeExplanationAnswer(ImmutableArray<EquationAnswer> Equations, ImmutableArray<CaseExplanationAnswer> Cases, ImmutableArray<string> LeftOut);
