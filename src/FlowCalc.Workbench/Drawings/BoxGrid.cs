using FlowCalc.Workbench.Pictures;

namespace FlowCalc.Workbench.Drawings;

/// <summary>Boxes and lines on a sheet in square cells, so that only what is near is looked at.</summary>
sealed class BoxGrid
{
    const double Cell = 40;
    const int MostPieces = 4096;

    readonly Dictionary<long, Content> cells = [];

    /// <summary>Adds a box.</summary>
    public void Add(in Box box)
    {
        var span = Span.Of(box);
        for (var x = span.Left; x <= span.Right; x++)
            for (var y = span.Top; y <= span.Bottom; y++) At(x, y).Boxes.Add(box);
    }

    /// <summary>Adds a line in pieces, so that it counts by its length.</summary>
    /// <param name="from">Its start.</param>
    /// <param name="to">Its end.</param>
    /// <param name="half">Half its width, points.</param>
    public void Add(Spot from, Spot to, double half)
    {
        var pieces = (int)Math.Clamp(Math.Ceiling(WayLine.Distance(from, to) / Cell), 1, MostPieces);
        for (var piece = 0; piece < pieces; piece++)
        {
            var (start, end) = (WayLine.Between(from, to, (double)piece / pieces), WayLine.Between(from, to, (piece + 1.0) / pieces));
            var span = Span.Of(Box.Between(start, end).Grown(half));
            for (var x = span.Left; x <= span.Right; x++)
                for (var y = span.Top; y <= span.Bottom; y++) At(x, y).Lines.Add((start, end, half));
        }
    }

    /// <summary>Whether a box overlaps any.</summary>
    public bool IsTaken(in Box box)
    {
        var span = Span.Of(box);
        for (var x = span.Left; x <= span.Right; x++)
            for (var y = span.Top; y <= span.Bottom; y++)
                if (cells.TryGetValue(Key(x, y), out var there))
                    foreach (var other in there.Boxes)
                        if (box.Overlaps(other)) return true;
        return false;
    }

    /// <summary>How many pieces of lines pass a box, at most so many.</summary>
    public int Lines(in Box box, int most)
    {
        var (span, count) = (Span.Of(box), 0);
        for (var x = span.Left; x <= span.Right; x++)
            for (var y = span.Top; y <= span.Bottom; y++)
                if (cells.TryGetValue(Key(x, y), out var there))
                    foreach (var (from, to, half) in there.Lines)
                        if (box.Grown(half).IsCrossedBy(from, to) && ++count == most) return count;
        return count;
    }

    /// <summary>How many boxes a line passes, at most so many.</summary>
    public int Boxes(Spot from, Spot to, int most)
    {
        var (span, count) = (Span.Of(Box.Between(from, to)), 0);
        for (var x = span.Left; x <= span.Right; x++)
            for (var y = span.Top; y <= span.Bottom; y++)
                if (cells.TryGetValue(Key(x, y), out var there))
                    foreach (var box in there.Boxes)
                        if (box.IsCrossedBy(from, to) && ++count == most) return count;
        return count;
    }

    Content At(int x, int y)
    {
        var key = Key(x, y);
        if (!cells.TryGetValue(key, out var there)) cells[key] = there = new([], []);
        return there;
    }

    static long Key(int x, int y) => ((long)x << 32) ^ (uint)y;

    readonly record struct Content(List<Box> Boxes, List<(Spot From, Spot To, double Half)> Lines);

    // The cells of a box.
    readonly record struct Span(int Left, int Top, int Right, int Bottom)
    {
        public static Span Of(in Box box) => new((int)Math.Floor(box.Left / Cell), (int)Math.Floor(box.Top / Cell), (int)Math.Floor(box.Right / Cell), (int)Math.Floor(box.Bottom / Cell));
    }
}
