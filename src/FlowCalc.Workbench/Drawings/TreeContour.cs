namespace FlowCalc.Workbench.Drawings;

/// <summary>How far a part of a tree reaches up and down in each column, measured from its root; y is downwards.</summary>
/// <remarks>
/// Columns are kept with the deepest first, so that a parent is added at the end, and a shift is kept apart, so that a part is moved in one step. Of two parts side by side the shallower is written into the
/// deeper: each column of the shallower is looked at once and then gone, so that a whole tree takes time in proportion to its points, as the threads of Reingold and Tilford 1981 and of Buchheim, Jünger and
/// Leipert 2002 do (both from memory).
/// </remarks>
sealed class TreeContour
{
    readonly List<double> top = [], bottom = [];
    double shift;

    /// <summary>Highest and lowest it reaches.</summary>
    public double Top { get; private set; } = double.PositiveInfinity;

    /// <inheritdoc cref="Top"/>
    public double Bottom { get; private set; } = double.NegativeInfinity;

    /// <summary>How many columns it has.</summary>
    public int Columns => top.Count;

    /// <summary>Adds a column before all others.</summary>
    public void Add(double highest, double lowest)
    {
        top.Add(highest - shift);
        bottom.Add(lowest - shift);
        (Top, Bottom) = (Math.Min(Top, highest), Math.Max(Bottom, lowest));
    }

    /// <summary>Moves all of it.</summary>
    public void Move(double by)
    {
        shift += by;
        Top += by;
        Bottom += by;
    }

    /// <summary>How far below the root of this the root of another must be so that nothing of both meets.</summary>
    public double RoomTo(TreeContour below, double gap)
    {
        var most = 0.0;
        for (var back = 1; back <= Math.Min(Columns, below.Columns); back++)
            most = Math.Max(most, bottom[^back] + shift - (below.top[^back] + below.shift) + gap);
        return most;
    }

    /// <summary>Both together, the one above the other in every column.</summary>
    public static TreeContour Join(TreeContour above, TreeContour below)
    {
        var (whole, part) = above.Columns >= below.Columns ? (above, below) : (below, above);
        for (var back = 1; back <= part.Columns; back++)
        {
            whole.top[^back] = above.top[^back] + above.shift - whole.shift;
            whole.bottom[^back] = below.bottom[^back] + below.shift - whole.shift;
        }
        (whole.Top, whole.Bottom) = (Math.Min(above.Top, below.Top), Math.Max(above.Bottom, below.Bottom));
        return whole;
    }
}
