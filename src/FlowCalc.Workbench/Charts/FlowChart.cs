using System.Globalization;
using FlowCalc.Discharge;
using FlowCalc.Layouts;
using FlowCalc.Quantities;
using FlowCalc.Workbench.Figures;
using FlowCalc.Workbench.Pictures;
using OxyPlot;
using OxyPlot.Axes;
using OxyPlot.Series;

namespace FlowCalc.Workbench.Charts;

/// <summary>Flow out of every nozzle through the time of a discharge.</summary>
public static class FlowChart
{
    // Points of all lines together, so that a chart of many nozzles stays small.
    const int MostPoints = 24_000;
    const double Grain = 0.25, Above = Milestones.Rows * Milestones.RowHeight + 18;

    /// <summary>The chart. With more nozzles than can be told apart, those furthest from their wanted share are named and the others thin.</summary>
    /// <param name="layout">The layout.</param>
    /// <param name="one">A case of its discharge that has one.</param>
    /// <param name="shown">How numbers are shown.</param>
    /// <param name="size">Size of the sheet.</param>
    /// <exception cref="ArgumentException">The case has no discharge.</exception>
    public static Picture Of(Layout layout, DischargeCase one, Shown shown, ChartSize size)
    {
        ArgumentNullException.ThrowIfNull(layout);
        ArgumentNullException.ThrowIfNull(one);
        ArgumentNullException.ThrowIfNull(shown);
        var named = Named(one);
        var model = Model(layout, one, shown, size, named);
        var marks = ChartFrame.Draw(model, size).ToBuilder();
        var (plot, scale) = (model.PlotArea, AxisScale.Of(QuantityKind.MassFlow, shown));
        marks.AddRange(Milestones.Of(one, shown, model.Axes[0], plot, size.Width));
        List<(Spot, string, Ink, double[])> labels = [];
        for (var at = 0; at < named.Length; at++)
        {
            var (nozzle, line, ink) = (one.Nozzles[named[at]], Whole(one, named[at], scale), LineLook.Of(at));
            if (nozzle.Arrival is { } arrival) marks.Add(new Disc(Spot(After(line, arrival.Seconds)), 2.6, Ink.Sheet, ink));
            if (nozzle.LiquidEnd is { } gas) marks.Add(Square(Spot(Before(line, gas.Seconds)), ink));
            // Where the lines are still apart: at their very ends all of them lie at nothing.
            var apart = Before(line, Math.Min((one.LiquidEnd ?? one.End).Seconds, (nozzle.LiquidEnd ?? one.End).Seconds));
            labels.Add((Spot(apart), layout.Points[nozzle.Point].Id, ink, LineLook.Dashes(at)));
        }
        marks.AddRange(EndLabels.Of(labels, plot.Right + 2, plot.Top, plot.Bottom, size.Width - plot.Right - 2));
        marks.AddRange(Key(plot.Left, one.Nozzles.Length - named.Length));
        return new(size.Width, size.Height, $"Flow by nozzle, {CaseWords.Of(one, shown)}", Description(layout, one, shown, named), marks.ToImmutable());

        Spot Spot(DataPoint point) => new(model.Axes[0].Transform(point.X), model.Axes[1].Transform(point.Y));
    }

    /// <summary>The plot: the lines of nozzles without a name first, then those named, in the order of <paramref name="named"/>.</summary>
    internal static PlotModel Model(Layout layout, DischargeCase one, Shown shown, ChartSize size, int[] named)
    {
        var series = one.Series ?? throw new ArgumentException("The case has no discharge.", nameof(one));
        var scale = AxisScale.Of(QuantityKind.MassFlow, shown);
        var model = ChartFrame.New(Above, 4 + EndLabels.Width(named.Select(at => layout.Points[one.Nozzles[at].Point].Id)));
        var most = series.Nozzles.SelectMany(nozzle => nozzle.MassFlow).Max(flow => flow.KilogramsPerSecond);
        model.Axes.Add(ChartFrame.Axis(AxisPosition.Bottom, "time since the signal (s)", one.End.Seconds));
        model.Axes.Add(ChartFrame.Axis(AxisPosition.Left, $"flow ({scale.Unit})", 1.05 * scale.At(most)));
        var columns = Math.Clamp(MostPoints / 4 / series.Nozzles.Length, 8, (int)size.Width);
        for (var at = 0; at < series.Nozzles.Length; at++)
            if (!named.Contains(at)) model.Series.Add(Line(at, Ink.Muted, 0.4, []));
        for (var at = 0; at < named.Length; at++) model.Series.Add(Line(named[at], LineLook.Of(at), 1.4, LineLook.Dashes(at)));
        return model;

        LineSeries Line(int nozzle, Ink ink, double width, double[] dashes)
        {
            var line = new LineSeries
            {
                Title = layout.Points[series.Nozzles[nozzle].Point].Id,
                Color = ChartInk.Of(ink),
                StrokeThickness = width,
                Dashes = dashes.Length == 0 ? null : [.. dashes.Select(length => length / width)],
                LineStyle = LineStyle.Solid,
                MinimumSegmentLength = 0,
            };
            line.Points.AddRange(LineThinning.Of(Whole(one, nozzle, scale), columns, Grain * scale.At(most) / size.Height));
            return line;
        }
    }

    /// <summary>Indices of the nozzles that get a name: all, or those furthest from their wanted share.</summary>
    internal static int[] Named(DischargeCase one)
    {
        var all = Enumerable.Range(0, one.Nozzles.Length);
        return one.Nozzles.Length <= LineLook.Count ? [.. all] : [.. all.OrderByDescending(at => Math.Abs(one.Nozzles[at].Deviation ?? 0)).ThenBy(at => at).Take(LineLook.Count)];
    }

    static DataPoint[] Whole(DischargeCase one, int nozzle, AxisScale scale) =>
        [.. one.Series!.Nozzles[nozzle].MassFlow.Select((flow, at) => new DataPoint(one.Series.Time[at].Seconds, scale.At(flow.KilogramsPerSecond)))];

    // A jump stands as two points of one instant.
    static DataPoint Before(DataPoint[] line, double seconds) => Array.Find(line, point => point.X >= seconds) is { X: > 0 } known ? known : line[^1];

    static DataPoint After(DataPoint[] line, double seconds) => Array.FindLast(line, point => point.X <= seconds);

    static Patch Square(Spot at, Ink ink) => new([new(at.X - 2.2, at.Y - 2.2), new(at.X + 2.2, at.Y - 2.2), new(at.X + 2.2, at.Y + 2.2), new(at.X - 2.2, at.Y + 2.2)], ink);

    static IEnumerable<Mark> Key(double left, int others)
    {
        const double y = 10, from = 8;
        yield return new Disc(new(left + 3, y - 3), 2.6, Ink.Sheet, Ink.Line);
        yield return new Words(new(left + from, y), "liquid arrives", ChartFrame.Letters, Ink.Muted);
        var next = left + from + Lettering.Width("liquid arrives", ChartFrame.Letters) + 14;
        yield return Square(new(next, y - 3), Ink.Line);
        yield return new Words(new(next + from, y), "gas follows", ChartFrame.Letters, Ink.Muted);
        next += from + Lettering.Width("gas follows", ChartFrame.Letters) + 14;
        if (others == 0) yield break;
        yield return new Stroke([new(next, y - 3), new(next + 16, y - 3)], Ink.Muted, 0.4);
        yield return new Words(new(next + 20, y), string.Create(CultureInfo.InvariantCulture, $"{others} others, nearer to their share"), ChartFrame.Letters, Ink.Muted);
    }

    static string Description(Layout layout, DischargeCase one, Shown shown, int[] named)
    {
        var arrivals = one.Nozzles.Where(nozzle => nozzle.Arrival is not null).Select(nozzle => nozzle.Arrival!.Value).Order().ToArray();
        var first = arrivals.Length == 0 ? "No liquid arrives." : $"Liquid arrives from {shown.Of(arrivals[0])} to {shown.Of(arrivals[^1])}.";
        var starved = one.Nozzles.Where(nozzle => nozzle.Deviation is not null).MinBy(nozzle => nozzle.Deviation);
        var worst = starved is null ? "" : $" {layout.Points[starved.Point].Id} is furthest below its wanted share, {Shown.Deviation(starved.Deviation)}.";
        var part = named.Length == one.Nozzles.Length ? "" : string.Create(CultureInfo.InvariantCulture, $" {named.Length} of {one.Nozzles.Length} nozzles are named, those furthest from their wanted share.");
        return $"{first} Greatest flow {shown.Of(one.PeakMassFlow)} of all nozzles together; 95 % out at {shown.Of(one.Time95)}; over at {shown.Of(one.End)}.{worst}{part}";
    }
}
