using FlowCalc.Checks;
using FlowCalc.Findings;
using FlowCalc.Workbench.Solving;

namespace FlowCalc.Workbench.Reports;

/// <summary>What a report is made of.</summary>
/// <param name="Check">Everything that the layout has data for; its flow has converged.</param>
public sealed record ReportSource(LayoutCheck Check)
{
    /// <summary>The layout with its flow, and its discharge where it has one.</summary>
    public SolvedLayout Solved { get; } = SolvedLayout.Of(Check);

    /// <summary>The date that the report bears, as its user writes it; null for a blank to fill in.</summary>
    public string? Date { get; init; }

    /// <summary>Who prepared it, as its user writes it; null for a blank to fill in.</summary>
    public string? By { get; init; }

    /// <summary>The worst of all findings.</summary>
    public Severity Verdict => Check.Verdict;

    /// <summary>All findings, the gravest first.</summary>
    public IEnumerable<Finding> Findings => Check.AllFindings;
}
