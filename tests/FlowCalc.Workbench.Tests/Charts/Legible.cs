using FlowCalc.Workbench.Pictures;

namespace FlowCalc.Workbench.Tests.Charts;

/// <summary>Looks over a picture as somebody who reads it does.</summary>
static class Legible
{
    // Widths of letters are rounded; half a point is not seen.
    const double Slack = 0.5;

    /// <summary>No two texts touch, and all marks lie on the sheet.</summary>
    public static void Check(Picture picture)
    {
        var boxes = picture.Marks.OfType<Words>().Select(words => (words.Text, Box: Box(words))).ToArray();
        foreach (var (text, box) in boxes)
            Assert.True(box.Left >= -Slack && box.Top >= -Slack && box.Right <= picture.Width + Slack && box.Bottom <= picture.Height + Slack, $"'{text}' is not on the sheet of '{picture.Title}': {box}.");
        for (var a = 0; a < boxes.Length; a++)
            for (var b = a + 1; b < boxes.Length; b++)
                Assert.False(Touch(boxes[a].Box, boxes[b].Box), $"'{boxes[a].Text}' and '{boxes[b].Text}' touch in '{picture.Title}'.");
        foreach (var spot in picture.Marks.SelectMany(Spots))
            Assert.True(spot.X >= -Slack && spot.Y >= -Slack && spot.X <= picture.Width + Slack && spot.Y <= picture.Height + Slack, $"{spot} is not on the sheet of '{picture.Title}'.");
    }

    static bool Touch((double Left, double Top, double Right, double Bottom) a, (double Left, double Top, double Right, double Bottom) b) =>
        a.Left < b.Right - Slack && b.Left < a.Right - Slack && a.Top < b.Bottom - Slack && b.Top < a.Bottom - Slack;

    static IEnumerable<Spot> Spots(Mark mark) => mark switch
    {
        Stroke stroke => stroke.Spots,
        Patch patch => patch.Spots,
        Disc disc => [new(disc.Centre.X - disc.Radius, disc.Centre.Y), new(disc.Centre.X + disc.Radius, disc.Centre.Y)],
        _ => [],
    };

    // Capitals and figures reach up to 0.73 of an em in this font, and what hangs down is short.
    static (double Left, double Top, double Right, double Bottom) Box(Words words)
    {
        var width = Lettering.Width(words.Text, words.Size, words.IsBold);
        var left = words.Anchor switch { TextAnchor.Start => 0, TextAnchor.Middle => -width / 2, _ => -width };
        var (up, down) = (-0.73 * words.Size, 0.2 * words.Size);
        if (words.Turn == 0) return (words.At.X + left, words.At.Y + up, words.At.X + left + width, words.At.Y + down);
        Assert.Equal(-90, words.Turn);
        return (words.At.X + up, words.At.Y - left - width, words.At.X + down, words.At.Y - left);
    }
}
