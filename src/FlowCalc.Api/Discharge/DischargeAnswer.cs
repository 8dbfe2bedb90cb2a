using System.Collections.Immutable;
using System.ComponentModel.DataAnnotations;
using System.Text.Json.Serialization;
using FlowCalc.Api.Answers;
using FlowCalc.Api.Explanations;

namespace FlowCalc.Api.Discharge;

/// <summary>The discharge of a layout in each of its cases, and what there is to say about it.</summary>
/// <param name="Verdict">The worst severity of the findings; <c>pass</c> where there are none.</param>
/// <param name="Findings">What the engine noticed, worst first; what several cases share stands once, for the worst of them.</param>
/// <param name="Cases">One entry a case: temperatures in order, and for each the attitudes in order.</param>
/// <param name="Assumptions">What the document left open, and what was taken.</param>
/// <param name="Limits">The limits that the findings were held against.</param>
/// <param name="Cautions">What to keep in mind before relying on the answer.</param>
/// <param name="Engine">What gave the answer.</param>
public sealed record DischargeAnswer(
    [property: AllowedValues("pass", "note", "warn", "fail")] string Verdict,
    ImmutableArray<FindingAnswer> Findings,
    ImmutableArray<CaseAnswer> Cases,
    ImmutableArray<Assumption> Assumptions,
    ImmutableArray<LimitAnswer> Limits,
    ImmutableArray<string> Cautions,
    EngineAnswer Engine)
{
    /// <summary>How the numbers come about; only where <c>explain=true</c> asks for it.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public DischargeExplanationAnswer? Explanation { get; init; }
}
