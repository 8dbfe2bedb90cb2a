using System.Collections.Immutable;

namespace FlowCalc.Api.Explanations;

/// <summary>How the numbers of a study come about: the flow of each layout in it, and what the study makes of them.</summary>
/// <param name="Equations">The equations used anywhere in it, each once.</param>
/// <param name="Layouts">The steady flow of each layout.</param>
/// <param name="Steps">What the study adds.</param>
/// <param name="LeftOut">What it does not hold.</param>
public sealed record StudyExplanationAnswer(
    ImmutableArray<EquationAnswer> Equations, ImmutableArray<LayoutExplanationAnswer> Layouts, ImmutableArray<StepAnswer> Steps, ImmutableArray<string> LeftOut);
