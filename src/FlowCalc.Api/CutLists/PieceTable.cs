using System.Globalization;
using FlowCalc.Layouts;
using FlowCalc.Routes;

namespace FlowCalc.Api.CutLists;

/// <summary>The pieces of a cut list as a table: one row a piece, its marks in columns of their own.</summary>
internal static class PieceTable
{
    /// <summary>Fields that a table may have at most: a spreadsheet holds no more in comfort, and an answer has its bounds.</summary>
    public const long MostFields = 2_000_000;

    const int FixedColumns = 12, ColumnsABend = 4;

    /// <summary>Fields that the table would have.</summary>
    public static long Fields(CutList list) => list.Runs.Sum(run => (long)run.Pieces.Length) * (FixedColumns + ColumnsABend * MostBends(list));

    /// <summary>The table, UTF-8.</summary>
    public static byte[] Write(CutListWork work, CsvLengths write)
    {
        var table = new CsvText();
        var bends = MostBends(work.List);
        Header(table, write, bends);
        var remarks = Remarks(work);
        foreach (var cut in work.List.Runs)
            foreach (var piece in cut.Pieces)
                Row(table, write, work.Layout, piece, cut, bends, remarks.GetValueOrDefault(work.Layout.Runs[cut.Run].Id));
        return table.ToUtf8();
    }

    static int MostBends(CutList list) => list.Runs.SelectMany(run => run.Pieces).Select(piece => piece.Bends.Length).DefaultIfEmpty().Max();

    static void Header(CsvText table, CsvLengths write, int bends)
    {
        table.Add("run").Add("piece").Add("tube").Add("from").Add("to").Add($"cut_{write.Unit}").Add($"exact_{write.Unit}").Add($"sawn_{write.Unit}")
            .Add($"insertion_from_{write.Unit}").Add($"insertion_to_{write.Unit}").Add("bends_without_place").Add("remarks");
        for (var bend = 1; bend <= bends; bend++)
        {
            var name = string.Create(CultureInfo.InvariantCulture, $"bend_{bend}_");
            table.Add($"{name}at_{write.Unit}").Add($"{name}angle_{write.AngleUnit}").Add($"{name}rotation_{write.AngleUnit}").Add($"{name}radius_{write.Unit}");
        }
        table.EndRow();
    }

    static void Row(CsvText table, CsvLengths write, Layout layout, TubePiece piece, RunCut cut, int bends, string? remarks)
    {
        var run = layout.Runs[piece.Run];
        table.Add(run.Id).Add(piece.Number).Add(TubeLabel.Of(run.Tube)).Add(piece.Start.Fitting).Add(piece.End.Fitting)
            .Add(write.Of(piece.Cut)).Add(write.Of(piece.Exact)).Add(write.Of(piece.Sawn)).Add(write.Of(piece.Start.Insertion)).Add(write.Of(piece.End.Insertion))
            .Add(cut.UnplacedBends).Add(remarks);
        foreach (var bend in piece.Bends)
            table.Add(write.Of(bend.At)).Add(write.Of(bend.Angle)).Add(write.Of(bend.Rotation)).Add(write.Of(bend.Radius));
        table.Skip(ColumnsABend * (bends - piece.Bends.Length)).EndRow();
    }

    // The codes of what was found in a run, worst first; the sentences are in the table of the order.
    static Dictionary<string, string> Remarks(CutListWork work)
    {
        Dictionary<string, string> remarks = new(StringComparer.Ordinal);
        foreach (var finding in work.Judgement.Findings)
            foreach (var id in finding.Where.Distinct())
                remarks[id] = remarks.TryGetValue(id, out var before) ? $"{before}; {finding.Code}" : finding.Code;
        return remarks;
    }
}
