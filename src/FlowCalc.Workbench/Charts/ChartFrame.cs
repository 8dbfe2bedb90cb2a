using System.Collections.Immutable;
using System.Globalization;
using FlowCalc.Workbench.Pictures;
using OxyPlot;
using OxyPlot.Axes;

namespace FlowCalc.Workbench.Charts;

/// <summary>What all charts have in common: letters, axes, and how they become marks.</summary>
static class ChartFrame
{
    /// <summary>Height of letters, points.</summary>
    public const double Letters = 9;

    /// <summary>An empty chart.</summary>
    /// <param name="above">Room over the plot.</param>
    /// <param name="right">Room beside it.</param>
    /// <param name="left">Room left of its axis.</param>
    public static PlotModel New(double above, double right, double left = 2) => new()
    {
        Culture = CultureInfo.InvariantCulture,
        DefaultFont = "DejaVu Sans",
        DefaultFontSize = Letters,
        TextColor = ChartInk.Of(Ink.Line),
        PlotAreaBorderColor = ChartInk.Of(Ink.Muted),
        PlotAreaBorderThickness = new(1, 0, 0, 1),
        Padding = new(left, above, right, 2),
    };

    /// <summary>An axis from 0, with all of its data below its end.</summary>
    /// <param name="position">Its side.</param>
    /// <param name="title">What it measures, with the unit; empty for none.</param>
    /// <param name="most">The greatest value on it.</param>
    public static LinearAxis Axis(AxisPosition position, string title, double most) => new()
    {
        Position = position,
        Title = title,
        Minimum = 0,
        Maximum = most > 0 ? most : 1,
        MinimumPadding = 0,
        MaximumPadding = 0,
        TicklineColor = ChartInk.Of(Ink.Muted),
        AxislineColor = ChartInk.Of(Ink.Muted),
        MajorGridlineStyle = LineStyle.Solid,
        MajorGridlineColor = ChartInk.Of(Ink.Grid),
        MajorGridlineThickness = 0.6,
        MinorGridlineStyle = LineStyle.None,
        MinorTickSize = 0,
        TextColor = ChartInk.Of(Ink.Line),
        TitleColor = ChartInk.Of(Ink.Line),
        TitleFontSize = Letters,
        IntervalLength = position == AxisPosition.Bottom ? 60 : 36,
        AxisTitleDistance = 8,
    };

    /// <summary>Lays a chart out and draws it.</summary>
    /// <exception cref="InvalidOperationException">The plotting library could not draw it.</exception>
    public static ImmutableArray<Mark> Draw(PlotModel model, ChartSize size)
    {
        var context = new MarkContext();
        var plot = (IPlotModel)model;
        plot.Update(true);
        plot.Render(context, new OxyRect(0, 0, size.Width, size.Height));
        // The library writes an error on the plot instead of throwing it.
        return model.GetLastPlotException() is { } error ? throw new InvalidOperationException("A chart could not be drawn.", error) : context.Marks;
    }
}
