using System.Collections.Immutable;
using FlowCalc.Checks;
using FlowCalc.Workbench.Figures;
using FlowCalc.Workbench.Reports.Sections;

namespace FlowCalc.Workbench.Reports;

/// <summary>What a report says, worked out once and written as a page or as a PDF.</summary>
/// <param name="Title">Its title.</param>
/// <param name="Facts">What it is of, who prepared it and when: name and value; an empty value is a blank to fill in.</param>
/// <param name="Sections">Its sections.</param>
public sealed record ReportContent(string Title, ImmutableArray<(string Name, string Value)> Facts, ImmutableArray<ReportSection> Sections)
{
    /// <summary>What stands at the foot of every sheet.</summary>
    public const string Foot = "A calculation by FlowCalc. It approves nothing and replaces no discharge test.";

    /// <summary>The report of a layout.</summary>
    /// <param name="source">The layout with its answers.</param>
    /// <param name="cancel">Stops the work.</param>
    /// <exception cref="OperationCanceledException">The token was cancelled.</exception>
    public static ReportContent Of(ReportSource source, CancellationToken cancel)
    {
        ArgumentNullException.ThrowIfNull(source);
        var solved = source.Solved;
        var shown = new Shown(solved.Units, solved.Layout.AmbientPressure);
        IEnumerable<ReportSection?> sections =
        [
            OpeningSection.Of(source),
            VerdictSection.Of(source, shown),
            DrawingSection.Of(solved, shown, cancel),
            InputSection.Of(solved, shown),
            AssumptionSection.Of(source),
            FlowSection.Of(solved, shown),
            solved.Discharge is { } discharge ? DischargeSection.Of(solved.Layout, discharge, shown) : null,
            FindingSection.Of(source),
            CutListSection.Of(solved.Layout, source.Check.CutList.Result, shown),
            .. RestOfTheJob(source.Check, shown),
            MethodSection.Of(solved, cancel),
            ClosingSections.Cautions(source.Check),
            ClosingSections.LeftOut(source.Check),
            ClosingSections.Signatures(),
        ];
        return new(solved.Layout.Title ?? "Fire-suppression line without a title", OpeningSection.Facts(source), [.. sections.OfType<ReportSection>()]);
    }

    /// <summary>What is said of sprays and zones, the bottle's mount, the firing circuit, the dates and a test, as far as the document has them; on the page as in the report.</summary>
    internal static IEnumerable<ReportSection> RestOfTheJob(LayoutCheck check, Shown shown)
    {
        IEnumerable<ReportSection?> sections = [CoverageSection.Of(check, shown), MountSection.Of(check, shown), CircuitSection.Of(check, shown), UpkeepSection.Of(check, shown), CalibrationSection.Of(check, shown)];
        return sections.OfType<ReportSection>();
    }
}
