using FlowCalc.Api.Startup;
using FlowCalc.Workbench.Reports.Blocks;
using Spectre.Console;

namespace FlowCalc.Cli.Writing;

/// <summary>Writes what a report says into a terminal.</summary>
static class BlockConsole
{
    /// <summary>Writes blocks; a picture is named by its title, as a terminal has no place for it.</summary>
    public static void Write(IAnsiConsole console, IEnumerable<ReportBlock> blocks)
    {
        foreach (var block in blocks)
        {
            Write(console, block);
            console.WriteLine();
        }
    }

    static void Write(IAnsiConsole console, ReportBlock block)
    {
        switch (block)
        {
            case ReportParagraph paragraph:
                console.Write(new Text(paragraph.Text));
                console.WriteLine();
                break;
            case ReportHeading heading:
                console.Write(new Text(heading.Text, DemoWords.Bold));
                console.WriteLine();
                break;
            case ReportList list:
                foreach (var item in list.Items)
                    console.Write(new Padder(new Text(item), new Padding(2, 0, 0, 0)));
                break;
            case ReportTable table:
                console.Write(new Text(table.Caption));
                console.WriteLine();
                console.Write(Drawn(table));
                break;
            case ReportVerdict verdict:
                console.Write(new Text(verdict.Text, DemoWords.Colour(verdict.Verdict)));
                console.WriteLine();
                break;
            case ReportFigure figure:
                console.Write(new Text($"(The report has a chart: {figure.Picture.Title})"));
                console.WriteLine();
                break;
        }
    }

    static Table Drawn(ReportTable table)
    {
        var drawn = new Table { Border = TableBorder.Simple };
        foreach (var column in table.Columns)
        {
            var header = new TableColumn(new Text(column.Title));
            drawn.AddColumn(column.IsNumber ? header.RightAligned() : header);
        }
        foreach (var row in table.Rows)
            drawn.AddRow(row.Select(cell => new Text(cell)));
        return drawn;
    }
}
