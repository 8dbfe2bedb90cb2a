using FlowCalc.Findings;
using FlowCalc.Routes;
using FlowCalc.Workbench.Solving;

namespace FlowCalc.Workbench.Reports;

/// <summary>What a report is made of.</summary>
/// <param name="Solved">The layout, its flow and, where its supply is a bottle, its discharge; the flow has converged.</param>
/// <param name="Cuts">Its cut list.</param>
/// <param name="CutsJudged">What is found in it.</param>
public sealed record ReportSource(SolvedLayout Solved, CutList Cuts, CutListJudgement CutsJudged)
{
    /// <summary>The date that the report bears, as its user writes it; null for a blank to fill in.</summary>
    public string? Date { get; init; }

    /// <summary>Who prepared it, as its user writes it; null for a blank to fill in.</summary>
    public string? By { get; init; }

    /// <summary>The worst of all findings.</summary>
    public Severity Verdict => (Severity)Math.Max((int)Solved.Verdict, (int)CutsJudged.Verdict);

    /// <summary>All findings, the gravest first.</summary>
    public IEnumerable<Finding> Findings => Solved.Findings.Concat(CutsJudged.Findings).OrderByDescending(finding => finding.Severity);

    /// <summary>Works a layout out for its report.</summary>
    /// <param name="solved">The layout with its flow, and its discharge where it has one.</param>
    /// <param name="cancel">Stops the work.</param>
    /// <exception cref="OperationCanceledException">The token was cancelled.</exception>
    public static ReportSource Of(SolvedLayout solved, CancellationToken cancel)
    {
        ArgumentNullException.ThrowIfNull(solved);
        var cuts = CutList.Of(solved.Layout, cancel);
        return new(solved, cuts, CutListFindings.Judge(solved.Layout, cuts, solved.Units, cancel));
    }
}
