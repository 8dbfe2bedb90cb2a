using FlowCalc.Checks;
using FlowCalc.Workbench.Figures;
using FlowCalc.Workbench.Reports;
using FlowCalc.Workbench.Reports.Blocks;

namespace FlowCalc.Cli.Jobs;

/// <summary>A check as a person reads it.</summary>
static class CheckBlocks
{
    /// <summary>What came of every part.</summary>
    public static IEnumerable<ReportBlock> Of(LayoutCheck check)
    {
        yield return ReportTable.Of("Parts of the job", ["part", "verdict", "why not answered"], check.Parts.Select(part => (string[])
            [part.Part.ToString(), part.Verdict is { } verdict ? Severities.Word(verdict) : Shown.None, part.Why ?? ""]));
    }

    /// <summary>A section with its title.</summary>
    public static IEnumerable<ReportBlock> Titled(ReportSection section) => section.Blocks.Prepend(new ReportHeading(section.Title));
}
