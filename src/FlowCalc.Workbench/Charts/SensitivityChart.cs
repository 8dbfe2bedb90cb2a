using System.Collections.Immutable;
using System.Globalization;
using FlowCalc.Studies.Tolerance;
using FlowCalc.Workbench.Figures;
using FlowCalc.Workbench.Pictures;
using OxyPlot.Axes;

namespace FlowCalc.Workbench.Charts;

/// <summary>What each input explains of a figure's variance, the most on top, with two standard errors either way.</summary>
public static class SensitivityChart
{
    const int MostRows = 12;
    const double RowHeight = 20, Labels = 190, Values = 62, Below = 36, Bar = 11;

    /// <summary>The chart.</summary>
    /// <param name="result">A study of tolerances.</param>
    /// <param name="sensitivity">One of its sensitivities; one without inputs gives a chart that says why.</param>
    /// <param name="shown">How numbers are shown.</param>
    /// <param name="width">Width of the sheet, points, 400 or more; the height is that of the rows.</param>
    public static Picture Of(ToleranceResult result, FigureSensitivity sensitivity, Shown shown, double width)
    {
        ArgumentNullException.ThrowIfNull(result);
        ArgumentNullException.ThrowIfNull(sensitivity);
        ArgumentNullException.ThrowIfNull(shown);
        var rows = sensitivity.Inputs.Take(MostRows).ToArray();
        var others = sensitivity.Inputs.Length - rows.Length;
        var title = $"What moves {SensitivityWording.Named(sensitivity.Figure)}, {Case(result.Cases[sensitivity.Case], shown)}";
        if (rows.Length == 0) return new(width, RowHeight + 8, title, sensitivity.Statement, [new Words(new(4, RowHeight), LabelText.Fit(sensitivity.Statement, ChartFrame.Letters, width - 8), ChartFrame.Letters, Ink.Muted)]);

        var size = new ChartSize(width, rows.Length * RowHeight + Below + (others > 0 ? RowHeight : 0));
        var model = ChartFrame.New(2, Values, Labels);
        model.Axes.Add(ChartFrame.Axis(AxisPosition.Bottom, "part of the variance that it alone explains (%)", 100 * Math.Max(0.05, rows.Max(row => Math.Min(1, row.Index.Value + 2 * row.Index.StandardError)))));
        // Rows are places, not values.
        model.Axes.Add(new LinearAxis { Position = AxisPosition.Left, Minimum = 0, Maximum = 1, IsAxisVisible = false });
        if (others > 0) model.Padding = new(Labels, 2, Values, 2 + RowHeight);
        var marks = ChartFrame.Draw(model, size).ToBuilder();
        var (plot, axis) = (model.PlotArea, model.Axes[0]);
        for (var at = 0; at < rows.Length; at++) marks.AddRange(Row(rows[at], plot.Top + (at + 0.5) * plot.Height / rows.Length));
        if (others > 0) marks.Add(new Words(new(4, size.Height - 6), Others(others), ChartFrame.Letters, Ink.Muted));
        return new(width, size.Height, title, sensitivity.Statement, marks.ToImmutable());

        IEnumerable<Mark> Row(InputIndex input, double y)
        {
            // By chance an estimate may lie below nothing, or its error reach over all.
            double X(double part) => axis.Transform(100 * Math.Clamp(part, 0, 1));
            var (value, error) = (input.Index.Value, 2 * input.Index.StandardError);
            var (left, right, base_) = (axis.Transform(0), X(value), y + ChartFrame.Letters * (Lettering.Ascent - Lettering.Descent) / 2);
            yield return new Words(new(left - 6, base_), LabelText.Fit(input.Path, ChartFrame.Letters, left - 12), ChartFrame.Letters, Ink.Line) { Anchor = TextAnchor.End };
            ImmutableArray<Spot> bar = [new(left, y - Bar / 2), new(right, y - Bar / 2), new(right, y + Bar / 2), new(left, y + Bar / 2)];
            if (right > left) yield return new Patch(bar, Ink.Kind6, Ink.Line, 0.6);
            var (low, high) = (X(value - error), X(value + error));
            yield return new Stroke([new(low, y), new(high, y)], Ink.Line, 1);
            foreach (var x in (double[])[low, high]) yield return new Stroke([new(x, y - 3), new(x, y + 3)], Ink.Line, 1);
            yield return new Words(new(width - 2, base_), Shown.Percent(value), ChartFrame.Letters, Ink.Line) { Anchor = TextAnchor.End };
        }
    }

    static string Others(int others) => string.Create(CultureInfo.InvariantCulture, $"{others} inputs that explain less are left out");

    static string Case(CaseSpread one, Shown shown) => one.Attitude is { } attitude ? $"{shown.Of(one.Temperature)}, {attitude.Name}" : $"steady flow at {shown.Of(one.Temperature)}";
}
