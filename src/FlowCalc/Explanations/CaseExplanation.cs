using System.Collections.Immutable;
using UnitsNet;

namespace FlowCalc.Explanations;

/// <summary>How the numbers of one case of a discharge come about.</summary>
/// <param name="Temperature">Temperature of bottle and contents.</param>
/// <param name="Attitude">Name of the attitude.</param>
/// <param name="Steps">State at the start, flow of the filled line at the pressure of the start, and how fast the bottle changes then; empty for a case without a discharge.</param>
/// <param name="States">As in <see cref="FlowExplanation"/>.</param>
public sealed record CaseExplanation(Temperature Temperature, string Attitude, ImmutableArray<ExplanationStep> Steps, ImmutableArray<PathState> States);
