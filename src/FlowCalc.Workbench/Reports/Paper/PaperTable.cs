using FlowCalc.Workbench.Pictures;
using FlowCalc.Workbench.Reports.Blocks;

namespace FlowCalc.Workbench.Reports.Paper;

/// <summary>Writes a table; its heading stands again on every page that it goes over to.</summary>
static class PaperTable
{
    const double Letters = 7.5, Line = 9.6, Beside = 3, Over = 2.2, Caption = 8.5;

    /// <summary>Writes it.</summary>
    public static void Write(PaperPages pages, ReportTable table)
    {
        var widths = ColumnWidths.Of(table, Letters, 2 * Beside, pages.Sheet.Column);
        List<string>[] head = [.. table.Columns.Select((column, at) => PaperText.Lines(column.Title, Letters, widths[at] - 2 * Beside, true))];
        var headHeight = Height(head);
        var first = table.Rows.IsEmpty ? 0 : Height(Cells(table, 0, widths));
        var caption = PaperText.Lines(table.Caption, Caption, pages.Sheet.Column, true);
        // The caption never stands without its heading and a row, as far as a page holds them.
        pages.Need(Math.Min(caption.Count * 11 + 3 + headHeight + first, pages.Sheet.Room));
        foreach (var line in caption)
        {
            pages.Write(line, Sheet.Side, pages.Y, Caption, isBold: true);
            pages.Y += 11;
        }
        pages.Y += 3;
        Head();
        for (var row = 0; row < table.Rows.Length; row++)
        {
            var cells = Cells(table, row, widths);
            var height = Height(cells);
            if (height > pages.Left && height <= pages.Sheet.Room - headHeight) Next();
            // A row that no page holds goes over as many as it needs.
            for (var from = 0; from < Lines(cells);)
            {
                var fit = Math.Max(1, (int)((pages.Left - 2 * Over) / Line));
                if (pages.Left < Line + 2 * Over && !pages.IsFresh)
                {
                    Next();
                    continue;
                }
                var part = cells.Select(cell => cell.Skip(from).Take(fit).ToList()).ToArray();
                Row(pages, table, part, widths, false);
                from += fit;
            }
            pages.Rule(pages.Y, widths.Sum(), Ink.Grid, 0.5);
        }
        pages.Y += 9;

        void Next()
        {
            pages.Turn();
            Head();
        }

        void Head()
        {
            pages.Graphics.DrawRectangle(PaperPicture.Brush(Ink.Grid), Sheet.Side, pages.Y, widths.Sum(), headHeight);
            Row(pages, table, head, widths, true);
            pages.Rule(pages.Y, widths.Sum(), Ink.Line, 0.7);
        }
    }

    static List<string>[] Cells(ReportTable table, int row, double[] widths) => [.. table.Rows[row].Select((text, at) => PaperText.Lines(text, Letters, widths[at] - 2 * Beside))];

    static int Lines(List<string>[] cells) => cells.Max(cell => cell.Count);

    static double Height(List<string>[] cells) => Lines(cells) * Line + 2 * Over;

    static void Row(PaperPages pages, ReportTable table, List<string>[] cells, double[] widths, bool isBold)
    {
        var x = Sheet.Side;
        for (var column = 0; column < cells.Length; column++)
        {
            var isNumber = table.Columns[column].IsNumber;
            for (var line = 0; line < cells[column].Count; line++)
                pages.Write(cells[column][line], isNumber ? x + widths[column] - Beside : x + Beside, pages.Y + Over + line * Line + 1, Letters, Ink.Line, isBold, isNumber ? TextAnchor.End : TextAnchor.Start);
            x += widths[column];
        }
        pages.Y += Height(cells);
    }
}
