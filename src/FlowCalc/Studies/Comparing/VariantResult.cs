using FlowCalc.Discharge;
using FlowCalc.Findings;
using FlowCalc.Flows;

namespace FlowCalc.Studies.Comparing;

/// <summary>The answers of one layout of a comparison.</summary>
/// <param name="Variant">The layout.</param>
/// <param name="Flow">Its steady flow.</param>
/// <param name="FlowJudgement">What was found in it; null where it has not converged.</param>
/// <param name="Discharge">Its discharge; null where its supply is no bottle.</param>
/// <param name="DischargeJudgement">What was found in that; null where there is none.</param>
/// <param name="Standing">How good it is.</param>
public sealed record VariantResult(
    Variant Variant, FlowResult Flow, FlowJudgement? FlowJudgement, DischargeResult? Discharge, DischargeJudgement? DischargeJudgement, Standing Standing)
{
    /// <summary>Why it has no flow; null where it has one.</summary>
    public string? Failure => FlowJudgement is null ? Flow.Report.Failure ?? "The solve did not converge." : null;
}
