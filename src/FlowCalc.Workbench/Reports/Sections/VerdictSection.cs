using System.Globalization;
using FlowCalc.Findings;
using FlowCalc.Workbench.Figures;
using FlowCalc.Workbench.Reports.Blocks;

namespace FlowCalc.Workbench.Reports.Sections;

/// <summary>The verdict in a sentence.</summary>
static class VerdictSection
{
    public static ReportSection Of(ReportSource source, Shown shown) => new("Verdict", [new ReportVerdict(source.Verdict, Sentence(source, shown))]);

    static string Sentence(ReportSource source, Shown shown)
    {
        var findings = source.Findings.ToArray();
        int Count(Severity severity) => findings.Count(finding => finding.Severity == severity);
        var (fails, warns, notes) = (Count(Severity.Fail), Count(Severity.Warn), Count(Severity.Note));
        var what = source.Verdict switch
        {
            Severity.Pass => "Nothing was found against this layout within what is calculated",
            Severity.Note => $"Nothing stands against this layout within what is calculated; {Counted(notes, "note")} to read",
            Severity.Warn => $"{Counted(warns, "warning")} to be looked at by a person",
            _ => $"Not to be built as it stands: {Counted(fails, "failure")}{(warns > 0 ? $" and {Counted(warns, "warning")}" : "")}",
        };
        return what + Worst(source, shown) + ".";
    }

    static string Worst(ReportSource source, Shown shown)
    {
        var (solved, points) = (source.Solved, source.Solved.Layout.Points);
        var nozzle = solved.Flow.Nozzles.Where(one => one.Deviation is not null).MaxBy(one => Math.Abs(one.Deviation!.Value));
        var share = nozzle is null ? "" : $"; {points[nozzle.Point].Id} is furthest from its wanted share of the flow at the start, {Shown.Deviation(nozzle.Deviation)}";
        if (solved.Discharge is not { } discharge || WorstCase.Of(discharge) is not { } worst) return share;
        return $"{share}; in the slowest case ({Charts.CaseWords.Of(worst, shown)}) 95 % of the contents are {(worst.Time95 is { } time ? $"out after {shown.Of((UnitsNet.Duration?)time)}" : "never out")}";
    }

    static string Counted(int count, string word) => string.Create(CultureInfo.InvariantCulture, $"{count} {word}{(count == 1 ? "" : "s")}");
}
