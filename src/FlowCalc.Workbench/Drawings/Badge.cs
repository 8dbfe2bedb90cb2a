using FlowCalc.Findings;
using FlowCalc.Workbench.Pictures;

namespace FlowCalc.Workbench.Drawings;

/// <summary>The mark of a finding: a square with a cross for a failure, a triangle for a warning, a disc for a note, so that the shape tells it without the colour.</summary>
static class Badge
{
    /// <summary>Side of the square that holds it, points.</summary>
    public const double Size = 11;

    /// <summary>Its marks.</summary>
    /// <param name="severity">A note, a warning or a failure.</param>
    /// <param name="middle">Middle of the square that holds it.</param>
    public static Mark[] Of(Severity severity, Spot middle)
    {
        const double half = Size / 2, arm = 2.6;
        var (x, y) = (middle.X, middle.Y);
        return severity switch
        {
            Severity.Fail => [
                new Patch([new(x - half, y - half), new(x + half, y - half), new(x + half, y + half), new(x - half, y + half)], Ink.Fail, Ink.Sheet, 0.8),
                new Stroke([new(x - arm, y - arm), new(x + arm, y + arm)], Ink.Sheet, 1.6),
                new Stroke([new(x - arm, y + arm), new(x + arm, y - arm)], Ink.Sheet, 1.6)],
            Severity.Warn => [
                new Patch([new(x, y - half), new(x + half + 0.5, y + half), new(x - half - 0.5, y + half)], Ink.Warn, Ink.Sheet, 0.8),
                new Stroke([new(x, y - 1.8), new(x, y + 1.6)], Ink.Sheet, 1.4),
                new Disc(new(x, y + 3.7), 0.8, Ink.Sheet)],
            _ => [
                new Disc(middle, half, Ink.Note, Ink.Sheet, 0.8),
                new Disc(new(x, y - 2.8), 0.9, Ink.Sheet),
                new Stroke([new(x, y - 0.7), new(x, y + 3)], Ink.Sheet, 1.4)],
        };
    }
}
