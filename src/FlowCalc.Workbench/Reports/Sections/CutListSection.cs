using System.Collections.Immutable;
using FlowCalc.Layouts;
using FlowCalc.Quantities;
using FlowCalc.Routes;
using FlowCalc.Workbench.Figures;
using FlowCalc.Workbench.Reports.Blocks;

namespace FlowCalc.Workbench.Reports.Sections;

/// <summary>What is cut, bent and ordered.</summary>
static class CutListSection
{
    public static ReportSection Of(Layout layout, CutList cuts, Shown shown)
    {
        var write = new BenchLength(shown.System);
        var pieces = cuts.Runs.SelectMany(cut => cut.Pieces).ToArray();
        var blocks = ImmutableArray.CreateBuilder<ReportBlock>();
        blocks.Add(new ReportParagraph($"Lengths in {write.Unit}. The cut length is that of the finished piece along its centre line, up to the next millimetre; marks are measured from the end towards the supply and show where each arc begins. The turn goes from the plane of the bend before, right-handed along the tube."));
        blocks.Add(ReportTable.Of("Pieces of tube", ["run", "#piece", "tube", "from", "to", "#cut length", "#saw to", "#depth from", "#depth to", "#bends"], pieces.Select(piece => new[]
        {
            layout.Runs[piece.Run].Id, Shown.Count(piece.Number), TubeLabel.Of(layout.Runs[piece.Run].Tube), piece.Start.Fitting, piece.End.Fitting, write.Of(piece.Cut), write.Of(piece.Sawn),
            write.Of(piece.Start.Insertion), write.Of(piece.End.Insertion), Shown.Count(piece.Bends.Length),
        })));
        var marks = pieces.SelectMany(piece => piece.Bends.Select((bend, at) => new[]
        {
            layout.Runs[piece.Run].Id, Shown.Count(piece.Number), Shown.Count(at + 1), write.Of(bend.At), Angle(bend.Angle.Radians, shown), bend.Rotation is { } turn ? Angle(turn.Radians, shown) : Shown.None, write.Of(bend.Radius), write.Of(bend.Setback), write.Of(bend.Arc),
        })).ToArray();
        if (marks.Length > 0) blocks.Add(ReportTable.Of("Bend marks", ["run", "#piece", "#bend", "#mark at", "#angle", "#turn", "#radius", "#setback", "#arc"], marks));
        var unplaced = cuts.Runs.Where(cut => cut.UnplacedBends > 0 || cut.UnplacedFittings > 0).Select(cut => layout.Runs[cut.Run].Id).ToArray();
        if (unplaced.Length > 0) blocks.Add(new ReportParagraph($"Bends or fittings without a place, so without marks or cuts: {string.Join(", ", unplaced)}."));
        AddStock(blocks, layout, cuts, write);
        blocks.Add(ReportTable.Of("Tube to order", ["tube", "material", "#pieces", "#finished", "#to order, with the spare"], cuts.Tubes.Select(order =>
            new[] { TubeLabel.Of(order.Tube), order.Tube.Material ?? Shown.None, Shown.Count(order.Pieces.Length), write.Of(order.Finished), write.Of(order.Order) })));
        blocks.Add(ReportTable.Of("Besides tube", ["what", "which", "#count", "#size", "note"], cuts.Items.Select(item => new[] { item.Kind, item.Name, Shown.Count(item.Count), write.Of(item.Size ?? item.Length), item.Note ?? "" })));
        return new("Cut list and order", blocks.ToImmutable());
    }

    static void AddStock(ImmutableArray<ReportBlock>.Builder blocks, Layout layout, CutList cuts, BenchLength write)
    {
        var rows = cuts.Tubes.Where(order => order.Stock is not null).SelectMany(order => order.Stock!.Bars.Select((bar, at) => new[]
        {
            TubeLabel.Of(order.Tube), $"{(order.Stock.IsCoil ? "coil" : "bar")} {Shown.Count(at + 1)}", write.Of(bar.Length),
            string.Join(", ", bar.Pieces.Select(piece => $"{layout.Runs[order.Pieces[piece].Run].Id}/{Shown.Count(order.Pieces[piece].Number)}")), write.Of(bar.Offcut),
        })).ToArray();
        if (rows.Length > 0) blocks.Add(ReportTable.Of("Cutting from stock", ["tube", "stock", "#length", "pieces (run/piece)", "#left over"], rows));
    }

    static string Angle(double radians, Shown shown) => shown.Of(radians, QuantityKind.Angle).Replace('-', '−');
}
