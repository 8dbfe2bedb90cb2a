using System.Collections.Immutable;
using System.Globalization;
using FlowCalc.Calibration;
using FlowCalc.Checks;
using FlowCalc.Layouts;
using FlowCalc.Workbench.Figures;
using FlowCalc.Workbench.Reports.Blocks;

namespace FlowCalc.Workbench.Reports.Sections;

/// <summary>What a test says of the built system; none of a document without one.</summary>
static class CalibrationSection
{
    const int MostCauses = 8;

    public static ReportSection? Of(LayoutCheck check, Shown shown)
    {
        if (check.Calibration is not { Result: { Best: { } best, DrawnFlow: { } drawn, BuiltFlow: { } built } result, Judgement: var judged }) return null;
        var (layout, measured) = (check.Layout, check.Layout.Measured!);
        var blocks = ImmutableArray.CreateBuilder<ReportBlock>();
        blocks.Add(new ReportParagraph($"Of the causes that were tried one at a time, the likeliest is: {Words(layout, best)}. A cause is likelier the less its score is; within 2 of each other readings do not tell them apart."));
        blocks.Add(ReportTable.Of("Causes, the likeliest first", ["cause", "#unknowns", "#chi-square", "#degrees of freedom", "#score over the best", "#flow lost in the run"], result.Causes.Take(MostCauses).Select(cause => new[]
        {
            Words(layout, cause), Shown.Count(cause.Unknowns.Length), Shown.Number(cause.ChiSquare), Shown.Count(cause.DegreesOfFreedom), Shown.Number(cause.Score - best.Score), cause.FlowLost is { } lost ? Shown.Percent(lost) : Shown.None,
        })));
        blocks.Add(ReportTable.Of("Readings, and how far each is from what the likeliest cause would have shown, in its standard uncertainties", ["reading", "#as drawn", "#likeliest"], measured.Readings.Select((reading, at) => new[]
        {
            reading.Point < 0 ? "time of the discharge" : layout.Points[reading.Point].Id, Off(reading, result.Drawn!, at), Off(reading, best, at),
        })));
        blocks.Add(ReportTable.Of("Shares with the layout's own agent and supply", ["nozzle", "#wanted", "#as drawn", "#as built", "#deviation as built"], drawn.Nozzles.Zip(built.Nozzles, (one, other) => new[]
        {
            layout.Points[one.Point].Id, Shown.Percent(one.WantedShare), Shown.Percent(one.Share), Shown.Percent(other.Share), Shown.Deviation(other.Deviation),
        })));
        if (!judged.Changes.IsEmpty) blocks.Add(new ReportList([.. judged.Changes.Select(change => $"As built: {change.Path} is {change.To?.Words ?? "nothing"}{(change.From is { } from ? $", drawn as {from.Words}" : "")}.")]));
        return new("Test of the built system", blocks.ToImmutable());
    }

    static string Words(Layout layout, CauseFit cause) => cause.Kind switch
    {
        CauseKind.AsDrawn => "built as drawn",
        CauseKind.SupplyPressure => "another supply pressure",
        CauseKind.Roughness => "another roughness of all tube",
        CauseKind.Bore => "another bore of all tube",
        CauseKind.Nozzles => "other nozzles",
        _ => $"a loss in run {layout.Runs[cause.Run].Id}",
    };

    static string Off(MeasuredReading reading, CauseFit cause, int at) => ((reading.Value - cause.Predicted[at]) / reading.Sigma).ToString("+0.0;\u22120.0;0.0", CultureInfo.InvariantCulture);
}
