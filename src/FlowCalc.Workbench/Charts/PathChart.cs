using FlowCalc.Flows;
using FlowCalc.Layouts;
using FlowCalc.Quantities;
using FlowCalc.Workbench.Figures;
using FlowCalc.Workbench.Pictures;
using OxyPlot.Axes;
using UnitsNet;

namespace FlowCalc.Workbench.Charts;

/// <summary>Pressure from the supply to a nozzle, a row for each leg of the way: what is lost there, by kind, stands where the pressure has come to.</summary>
public static class PathChart
{
    const double RowHeight = 19, Labels = 150, Values = 66, KeyHeight = 16, Below = 34, Bar = 11;

    /// <summary>The chart.</summary>
    /// <param name="layout">The layout.</param>
    /// <param name="flow">Its flow.</param>
    /// <param name="nozzle">Index of the nozzle in the flow's list.</param>
    /// <param name="shown">How numbers are shown.</param>
    /// <param name="width">Width of the sheet, points, 400 or more; the height is that of the rows.</param>
    /// <exception cref="ArgumentException">The flow has not converged.</exception>
    public static Picture Of(Layout layout, FlowResult flow, int nozzle, Shown shown, double width)
    {
        ArgumentNullException.ThrowIfNull(layout);
        ArgumentNullException.ThrowIfNull(flow);
        ArgumentNullException.ThrowIfNull(shown);
        if (flow.Supply is not { } supply) throw new ArgumentException("The flow has not converged.", nameof(flow));
        var (told, legs, scale) = (flow.Nozzles[nozzle], PathLeg.Of(layout, flow, nozzle, shown), AxisScale.Of(QuantityKind.Pressure, shown));
        var kinds = DropKind.All.Where(kind => legs.Any(leg => kind.Of(leg.Drop) != 0)).ToArray();
        var (key, keyHeight) = Key(kinds, width);
        var size = new ChartSize(width, keyHeight + (legs.Count + 1) * RowHeight + Below);
        var model = ChartFrame.New(keyHeight, Values, Labels);
        model.Axes.Add(ChartFrame.Axis(AxisPosition.Bottom, $"gauge pressure ({scale.Unit})", 1.02 * scale.At(Highest(legs, supply.ReservoirPressure).Pascals - shown.Ambient.Pascals)));
        // Rows are places, not values.
        model.Axes.Add(new LinearAxis { Position = AxisPosition.Left, Minimum = 0, Maximum = 1, IsAxisVisible = false });
        var marks = ChartFrame.Draw(model, size).ToBuilder();
        marks.AddRange(key);
        var (plot, axis) = (model.PlotArea, model.Axes[0]);
        var row = plot.Height / (legs.Count + 1);
        double X(double absolute) => axis.Transform(Math.Max(0, scale.At(absolute - shown.Ambient.Pascals)));
        for (var at = 0; at < legs.Count; at++) marks.AddRange(Leg(legs[at], plot.Top + (at + 0.5) * row));
        var id = layout.Points[told.Point].Id;
        var y = plot.Bottom - row / 2;
        marks.AddRange(Ends(id, shown.Gauge(told.Pressure), y, true));
        marks.Add(new Patch([new(X(0), y - Bar / 2), new(X(told.Pressure.Pascals), y - Bar / 2), new(X(told.Pressure.Pascals), y + Bar / 2), new(X(0), y + Bar / 2)], Ink.Grid, Ink.Line, 0.8));
        return new(width, size.Height, $"Pressure from the supply to {id}", Description(told, supply, id, shown), marks.ToImmutable());

        IEnumerable<Mark> Leg(PathLeg leg, double y)
        {
            var pressure = leg.From.Pascals;
            foreach (var kind in kinds.Where(kind => kind.Of(leg.Drop) > 0))
            {
                var (right, left) = (X(pressure), X(pressure -= kind.Of(leg.Drop)));
                foreach (var mark in HatchedBar.Of(left, right, y - Bar / 2, y + Bar / 2, kind)) yield return mark;
            }
            foreach (var kind in kinds.Where(kind => kind.Of(leg.Drop) < 0))
            {
                var (left, right) = (X(pressure), X(pressure -= kind.Of(leg.Drop)));
                foreach (var mark in HatchedBar.Of(left, right, y + 1, y + Bar / 2 + 2, kind, isHollow: true)) yield return mark;
            }
            // Down to the next row, where the pressure goes on from.
            yield return new Stroke([new(X(pressure), y - Bar / 2), new(X(pressure), y + row - Bar / 2)], Ink.Line, 0.6);
            foreach (var mark in Ends(leg.Name, shown.Of(-leg.Drop.Total).Replace('-', '−'), y, false)) yield return mark;
        }

        IEnumerable<Mark> Ends(string name, string value, double y, bool isBold)
        {
            var letters = y + ChartFrame.Letters * (Lettering.Ascent - Lettering.Descent) / 2;
            yield return new Words(new(plot.Left - 6, letters), LabelText.Fit(name, ChartFrame.Letters, plot.Left - 18), ChartFrame.Letters, Ink.Line) { Anchor = TextAnchor.End, IsBold = isBold };
            yield return new Words(new(width - 2, letters), value, ChartFrame.Letters, Ink.Line) { Anchor = TextAnchor.End, IsBold = isBold };
        }
    }

    // Rows of the key, each as full as the sheet is wide.
    static (List<Mark> Marks, double Height) Key(DropKind[] kinds, double width)
    {
        const double box = 16, gap = 5, between = 12;
        List<Mark> marks = [];
        var (x, y) = (2.0, KeyHeight / 2 + 1);
        foreach (var kind in kinds)
        {
            var room = box + gap + Lettering.Width(kind.Name, ChartFrame.Letters);
            if (x + room > width) (x, y) = (2, y + KeyHeight);
            marks.AddRange(HatchedBar.Of(x, x + box, y - 4.5, y + 4.5, kind));
            marks.Add(new Words(new(x + box + gap, y + ChartFrame.Letters * (Lettering.Ascent - Lettering.Descent) / 2), kind.Name, ChartFrame.Letters, Ink.Line));
            x += room + between;
        }
        return (marks, y + KeyHeight / 2 + 4);
    }

    // A fall, or the straight leg of a tee, may lift the pressure over that of the supply.
    static Pressure Highest(List<PathLeg> legs, Pressure supply) => legs.Select(leg => leg.From).Concat(legs.Select(leg => leg.From - leg.Drop.Total)).Append(supply).Max();

    static string Description(NozzleFlow told, SupplyFlow supply, string id, Shown shown)
    {
        var parts = DropKind.All.Select(kind => (kind.Name, Drop: kind.Of(told.Losses))).Where(part => part.Drop != 0).OrderByDescending(part => Math.Abs(part.Drop))
            .Select(part => part.Drop > 0 ? $"{part.Name} {shown.Of(Pressure.FromPascals(part.Drop))}" : $"{part.Name} gives back {shown.Of(Pressure.FromPascals(-part.Drop))}");
        return $"Of {shown.Gauge(supply.ReservoirPressure)} at the supply {shown.Gauge(told.Pressure)} come to {id}; lost on the way: {string.Join(", ", parts)}.";
    }
}
