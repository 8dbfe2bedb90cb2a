using System.Collections.Immutable;
using FlowCalc.Workbench.Pictures;

namespace FlowCalc.Workbench.Drawings;

/// <summary>A line from spot to spot on the sheet.</summary>
static class WayLine
{
    const int ArcPieces = 6;

    /// <summary>Distance between spots.</summary>
    public static double Distance(Spot one, Spot other) => Math.Sqrt((one.X - other.X) * (one.X - other.X) + (one.Y - other.Y) * (one.Y - other.Y));

    /// <summary>Length of a line.</summary>
    public static double Length(ImmutableArray<Spot> way)
    {
        var sum = 0.0;
        for (var at = 1; at < way.Length; at++) sum += Distance(way[at - 1], way[at]);
        return sum;
    }

    /// <summary>The direction from a spot to another as a spot at distance 1 from the origin; a usual one where both are one.</summary>
    public static Spot Direction(Spot from, Spot to, Spot usual)
    {
        var length = Distance(from, to);
        return length < 1e-9 ? usual : new((to.X - from.X) / length, (to.Y - from.Y) / length);
    }

    /// <summary>The spot between two at a part of the way.</summary>
    public static Spot Between(Spot from, Spot to, double part) => new(from.X + part * (to.X - from.X), from.Y + part * (to.Y - from.Y));

    /// <summary>The line with its corners rounded.</summary>
    /// <param name="way">The line.</param>
    /// <param name="radius">How far from a corner the line leaves its straight, points; less where a straight is short.</param>
    public static ImmutableArray<Spot> Rounded(ImmutableArray<Spot> way, double radius)
    {
        if (way.Length < 3) return way;
        var spots = ImmutableArray.CreateBuilder<Spot>(2 + (way.Length - 2) * (ArcPieces + 1));
        spots.Add(way[0]);
        for (var at = 1; at < way.Length - 1; at++)
        {
            var corner = way[at];
            var (before, behind) = (Distance(way[at - 1], corner), Distance(corner, way[at + 1]));
            var room = Math.Min(radius, Math.Min(before, behind) / 2);
            if (room < 0.5)
            {
                spots.Add(corner);
                continue;
            }
            var (from, to) = (Between(corner, way[at - 1], room / before), Between(corner, way[at + 1], room / behind));
            // A quadratic curve touches both straights where it meets them.
            for (var piece = 0; piece <= ArcPieces; piece++)
            {
                var part = (double)piece / ArcPieces;
                spots.Add(Between(Between(from, corner, part), Between(corner, to, part), part));
            }
        }
        spots.Add(way[^1]);
        return spots.DrainToImmutable();
    }

    /// <summary>The line without a length at either end; empty where nothing is left.</summary>
    public static ImmutableArray<Spot> Trimmed(ImmutableArray<Spot> way, double by)
    {
        var (from, to) = (by, Length(way) - by);
        if (to - from < 1) return [];
        var spots = ImmutableArray.CreateBuilder<Spot>();
        var gone = 0.0;
        for (var at = 1; at < way.Length; at++)
        {
            var piece = Distance(way[at - 1], way[at]);
            if (piece > 0 && gone + piece > from && gone < to)
            {
                if (spots.Count == 0) spots.Add(Between(way[at - 1], way[at], Math.Max(0, (from - gone) / piece)));
                spots.Add(Between(way[at - 1], way[at], Math.Min(1, (to - gone) / piece)));
            }
            gone += piece;
        }
        return spots.Count < 2 ? [] : spots.DrainToImmutable();
    }
}
