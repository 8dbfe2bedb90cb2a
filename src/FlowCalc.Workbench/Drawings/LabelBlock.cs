using System.Collections.Immutable;
using FlowCalc.Findings;
using FlowCalc.Workbench.Pictures;

namespace FlowCalc.Workbench.Drawings;

/// <summary>The lines of text beside a point or a run, with the mark of the worst that was found there.</summary>
/// <param name="Lines">The lines, from above.</param>
/// <param name="Found">The worst finding; a pass has no mark.</param>
sealed record LabelBlock(ImmutableArray<LabelLine> Lines, Severity Found)
{
    const double Spacing = 1.16, BadgeGap = 3;

    /// <summary>Width of the widest line, with the mark, points.</summary>
    public double Width { get; } = BadgeRoom(Found) + Lines.Max(line => line.Width);

    /// <summary>Height of all lines, points.</summary>
    public double Height { get; } = Math.Max(Lines.Sum(line => Spacing * line.Size), Found == Severity.Pass ? 0 : Badge.Size);

    /// <summary>Its marks.</summary>
    /// <param name="box">Where it stands; as wide and high as it is.</param>
    /// <param name="isToTheRight">Whether lines end at the right edge, as beside something on their right.</param>
    public IEnumerable<Mark> Marks(Box box, bool isToTheRight)
    {
        if (Found != Severity.Pass)
            foreach (var mark in Badge.Of(Found, new(isToTheRight ? box.Right - Badge.Size / 2 : box.Left + Badge.Size / 2, box.Top + Badge.Size / 2))) yield return mark;
        var (x, y) = (isToTheRight ? box.Right - BadgeRoom(Found) : box.Left + BadgeRoom(Found), box.Top);
        foreach (var line in Lines)
        {
            yield return new Words(new(x, y + Spacing * line.Size * Lettering.Ascent), line.Text, line.Size, line.Ink) { IsBold = line.IsBold, Anchor = isToTheRight ? TextAnchor.End : TextAnchor.Start };
            y += Spacing * line.Size;
        }
    }

    static double BadgeRoom(Severity found) => found == Severity.Pass ? 0 : Badge.Size + BadgeGap;
}

/// <summary>A line of a label.</summary>
/// <param name="Text">The text, short enough for its room.</param>
/// <param name="Size">Height of the em, points.</param>
/// <param name="Ink">Its colour.</param>
/// <param name="IsBold">Whether it is bold.</param>
readonly record struct LabelLine(string Text, double Size, Ink Ink, bool IsBold = false)
{
    /// <summary>Its width, points.</summary>
    public double Width => Lettering.Width(Text, Size, IsBold);
}
