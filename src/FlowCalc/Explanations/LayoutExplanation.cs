using System.Collections.Immutable;

namespace FlowCalc.Explanations;

/// <summary>How the steady flow of one layout of a study comes about.</summary>
/// <param name="Name">Name of the layout in the study.</param>
/// <param name="Steps">As in <see cref="FlowExplanation"/>; empty where it has no flow.</param>
/// <param name="States">As in <see cref="FlowExplanation"/>.</param>
public sealed record LayoutExplanation(string Name, ImmutableArray<ExplanationStep> Steps, ImmutableArray<PathState> States);
