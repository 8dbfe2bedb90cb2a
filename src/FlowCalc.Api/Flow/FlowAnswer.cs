using System.Collections.Immutable;
using System.ComponentModel.DataAnnotations;
using System.Text.Json.Serialization;
using FlowCalc.Api.Answers;
using FlowCalc.Api.Explanations;

namespace FlowCalc.Api.Flow;

/// <summary>The steady flow of a layout, and what there is to say about it.</summary>
/// <param name="Verdict">The worst severity of the findings; <c>pass</c> where there are none.</param>
/// <param name="Findings">What the engine noticed, worst first.</param>
/// <param name="Supply">What leaves the supply.</param>
/// <param name="Zones">What each zone gets, in the document's order.</param>
/// <param name="Nozzles">What each nozzle gets, in the document's order.</param>
/// <param name="Runs">What each run carries, in the document's order.</param>
/// <param name="Points">The pressure at each point, in the document's order.</param>
/// <param name="Band">How far the uncertain choices of the model move the flow of an agent that boils; null for others.</param>
/// <param name="Solver">How the solve ended.</param>
/// <param name="Assumptions">What the document left open, and what was taken.</param>
/// <param name="Limits">The limits that the findings were held against.</param>
/// <param name="Cautions">What to keep in mind before relying on the answer.</param>
/// <param name="Engine">What gave the answer.</param>
public sealed record FlowAnswer(
    [property: AllowedValues("pass", "note", "warn", "fail")] string Verdict,
    ImmutableArray<FindingAnswer> Findings,
    SupplyAnswer Supply,
    ImmutableArray<ZoneAnswer> Zones,
    ImmutableArray<NozzleAnswer> Nozzles,
    ImmutableArray<RunAnswer> Runs,
    ImmutableArray<PointAnswer> Points,
    FlowBandAnswer? Band,
    SolverAnswer Solver,
    ImmutableArray<Assumption> Assumptions,
    ImmutableArray<LimitAnswer> Limits,
    ImmutableArray<string> Cautions,
    EngineAnswer Engine)
{
    /// <summary>How the numbers come about; only where <c>explain=true</c> asks for it.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public FlowExplanationAnswer? Explanation { get; init; }
}
