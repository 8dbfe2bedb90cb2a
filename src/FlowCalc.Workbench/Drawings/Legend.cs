using System.Collections.Immutable;
using FlowCalc.Findings;
using FlowCalc.Layouts;
using FlowCalc.Workbench.Figures;
using FlowCalc.Workbench.Pictures;

namespace FlowCalc.Workbench.Drawings;

/// <summary>What the signs of a drawing mean: steps of colour, widths, symbols, marks of findings and axes, each only where it is on the drawing.</summary>
static class Legend
{
    const double Size = 8, Row = 15, Head = 16, Apart = 26, Sample = 30, SampleGap = 9, Edge = 4;
    const int MostBores = 6;

    static readonly string[] AxisNames = ["x", "y", "z"];

    /// <summary>Its blocks.</summary>
    /// <param name="layout">The layout.</param>
    /// <param name="plan">Where it lies.</param>
    /// <param name="values">What its colours tell.</param>
    /// <param name="widest">The widest bore, m.</param>
    /// <param name="found">The severities that are marked.</param>
    /// <param name="shown">How numbers are written.</param>
    public static IEnumerable<LegendBlock> Blocks(Layout layout, SheetPlan plan, DrawnValues values, double widest, IEnumerable<Severity> found, Shown shown)
    {
        if (values.RunScale is { } runs) yield return Scale(runs, isTube: true);
        if (values.NozzleScale is { } nozzles && nozzles != values.RunScale) yield return Scale(nozzles, isTube: false);
        yield return Bores(layout, widest, shown);
        yield return Rows("Symbols", [.. layout.Points.Select(point => PointSymbols.Of(layout, point)).Concat(plan.Runs.SelectMany(run => run.Fittings.Select(fitting => fitting.Symbol))).Distinct().Order()
            .Select(symbol => ((Func<Spot, IEnumerable<Mark>>)(at => Symbol(symbol, at)), PointSymbols.Word(symbol)))]);
        Severity[] severities = [.. found.Where(severity => severity != Severity.Pass).Distinct().OrderDescending()];
        if (severities.Length > 0) yield return Rows("Findings", [.. severities.Select(severity => ((Func<Spot, IEnumerable<Mark>>)(at => Badge.Of(severity, new(at.X + Sample / 2, at.Y))), Severities.Noun(severity)))]);
        if (!plan.Axes.IsEmpty) yield return new("Axes", 74, 66, at => Axes(plan.Axes, at));
    }

    static LegendBlock Scale(ColourScale scale, bool isTube)
    {
        (int Step, string Range)[] steps = scale.HasOneStep ? [(ColourScale.Steps / 2, scale.Ranges[0])] : [.. scale.Ranges.Select((range, step) => (step, range)).Reverse()];
        return Rows(scale.Title, [.. steps.Select(it => ((Func<Spot, IEnumerable<Mark>>)(at => isTube
            ? TubeMarks.Of([at, new(at.X + Sample, at.Y)], 5, it.Step, parts: false)
            : SymbolMarks.Of(DrawnSymbol.Nozzle, new(at.X + Sample / 2 - 5, at.Y), new(1, 0), ColourScale.InkOf(it.Step), 0.8)), it.Range))]);
    }

    static LegendBlock Bores(Layout layout, double widest, Shown shown)
    {
        double[] bores = [.. layout.Runs.Select(run => run.Tube.Bore.Meters).Distinct().Order()];
        if (bores.Length > MostBores) bores = [.. Enumerable.Range(0, MostBores).Select(at => bores[at * (bores.Length - 1) / (MostBores - 1)])];
        return Rows("Bore", [.. bores.Select(bore => ((Func<Spot, IEnumerable<Mark>>)(at => TubeMarks.Of([at, new(at.X + Sample, at.Y)], TubeMarks.Width(bore, widest), null, parts: false)),
            shown.Of(UnitsNet.Length.FromMeters(bore))))]);
    }

    static ImmutableArray<Mark> Symbol(DrawnSymbol symbol, Spot at)
    {
        var middle = new Spot(at.X + Sample / 2, at.Y);
        return symbol switch
        {
            DrawnSymbol.Bottle => SymbolMarks.Of(symbol, new(at.X + Sample, at.Y), new(1, 0), scale: 0.62),
            DrawnSymbol.HeldSupply => SymbolMarks.Of(symbol, new(at.X + Sample / 2 + 6, at.Y), new(1, 0), scale: 0.62),
            DrawnSymbol.Nozzle => SymbolMarks.Of(symbol, new(middle.X - 5, at.Y), new(1, 0), scale: 0.8),
            DrawnSymbol.Tee or DrawnSymbol.Bullhead or DrawnSymbol.Junction => SymbolMarks.Of(symbol, middle, new(1, 0)),
            _ => [new Stroke([at, new(at.X + Sample, at.Y)], Ink.Muted, 2.5), .. SymbolMarks.Of(symbol, middle, new(1, 0), scale: 0.75)],
        };
    }

    static IEnumerable<Mark> Axes(ImmutableArray<Spot> axes, Spot at)
    {
        const double arm = 24;
        var origin = new Spot(at.X + 37, at.Y + 34);
        foreach (var (axis, name) in axes.Zip(AxisNames))
        {
            var end = new Spot(origin.X + arm * axis.X, origin.Y + arm * axis.Y);
            yield return new Stroke([origin, end], Ink.Muted, 1.2);
            yield return new Words(new(origin.X + (arm + 7) * axis.X, origin.Y + (arm + 7) * axis.Y + 3), name, Size, Ink.Muted) { Anchor = TextAnchor.Middle };
        }
    }

    static LegendBlock Rows(string title, (Func<Spot, IEnumerable<Mark>> Sample, string Text)[] rows)
    {
        var width = Math.Max(Lettering.Width(title, Size, isBold: true), Edge + Sample + SampleGap + rows.Max(row => Lettering.Width(row.Text, Size))) + Apart;
        return new(title, width, Head + Row * rows.Length, at => rows.SelectMany((row, which) =>
        {
            var y = at.Y + Head + Row * (which + 0.5);
            return row.Sample(new(at.X + Edge, y)).Append(new Words(new(at.X + Edge + Sample + SampleGap, y + 0.36 * Size), row.Text, Size, Ink.Line));
        }));
    }
}

/// <summary>A part of a legend.</summary>
/// <param name="Title">Its title.</param>
/// <param name="Width">Its width, with the room to the next, points.</param>
/// <param name="Height">Its height with its title, points.</param>
/// <param name="Rows">Its marks under the title, from its upper left corner.</param>
sealed record LegendBlock(string Title, double Width, double Height, Func<Spot, IEnumerable<Mark>> Rows)
{
    /// <summary>Its marks.</summary>
    /// <param name="at">Its upper left corner.</param>
    public IEnumerable<Mark> Marks(Spot at) => Rows(at).Prepend(new Words(new(at.X, at.Y + 9), Title, 8, Ink.Line) { IsBold = true });
}
