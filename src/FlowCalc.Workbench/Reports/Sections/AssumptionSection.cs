using FlowCalc.Workbench.Reports.Blocks;

namespace FlowCalc.Workbench.Reports.Sections;

/// <summary>What the document left open and what was taken, each once with the places that it stands for.</summary>
static class AssumptionSection
{
    const int MostPlaces = 6;

    public static ReportSection? Of(ReportSource source)
    {
        var all = source.Check.Assumptions.ToArray();
        if (all.Length == 0) return null;
        var rows = all.GroupBy(assumption => (assumption.Value, assumption.Source)).Select(alike => new[] { ReportTable.Few([.. alike.Select(assumption => assumption.Pointer).Distinct()], MostPlaces), alike.Key.Value, alike.Key.Source });
        return new("Assumptions taken",
        [
            new ReportParagraph("The document left these open. What was taken for them is part of the answer: look at each, and state it in the document where it is otherwise."),
            ReportTable.Of("What was left open", ["place in the document", "what was taken", "why"], rows),
        ]);
    }
}
