using FlowCalc.Discharge;
using FlowCalc.Findings;
using FlowCalc.Flows;
using FlowCalc.Layouts;
using FlowCalc.Quantities;
using FlowCalc.Workbench.Figures;

namespace FlowCalc.Api.Startup;

/// <summary>The demo layout, solved.</summary>
/// <param name="Layout">The layout.</param>
/// <param name="Flow">Its flow, converged.</param>
/// <param name="Judgement">What there is to say about the flow.</param>
/// <param name="Discharge">Its discharge in every case.</param>
/// <param name="DischargeJudgement">What there is to say about that.</param>
internal sealed record Demo(Layout Layout, FlowResult Flow, FlowJudgement Judgement, DischargeResult Discharge, DischargeJudgement DischargeJudgement)
{
    /// <summary>Its numbers as people read them.</summary>
    public Shown Shown { get; } = new(UnitSystem.Metric, Layout.AmbientPressure);

    /// <summary>The demo whose flow is solved, judged and followed to the empty bottle.</summary>
    public static Demo Of(Layout layout, FlowResult flow, CancellationToken cancel)
    {
        var discharge = LayoutDischarge.Solve(layout, cancel);
        return new(layout, flow, FlowFindings.Judge(layout, flow, UnitSystem.Metric, cancel), discharge, DischargeFindings.JudgeWithCures(layout, discharge, UnitSystem.Metric, TaskScheduler.Default, cancel));
    }
}
