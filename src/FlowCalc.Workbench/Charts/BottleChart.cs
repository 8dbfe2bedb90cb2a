using FlowCalc.Discharge;
using FlowCalc.Quantities;
using FlowCalc.Workbench.Figures;
using FlowCalc.Workbench.Pictures;
using OxyPlot;
using OxyPlot.Axes;
using OxyPlot.Series;

namespace FlowCalc.Workbench.Charts;

/// <summary>Pressure in the bottle, and what agent is left in it, through the time of a discharge: one plot over the other, with one axis of time.</summary>
public static class BottleChart
{
    const double Above = Milestones.Rows * Milestones.RowHeight + 6, Grain = 0.25, Split = 0.48;

    /// <summary>The chart.</summary>
    /// <param name="one">A case of a discharge that has one.</param>
    /// <param name="shown">How numbers are shown.</param>
    /// <param name="size">Size of the sheet.</param>
    /// <exception cref="ArgumentException">The case has no discharge.</exception>
    public static Picture Of(DischargeCase one, Shown shown, ChartSize size)
    {
        ArgumentNullException.ThrowIfNull(one);
        ArgumentNullException.ThrowIfNull(shown);
        var model = Model(one, shown, size);
        var marks = ChartFrame.Draw(model, size).ToBuilder();
        var plot = model.PlotArea;
        marks.AddRange(Milestones.Of(one, shown, model.Axes[0], plot, size.Width));
        var start = one.StartPressure is { } pressure ? $"Pressure in the bottle {shown.Gauge(pressure)} before the valve opens, {shown.Gauge(one.PeakPressure)} at most. " : "";
        var description = $"{start}The dip tube draws gas from {shown.Of(one.LiquidEnd)}; {shown.Of(one.LeftInBottle)} of agent stays in the bottle and {shown.Of(one.LeftInTubes)} in the tubes.";
        return new(size.Width, size.Height, $"Bottle through time, {CaseWords.Of(one, shown)}", description, marks.ToImmutable());
    }

    /// <summary>The plot: pressure, then agent.</summary>
    internal static PlotModel Model(DischargeCase one, Shown shown, ChartSize size)
    {
        var series = one.Series ?? throw new ArgumentException("The case has no discharge.", nameof(one));
        var (pressure, mass) = (AxisScale.Of(QuantityKind.Pressure, shown), AxisScale.Of(QuantityKind.Mass, shown));
        var model = ChartFrame.New(Above, 16);
        model.Axes.Add(ChartFrame.Axis(AxisPosition.Bottom, "time since the signal (s)", one.End.Seconds));
        Add("pressure", $"pressure ({pressure.Unit})", 1 - Split, 1, Ink.Kind1, [.. series.BottlePressure.Select(absolute => Math.Max(0, pressure.At(absolute.Pascals - shown.Ambient.Pascals)))]);
        Add("agent", $"agent ({mass.Unit})", 0, Split, Ink.Kind2, [.. series.LiquidInBottle.Select(left => mass.At(left.Kilograms))]);
        return model;

        void Add(string key, string title, double from, double to, Ink ink, double[] values)
        {
            var most = 1.05 * values.Max();
            var axis = ChartFrame.Axis(AxisPosition.Left, title, most);
            (axis.Key, axis.StartPosition, axis.EndPosition, axis.IntervalLength) = (key, from, to, 26);
            model.Axes.Add(axis);
            var line = new LineSeries { Title = key, YAxisKey = key, Color = ChartInk.Of(ink), StrokeThickness = 1.5, LineStyle = LineStyle.Solid, MinimumSegmentLength = 0 };
            line.Points.AddRange(LineThinning.Of([.. values.Select((value, at) => new DataPoint(series.Time[at].Seconds, value))], (int)size.Width, Grain * most / size.Height));
            model.Series.Add(line);
        }
    }
}
