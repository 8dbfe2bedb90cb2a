using System.Collections.Immutable;
using System.ComponentModel.DataAnnotations;
using System.Text.Json;
using System.Text.Json.Serialization;
using FlowCalc.Api.Answers;
using FlowCalc.Api.Explanations;
using FlowCalc.Api.Flow;

namespace FlowCalc.Api.Size;

/// <summary>Sizes that meet a wish, or what is in its way.</summary>
/// <param name="Verdict">The worst severity that <c>/v1/flow</c> finds in the layout with the sizes; <c>fail</c> where none meet the wish.</param>
/// <param name="Possible">Whether sizes were found that meet the wish.</param>
/// <param name="Proof"><c>exact</c> where no better sizes exist in the objective's measure, or where it is proven that none meet the wish; <c>gap</c> where the search ended before.</param>
/// <param name="Objective">The objective's measure before and after, and what is proven of it.</param>
/// <param name="Layout">The document with the sizes in it, ready to post again; null where none meet the wish.</param>
/// <param name="Changes">What was changed in it, and why.</param>
/// <param name="Supply">What then leaves the supply; null where none meet the wish.</param>
/// <param name="Nozzles">What each nozzle then gets in the steady flow, in the document's order.</param>
/// <param name="Time">When the required part is then out of the nozzles; null where no time was asked.</param>
/// <param name="RunnerUp">The next best sizes that were found; null for none.</param>
/// <param name="InTheWay">Where no sizes meet the wish: each requirement of it, and what comes with that one left out or lowered.</param>
/// <param name="LeftOut">Why tubes and orifices of the stock are no choice in some places.</param>
/// <param name="Search">What the search took.</param>
/// <param name="Findings">What <c>/v1/flow</c> finds in the layout with the sizes.</param>
/// <param name="Assumptions">What document and request left open, and what was taken.</param>
/// <param name="Limits">The limits that the findings were held against.</param>
/// <param name="Cautions">What to keep in mind before relying on the answer.</param>
/// <param name="Engine">What gave the answer.</param>
public sealed record SizeAnswer(
    [property: AllowedValues("pass", "note", "warn", "fail")] string Verdict,
    bool Possible,
    [property: AllowedValues("exact", "gap")] string Proof,
    ObjectiveAnswer Objective,
    JsonElement Layout,
    ImmutableArray<SizeChangeAnswer> Changes,
    SupplyAnswer? Supply,
    ImmutableArray<SizedNozzleAnswer> Nozzles,
    SizeTimeAnswer? Time,
    RunnerUpAnswer? RunnerUp,
    ImmutableArray<InTheWayAnswer> InTheWay,
    ImmutableArray<string> LeftOut,
    SizeSearchAnswer Search,
    ImmutableArray<FindingAnswer> Findings,
    ImmutableArray<Assumption> Assumptions,
    ImmutableArray<LimitAnswer> Limits,
    ImmutableArray<string> Cautions,
    EngineAnswer Engine)
{
    /// <summary>How the numbers come about; only where <c>explain=true</c> asks for it.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public StudyExplanationAnswer? Explanation { get; init; }
}
