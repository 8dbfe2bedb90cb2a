using FlowCalc.Checks;
using FlowCalc.Discharge;
using FlowCalc.Findings;
using FlowCalc.Flows;
using FlowCalc.Layouts;
using FlowCalc.Quantities;

namespace FlowCalc.Workbench.Solving;

/// <summary>A layout with its steady flow and what is found in it; with its discharge where that was asked for.</summary>
/// <param name="Layout">The layout.</param>
/// <param name="Units">The system of units of its findings' sentences.</param>
/// <param name="Flow">Its flow. Where it has not converged there is no judgement.</param>
/// <param name="Judgement">The findings of the flow, with cures; null without a flow.</param>
public sealed record SolvedLayout(Layout Layout, UnitSystem Units, FlowResult Flow, FlowJudgement? Judgement)
{
    /// <summary>Its discharge; null where it was not asked for or its supply is no bottle.</summary>
    public DischargeResult? Discharge { get; init; }

    /// <summary>The findings of the discharge, with cures; null without one.</summary>
    public DischargeJudgement? DischargeJudgement { get; init; }

    /// <summary>The worst of the verdicts that there are.</summary>
    public Severity Verdict => (Severity)Math.Max((int)(Judgement?.Verdict ?? Severity.Fail), (int)(DischargeJudgement?.Verdict ?? Severity.Pass));

    /// <summary>All findings, those of the flow first; one that both have stands once.</summary>
    public IEnumerable<Finding> Findings =>
        (Judgement?.Findings ?? []).Concat((DischargeJudgement?.Findings ?? []).Where(finding => Judgement?.Findings.Any(other => other.Message == finding.Message) != true));

    /// <summary>The flow and the discharge of a check.</summary>
    /// <param name="check">The check; its flow has converged.</param>
    /// <exception cref="ArgumentException">It has no flow.</exception>
    public static SolvedLayout Of(LayoutCheck check)
    {
        ArgumentNullException.ThrowIfNull(check);
        if (check.Flow is not { } flow) throw new ArgumentException("The flow has not converged.", nameof(check));
        return new(check.Layout, check.Ask.Units, flow.Result, flow.Judgement) { Discharge = check.Discharge?.Result, DischargeJudgement = check.Discharge?.Judgement };
    }

    /// <summary>Solves and judges the flow.</summary>
    /// <param name="layout">The layout.</param>
    /// <param name="units">The system of units of sentences.</param>
    /// <param name="cancel">Stops the work.</param>
    /// <exception cref="OperationCanceledException">The token was cancelled.</exception>
    public static SolvedLayout OfFlow(Layout layout, UnitSystem units, CancellationToken cancel)
    {
        var flow = SteadyFlow.Solve(layout, cancel);
        return new SolvedLayout(layout, units, flow, flow.Report.Converged ? FlowFindings.Judge(layout, flow, units, cancel) : null);
    }

    /// <summary>The same with its discharge, where the supply is a bottle.</summary>
    /// <param name="scheduler">Where cases run beside the caller's thread.</param>
    /// <param name="cancel">Stops the work.</param>
    /// <exception cref="OperationCanceledException">The token was cancelled.</exception>
    public SolvedLayout WithDischarge(TaskScheduler scheduler, CancellationToken cancel)
    {
        if (Layout.Supply is not BottleSupply) return this;
        var discharge = LayoutDischarge.Solve(Layout, scheduler, cancel);
        return this with { Discharge = discharge, DischargeJudgement = DischargeFindings.JudgeWithCures(Layout, discharge, Units, scheduler, cancel) };
    }
}
