using FlowCalc.Workbench.Pictures;
using FlowCalc.Workbench.Reports.Blocks;

namespace FlowCalc.Workbench.Reports.Paper;

/// <summary>Widths of a table's columns: each between its longest word and its longest line, as the whole has room (the automatic table layout of CSS 2.2, section 17.5.2.2).</summary>
static class ColumnWidths
{
    // A name as long as they come must not push everything else off the sheet: it is broken instead.
    const double MostOfWord = 0.2;

    /// <summary>The widths, padding included.</summary>
    /// <param name="table">The table.</param>
    /// <param name="size">Height of its letters.</param>
    /// <param name="padding">Room beside the text of a cell, both sides together.</param>
    /// <param name="width">Width that there is.</param>
    public static double[] Of(ReportTable table, double size, double padding, double width)
    {
        var (least, most) = (new double[table.Columns.Length], new double[table.Columns.Length]);
        for (var column = 0; column < least.Length; column++)
        {
            Take(table.Columns[column].Title, true, false);
            foreach (var row in table.Rows) Take(row[column], false, table.Columns[column].IsNumber);
            least[column] = Math.Min(least[column], MostOfWord * width) + padding;
            most[column] = Math.Max(most[column] + padding, least[column]);

            // A number stays with its unit as long as there is room.
            void Take(string text, bool isBold, bool isWhole)
            {
                var line = Lettering.Width(text, size, isBold);
                most[column] = Math.Max(most[column], line);
                least[column] = Math.Max(least[column], isWhole ? line : text.Split(' ').Max(word => Lettering.Width(word, size, isBold)));
            }
        }
        if (most.Sum() <= width) return Stretched(most, width);
        var (needed, wish) = (least.Sum(), most.Sum() - least.Sum());
        if (needed >= width) return [.. least.Select(one => one * width / needed)];
        return [.. least.Zip(most, (low, high) => low + (width - needed) * (high - low) / wish)];
    }

    // A little air between the columns; a table of a few short ones stays narrow, as a row is then read more easily.
    static double[] Stretched(double[] widths, double width)
    {
        const double air = 22;
        var more = Math.Min(air, (width - widths.Sum()) / widths.Length);
        return [.. widths.Select(one => one + more)];
    }
}
