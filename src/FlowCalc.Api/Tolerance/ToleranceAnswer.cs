using System.Collections.Immutable;
using System.ComponentModel.DataAnnotations;
using System.Text.Json.Serialization;
using FlowCalc.Api.Answers;
using FlowCalc.Api.Explanations;

namespace FlowCalc.Api.Tolerance;

/// <summary>How the spread of a layout's inputs spreads its answer, and which input matters most.</summary>
/// <param name="Answer">What was worked out of every sample.</param>
/// <param name="Samples">Samples.</param>
/// <param name="Seed">Seed: the same one gives the same samples.</param>
/// <param name="Statement">Which input matters most to the first of <c>sensitivities</c>, in a sentence.</param>
/// <param name="Inputs">What varied, and between which values.</param>
/// <param name="Verdicts">How likely each verdict is.</param>
/// <param name="Findings">What is found in any sample, and how likely: the gravest first, then the likeliest.</param>
/// <param name="Cases">How the figures are spread, by case; a steady flow is one.</param>
/// <param name="Sensitivities">What each input explains of the main figures.</param>
/// <param name="Method">How samples, chances and sensitivities came about, and how far to trust them.</param>
/// <param name="Assumptions">What document and request left open, and what was taken.</param>
/// <param name="Cautions">What to keep in mind before relying on the answer.</param>
/// <param name="Engine">What gave the answer.</param>
public sealed record ToleranceAnswer(
    [property: AllowedValues("flow", "discharge")] string Answer,
    int Samples,
    long Seed,
    string Statement,
    ImmutableArray<InputAnswer> Inputs,
    VerdictsAnswer Verdicts,
    ImmutableArray<FindingChanceAnswer> Findings,
    ImmutableArray<CaseSpreadAnswer> Cases,
    ImmutableArray<SensitivityAnswer> Sensitivities,
    ImmutableArray<string> Method,
    ImmutableArray<Assumption> Assumptions,
    ImmutableArray<string> Cautions,
    EngineAnswer Engine)
{
    /// <summary>How the numbers come about; only where <c>explain=true</c> asks for it.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public StudyExplanationAnswer? Explanation { get; init; }
}
