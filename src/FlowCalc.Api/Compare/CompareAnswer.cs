using System.Collections.Immutable;
using System.Text.Json.Serialization;
using FlowCalc.Api.Answers;
using FlowCalc.Api.Explanations;

namespace FlowCalc.Api.Compare;

/// <summary>Layouts side by side.</summary>
/// <param name="Best">Name of the best of them: the first of the ranking.</param>
/// <param name="Ranking">All of them, best first, each with what decided.</param>
/// <param name="Nozzles">Every nozzle in each of them: those of the base in its order, then what variants add.</param>
/// <param name="Answers">The base first, then the variants in the request's order: what each call would answer.</param>
/// <param name="Cautions">What to keep in mind before relying on the answer.</param>
/// <param name="Engine">What gave the answer.</param>
public sealed record CompareAnswer(
    string Best,
    ImmutableArray<RankAnswer> Ranking,
    ImmutableArray<ComparedNozzleAnswer> Nozzles,
    ImmutableArray<VariantAnswer> Answers,
    ImmutableArray<string> Cautions,
    EngineAnswer Engine)
{
    /// <summary>How the numbers come about; only where <c>explain=true</c> asks for it.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public StudyExplanationAnswer? Explanation { get; init; }
}
