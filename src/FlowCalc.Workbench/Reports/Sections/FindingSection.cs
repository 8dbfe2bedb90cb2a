using System.Globalization;
using FlowCalc.Findings;
using FlowCalc.Workbench.Reports.Blocks;

namespace FlowCalc.Workbench.Reports.Sections;

/// <summary>What was found, and what would cure it.</summary>
static class FindingSection
{
    const int MostIds = 4;

    public static ReportSection Of(ReportSource source)
    {
        var findings = source.Findings.ToArray();
        if (findings.Length == 0) return new("Findings", [new ReportParagraph("Nothing was found.")]);
        var table = ReportTable.Of("Findings, the gravest first", ["severity", "where", "what was found, and a cure that was tried"], findings.SelectMany(Rows));
        return new("Findings", [table, new ReportParagraph("A cure is a change that was tried by solving the changed layout. It is a proposal: whoever makes it calculates the changed layout anew.")]);
    }

    static IEnumerable<string[]> Rows(Finding finding)
    {
        yield return [Word(finding.Severity), Where([.. finding.Where.Distinct()]), $"{finding.Message} [{finding.Code}; {finding.Source}]"];
        if (finding.Cure is { } cure) yield return ["", cure.Clears ? "cure" : "betters it", cure.Message];
    }

    static string Where(string[] ids) => string.Join(", ", ids.Take(MostIds)) + (ids.Length > MostIds ? string.Create(CultureInfo.InvariantCulture, $" and {ids.Length - MostIds} more") : "");

    static string Word(Severity severity) => severity switch
    {
        Severity.Pass => "pass",
        Severity.Note => "note",
        Severity.Warn => "warning",
        Severity.Fail => "FAILURE",
        _ => throw new ArgumentOutOfRangeException(nameof(severity), severity, "Not a severity."),
    };
}
