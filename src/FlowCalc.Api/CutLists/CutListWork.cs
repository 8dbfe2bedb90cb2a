using FlowCalc.Findings;
using FlowCalc.Layouts;
using FlowCalc.Routes;

namespace FlowCalc.Api.CutLists;

/// <summary>A cut list that has been worked out and judged.</summary>
/// <param name="Layout">Its layout.</param>
/// <param name="List">The list.</param>
/// <param name="Judgement">What was found in it.</param>
internal sealed record CutListWork(Layout Layout, CutList List, CutListJudgement Judgement);
