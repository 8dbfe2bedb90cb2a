using System.Collections.Immutable;

namespace FlowCalc.Api.Explanations;

/// <summary>How the numbers of a steady flow come about, so that each may be done again by hand.</summary>
/// <param name="Equations">The equations used, each once.</param>
/// <param name="Steps">The calculation, from the supply to the nozzles.</param>
/// <param name="States">States of a gas or an agent that boils along the way, from the highest pressure down; empty for a liquid.</param>
/// <param name="LeftOut">What it does not hold.</param>
public sealed record FlowExplanationAnswer(
    ImmutableArray<EquationAnswer> Equations, ImmutableArray<StepAnswer> Steps, ImmutableArray<PathStateAnswer> States, ImmutableArray<string> LeftOut);
