using FlowCalc.Workbench.Pictures;

namespace FlowCalc.Workbench.Drawings;

/// <summary>A rectangle on the sheet, points.</summary>
readonly record struct Box(double Left, double Top, double Right, double Bottom)
{
    /// <summary>The box of nothing, which any other widens.</summary>
    public static Box Nothing { get; } = new(double.PositiveInfinity, double.PositiveInfinity, double.NegativeInfinity, double.NegativeInfinity);

    public double Width => Right - Left;

    public double Height => Bottom - Top;

    public Spot Middle => new((Left + Right) / 2, (Top + Bottom) / 2);

    /// <summary>A box from its upper left corner.</summary>
    public static Box At(double left, double top, double width, double height) => new(left, top, left + width, top + height);

    /// <summary>The box of two spots.</summary>
    public static Box Between(Spot one, Spot other) => new(Math.Min(one.X, other.X), Math.Min(one.Y, other.Y), Math.Max(one.X, other.X), Math.Max(one.Y, other.Y));

    /// <summary>The box of spots.</summary>
    public static Box Of(IEnumerable<Spot> spots) => spots.Aggregate(Nothing, (box, spot) => box.With(spot));

    /// <summary>Whether two boxes have an area in common.</summary>
    public bool Overlaps(in Box other) => Left < other.Right && other.Left < Right && Top < other.Bottom && other.Top < Bottom;

    public Box With(Spot spot) => new(Math.Min(Left, spot.X), Math.Min(Top, spot.Y), Math.Max(Right, spot.X), Math.Max(Bottom, spot.Y));

    public Box With(in Box other) => new(Math.Min(Left, other.Left), Math.Min(Top, other.Top), Math.Max(Right, other.Right), Math.Max(Bottom, other.Bottom));

    public Box Grown(double by) => new(Left - by, Top - by, Right + by, Bottom + by);

    /// <summary>The spot of the box that is nearest to another.</summary>
    public Spot Nearest(Spot spot) => new(Math.Clamp(spot.X, Left, Right), Math.Clamp(spot.Y, Top, Bottom));

    /// <summary>Whether a line from spot to spot has a part in the box, by the parameters at which it crosses the four sides (Liang and Barsky 1984, from memory).</summary>
    public bool IsCrossedBy(Spot from, Spot to)
    {
        var (low, high) = (0.0, 1.0);
        return Cut(from.X - to.X, from.X - Left, ref low, ref high) && Cut(to.X - from.X, Right - from.X, ref low, ref high)
            && Cut(from.Y - to.Y, from.Y - Top, ref low, ref high) && Cut(to.Y - from.Y, Bottom - from.Y, ref low, ref high);
    }

    static bool Cut(double step, double room, ref double low, ref double high)
    {
        if (step == 0) return room > 0;
        var at = room / step;
        if (step < 0) low = Math.Max(low, at);
        else high = Math.Min(high, at);
        return low < high;
    }
}
