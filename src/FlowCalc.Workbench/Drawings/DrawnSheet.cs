using System.Collections.Immutable;
using FlowCalc.Findings;
using FlowCalc.Layouts;
using FlowCalc.Layouts.Editing;
using FlowCalc.Workbench.Figures;
using FlowCalc.Workbench.Pictures;

namespace FlowCalc.Workbench.Drawings;

/// <summary>Puts a planned layout on a sheet, with title, legend and cautions.</summary>
/// <param name="layout">The layout.</param>
/// <param name="plan">Where it lies.</param>
/// <param name="values">What its colours tell.</param>
/// <param name="lettered">What is written on it.</param>
/// <param name="shown">How numbers are written.</param>
sealed class DrawnSheet(Layout layout, SheetPlan plan, DrawnValues values, Lettered lettered, Shown shown)
{
    const double Margin = 22, LeastWidth = 640, TitleRoom = 44, LegendGap = 22, RowGap = 14, CautionSize = 7, CautionRow = 9.5;

    readonly double widest = layout.Runs.Max(run => run.Tube.Bore.Meters);

    /// <summary>The picture.</summary>
    /// <param name="view">How it is laid.</param>
    /// <param name="verdict">The worst that was found; null without a flow.</param>
    /// <param name="hasCautions">Whether the cautions stand under it.</param>
    public Picture Picture(DrawingView view, Severity? verdict, bool hasCautions)
    {
        var bounds = plan.Bounds();
        var inner = Math.Max(bounds.Width, LeastWidth - 2 * Margin);
        var (right, down) = (Margin - bounds.Left + (inner - bounds.Width) / 2, Margin + TitleRoom - bounds.Top);
        var marks = ImmutableArray.CreateBuilder<Mark>();
        var tubes = plan.RunOrder.Select(run => (Thing: Tube(run), plan.Runs[run].Label)).ToArray();
        var symbols = plan.PointOrder.Select(point => (Thing: Symbol(point), plan.Points[point].Label)).ToArray();
        foreach (var (thing, _) in tubes.Concat(symbols)) marks.Add(thing);
        foreach (var (thing, label) in tubes.Concat(symbols)) marks.Add(thing with { Marks = Label(label), IsRest = true });
        var drawn = marks.Select(mark => mark.Moved(right, down)).ToList();

        var title = layout.Title ?? "Layout";
        var about = About(view, verdict);
        drawn.Add(new Words(new(Margin, Margin + 12), DrawnText.Shortened(title, 13, true, inner), 13, Ink.Line) { IsBold = true });
        drawn.Add(new Words(new(Margin, Margin + 27), about, 9, Ink.Muted));
        var end = LegendMarks(drawn, Margin + TitleRoom + bounds.Height + LegendGap, inner);
        if (hasCautions) end = CautionMarks(drawn, end + RowGap, inner);
        var (width, height) = (inner + 2 * Margin, end + Margin);
        return new(width, height, title, $"{about}. {layout.Points.Length} points, {layout.Runs.Length} runs.{lettered.Summary()}", [new Patch([new(0, 0), new(width, 0), new(width, height), new(0, height)], Ink.Sheet), .. drawn]);
    }

    string About(DrawingView view, Severity? verdict)
    {
        var colour = values.RunScale is { } scale ? $", coloured by {scale.Title.ToLowerInvariant()}" : "";
        var judged = verdict is { } known ? $" · verdict: {Severities.Noun(known).ToLowerInvariant()}" : " · no results";
        return (view == DrawingView.Tree ? "Tree, lengths not to scale" : "Isometric view, to scale") + colour + judged;
    }

    Thing Tube(int run)
    {
        var planned = plan.Runs[run];
        var tube = TubeMarks.Of(planned.Way, TubeMarks.Width(layout.Runs[run].Tube.Bore.Meters, widest), values.StepOfRun(run), parts: !plan.Axes.IsEmpty);
        return new(EditPath.Of("runs", layout.Runs[run].Id), lettered.TipOfRun(run), [.. tube, .. planned.Fittings.SelectMany(fitting => SymbolMarks.Of(fitting.Symbol, fitting.At, fitting.Along))]);
    }

    Thing Symbol(int point)
    {
        var planned = plan.Points[point];
        var symbol = PointSymbols.Of(layout, layout.Points[point]);
        var fill = values.StepOfPoint(point) is { } step ? ColourScale.InkOf(step) : Ink.Sheet;
        ImmutableArray<Mark> marks = planned.Bar.IsEmpty ? SymbolMarks.Of(symbol, planned.At, planned.Along, fill, planned.Scale) : [new Stroke(planned.Bar, Ink.Line, 4), .. SymbolMarks.Of(symbol, planned.At, planned.Along)];
        return new(EditPath.Of("points", layout.Points[point].Id), lettered.TipOfPoint(point), marks);
    }

    static ImmutableArray<Mark> Label(PlacedLabel label)
    {
        var marks = ImmutableArray.CreateBuilder<Mark>();
        if (!label.Leader.IsEmpty) marks.Add(new Stroke(label.Leader, Ink.Muted, 0.7));
        var box = label.Box.Grown(1);
        if (label.IsOnTube) marks.Add(new Patch([new(box.Left, box.Top), new(box.Right, box.Top), new(box.Right, box.Bottom), new(box.Left, box.Bottom)], Ink.Sheet));
        marks.AddRange(label.Block.Marks(label.Box, label.IsToTheRight));
        return marks.DrainToImmutable();
    }

    double LegendMarks(List<Mark> drawn, double top, double width)
    {
        var severities = plan.Points.Select(point => point.Label.Block.Found).Concat(plan.Runs.Select(run => run.Label.Block.Found));
        drawn.Add(new Stroke([new(Margin, top - LegendGap / 2), new(Margin + width, top - LegendGap / 2)], Ink.Grid, 1));
        var (x, row) = (0.0, 0.0);
        foreach (var block in Legend.Blocks(layout, plan, values, widest, severities, shown))
        {
            if (x > 0 && x + block.Width > width)
            {
                top += row + RowGap;
                (x, row) = (0, 0);
            }
            drawn.AddRange(block.Marks(new(Margin + x, top)));
            x += block.Width;
            row = Math.Max(row, block.Height);
        }
        return top + row;
    }

    double CautionMarks(List<Mark> drawn, double top, double width)
    {
        foreach (var caution in Cautions.For(layout))
            foreach (var line in DrawnText.Lines(caution, CautionSize, Math.Min(width, 900)))
            {
                top += CautionRow;
                drawn.Add(new Words(new(Margin, top), line, CautionSize, Ink.Muted));
            }
        return top;
    }
}
