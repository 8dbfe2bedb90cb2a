using System.Collections.Immutable;

namespace FlowCalc.Api.Explanations;

/// <summary>How the steady flow of one layout of a study comes about.</summary>
/// <param name="Name">Its name in a comparison; <c>sized</c> with chosen sizes, <c>design</c> in a study of tolerances.</param>
/// <param name="Steps">The calculation, from the supply to the nozzles; empty where it has no flow.</param>
/// <param name="States">States of a gas or an agent that boils along the way, from the highest pressure down; empty for a liquid.</param>
public sealed record LayoutExplanationAnswer(string Name, ImmutableArray<StepAnswer> Steps, ImmutableArray<PathStateAnswer> States);
