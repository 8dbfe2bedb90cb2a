using FlowCalc.Findings;
using FlowCalc.Workbench.Figures;
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
        yield return [Word(finding.Severity), ReportTable.Few([.. finding.Where.Distinct()], MostIds), $"{finding.Message} [{finding.Code}; {finding.Source}]"];
        if (finding.Cure is { } cure) yield return ["", cure.Clears ? "cure" : "betters it", cure.Message];
    }

    // A failure stands out in a table of small letters.
    static string Word(Severity severity) => severity == Severity.Fail ? Severities.Noun(severity).ToUpperInvariant() : Severities.Noun(severity).ToLowerInvariant();
}
