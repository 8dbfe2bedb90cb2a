using FlowCalc.Workbench.Pictures;

namespace FlowCalc.Workbench.Drawings;

/// <summary>Boxes and lines on a sheet in square cells, so that only what is near is looked at.</summary>
sealed class BoxGrid
{
    const double Cell = 48;
    const int MostCells = 4096;

    readonly Dictionary<(int, int), List<Box>> boxes = [];
    readonly Dictionary<(int, int), List<(Spot From, Spot To)>> lines = [];

    /// <summary>Adds a box.</summary>
    public void Add(Box box)
    {
        foreach (var cell in Cells(box)) At(boxes, cell).Add(box);
    }

    /// <summary>Adds a line.</summary>
    public void Add(Spot from, Spot to)
    {
        var pieces = (int)Math.Clamp(Math.Ceiling(WayLine.Distance(from, to) / Cell), 1, MostCells);
        for (var piece = 0; piece < pieces; piece++)
        {
            var (start, end) = (WayLine.Between(from, to, (double)piece / pieces), WayLine.Between(from, to, (piece + 1.0) / pieces));
            // Every cell keeps the pieces that pass it, so that a line counts by its length.
            foreach (var cell in Cells(Box.Of([start, end]))) At(lines, cell).Add((start, end));
        }
    }

    /// <summary>Whether a box overlaps any.</summary>
    public bool IsTaken(Box box)
    {
        foreach (var cell in Cells(box))
            if (boxes.TryGetValue(cell, out var there))
                foreach (var other in there)
                    if (box.Overlaps(other)) return true;
        return false;
    }

    /// <summary>How many pieces of lines pass a box, at most so many.</summary>
    public int Lines(Box box, int most)
    {
        var count = 0;
        foreach (var cell in Cells(box))
            if (lines.TryGetValue(cell, out var there))
                foreach (var (from, to) in there)
                    if (box.IsCrossedBy(from, to) && ++count == most) return count;
        return count;
    }

    /// <summary>How many boxes a line passes, at most so many.</summary>
    public int Boxes(Spot from, Spot to, int most)
    {
        var count = 0;
        foreach (var cell in Cells(Box.Of([from, to])))
            if (boxes.TryGetValue(cell, out var there))
                foreach (var box in there)
                    if (box.IsCrossedBy(from, to) && ++count == most) return count;
        return count;
    }

    static IEnumerable<(int, int)> Cells(Box box)
    {
        var (left, top, right, bottom) = ((int)Math.Floor(box.Left / Cell), (int)Math.Floor(box.Top / Cell), (int)Math.Floor(box.Right / Cell), (int)Math.Floor(box.Bottom / Cell));
        for (var x = left; x <= right; x++)
            for (var y = top; y <= bottom; y++) yield return (x, y);
    }

    static List<T> At<T>(Dictionary<(int, int), List<T>> cells, (int, int) cell)
    {
        if (!cells.TryGetValue(cell, out var there)) cells[cell] = there = [];
        return there;
    }
}
