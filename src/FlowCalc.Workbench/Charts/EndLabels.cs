using FlowCalc.Workbench.Pictures;

namespace FlowCalc.Workbench.Charts;

/// <summary>Names in a column beside a plot, each at the height of its line as far as there is room, joined to it where it had to move.</summary>
static class EndLabels
{
    const double Height = 11.5, Gap = 4, Lead = 14, Sample = 16, Widest = 140;

    /// <summary>Width of a column that holds names, up to a bound.</summary>
    public static double Width(IEnumerable<string> names) =>
        Math.Min(Widest, Lead + Sample + Gap + 4 + names.Select(name => Lettering.Width(LabelText.Fit(name, ChartFrame.Letters, Widest), ChartFrame.Letters)).DefaultIfEmpty().Max());

    /// <summary>The marks of the labels.</summary>
    /// <param name="labels">End of each line, its name, its ink and dashes.</param>
    /// <param name="left">Where the column starts.</param>
    /// <param name="top">Its upper end.</param>
    /// <param name="bottom">Its lower end.</param>
    /// <param name="width">Its width.</param>
    public static IEnumerable<Mark> Of(IReadOnlyList<(Spot End, string Name, Ink Ink, double[] Dashes)> labels, double left, double top, double bottom, double width)
    {
        var order = Enumerable.Range(0, labels.Count).OrderBy(at => labels[at].End.Y).ThenBy(at => at).ToArray();
        var heights = Spread([.. order.Select(at => labels[at].End.Y)], top + Height / 2, bottom - Height / 2);
        for (var place = 0; place < order.Length; place++)
        {
            var (end, name, ink, dashes) = labels[order[place]];
            var y = heights[place];
            yield return new Stroke([end, new(left, end.Y), new(left + Lead, y)], Ink.Muted, 0.5) { Dashes = [1, 2] };
            yield return new Stroke([new(left + Lead, y), new(left + Lead + Sample, y)], ink, 1.5) { Dashes = [.. dashes] };
            var from = left + Lead + Sample + Gap;
            yield return new Words(new(from, y + ChartFrame.Letters * (Lettering.Ascent - Lettering.Descent) / 2), LabelText.Fit(name, ChartFrame.Letters, left + width - from), ChartFrame.Letters, Ink.Line);
        }
    }

    // Rising heights, each a label's height from the next, near to what was wanted: blocks of labels that touch lie about the mean of what they want (pool adjacent violators).
    static double[] Spread(double[] wanted, double top, double bottom)
    {
        var step = wanted.Length > 1 ? Math.Min(Height, (bottom - top) / (wanted.Length - 1)) : 0;
        List<(int Count, double Mean)> blocks = [];
        for (var at = 0; at < wanted.Length; at++)
        {
            var block = (Count: 1, Mean: wanted[at] - at * step);
            while (blocks.Count > 0 && blocks[^1].Mean > block.Mean)
            {
                var before = blocks[^1];
                blocks.RemoveAt(blocks.Count - 1);
                block = (before.Count + block.Count, (before.Count * before.Mean + block.Count * block.Mean) / (before.Count + block.Count));
            }
            blocks.Add(block);
        }
        var highest = bottom - (wanted.Length - 1) * step;
        var flat = blocks.SelectMany(block => Enumerable.Repeat(Math.Clamp(block.Mean, top, Math.Max(top, highest)), block.Count));
        return [.. flat.Select((mean, at) => mean + at * step)];
    }
}
