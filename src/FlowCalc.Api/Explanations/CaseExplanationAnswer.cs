using System.Collections.Immutable;
using FlowCalc.Api.Answers;

namespace FlowCalc.Api.Explanations;

/// <summary>How the numbers of one case of a discharge come about.</summary>
/// <param name="Temperature">Temperature of bottle and contents.</param>
/// <param name="Attitude">Name of the attitude.</param>
/// <param name="Steps">State at the start, flow of the filled line at the pressure of the start, and how fast the bottle changes then; empty for a case without a discharge.</param>
/// <param name="States">States of a gas or an agent that boils along the way; empty for a liquid.</param>
public sealed record CaseExplanationAnswer(Quantity Temperature, string Attitude, ImmutableArray<StepAnswer> Steps, ImmutableArray<PathStateAnswer> States);
