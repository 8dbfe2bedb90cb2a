using System.Collections.Immutable;
using System.ComponentModel.DataAnnotations;
using System.Text.Json.Serialization;
using FlowCalc.Api.Answers;
using FlowCalc.Api.Explanations;

namespace FlowCalc.Api.CutLists;

/// <summary>What is cut, bent, clipped, sleeved and ordered to build a layout, and what there is to say about it.</summary>
/// <param name="Verdict">The worst severity of the findings; <c>pass</c> where there are none.</param>
/// <param name="Findings">What the engine noticed, worst first.</param>
/// <param name="Runs">One entry a run, in the document's order.</param>
/// <param name="Tubes">One entry a tube, by first use.</param>
/// <param name="Items">What to order besides tube.</param>
/// <param name="Assumptions">What the document left open, and what was taken.</param>
/// <param name="Limits">The limits that the findings were held against.</param>
/// <param name="Cautions">What to keep in mind before relying on the answer.</param>
/// <param name="Engine">What gave the answer.</param>
public sealed record CutListAnswer(
    [property: AllowedValues("pass", "note", "warn", "fail")] string Verdict,
    ImmutableArray<FindingAnswer> Findings,
    ImmutableArray<RunCutAnswer> Runs,
    ImmutableArray<TubeOrderAnswer> Tubes,
    ImmutableArray<OrderItemAnswer> Items,
    ImmutableArray<Assumption> Assumptions,
    ImmutableArray<LimitAnswer> Limits,
    ImmutableArray<string> Cautions,
    EngineAnswer Engine)
{
    /// <summary>How the numbers come about; only where <c>explain=true</c> asks for it.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public CutListExplanationAnswer? Explanation { get; init; }
}
