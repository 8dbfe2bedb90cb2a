using FlowCalc.Discharge;
using FlowCalc.Workbench.Figures;
using FlowCalc.Workbench.Pictures;
using OxyPlot;
using OxyPlot.Axes;

namespace FlowCalc.Workbench.Charts;

/// <summary>Upright lines through a plot over time at the instants of a discharge that matter, with their names over it.</summary>
static class Milestones
{
    /// <summary>Rows of names, and the height of each, points.</summary>
    public const int Rows = 2, RowHeight = 12;

    /// <summary>The marks.</summary>
    /// <param name="one">The case.</param>
    /// <param name="shown">How numbers are shown.</param>
    /// <param name="time">The axis of time, seconds.</param>
    /// <param name="plot">Where the plot is: names stand over it.</param>
    /// <param name="width">Width of the sheet.</param>
    public static IEnumerable<Mark> Of(DischargeCase one, Shown shown, Axis time, OxyRect plot, double width)
    {
        List<(double Seconds, string Name)> instants = [];
        if (one.LiquidEnd is { } gas) instants.Add((gas.Seconds, $"dip tube draws gas {shown.Of((UnitsNet.Duration?)gas)}"));
        if (one.Time95 is { } out95) instants.Add((out95.Seconds, $"95 % out {shown.Of((UnitsNet.Duration?)out95)}"));
        var taken = new double[Rows];
        instants.Sort();
        for (var at = 0; at < instants.Count; at++)
        {
            var name = instants[at].Name;
            var (x, room) = (time.Transform(instants[at].Seconds), Lettering.Width(name, ChartFrame.Letters));
            // The earlier one's name ends at its line and the later one's starts there, so that no line goes through a name.
            var left = Math.Clamp(at == instants.Count - 1 ? x - 1 : x + 1 - room, 0, Math.Max(0, width - room));
            var row = Math.Max(0, Array.FindIndex(taken, end => end <= left));
            taken[row] = left + room + 6;
            var y = plot.Top - 4 - row * RowHeight;
            yield return new Stroke([new(x, y + 2), new(x, plot.Bottom)], Ink.Muted, 0.8) { Dashes = [4, 2] };
            yield return new Words(new(left, y), name, ChartFrame.Letters, Ink.Line);
        }
    }
}
