using System.Collections.Immutable;

namespace FlowCalc.Layouts.Coverage;

/// <summary>The plane of a surface, and its corners in it.</summary>
sealed class SurfacePlane
{
    /// <summary>Puts a plane through corners.</summary>
    /// <param name="corners">Three corners or more.</param>
    public SurfacePlane(ImmutableArray<Place> corners)
    {
        Direction[] places = [.. corners.Select(Of)];
        Origin = places[0];
        // Newell's sum is twice the area times the normal, whatever the shape, and the plane of best fit where corners are not quite in one.
        Direction sum = default;
        for (var i = 0; i < places.Length; i++)
        {
            var (one, next) = (places[i] - Origin, places[(i + 1) % places.Length] - Origin);
            sum += one.Cross(next);
            Girth += (next - one).Length;
        }
        Area = sum.Length / 2;
        if (Area == 0) return;
        Normal = sum.ToUnit();
        var edge = places.First(place => (place - Origin).Cross(Normal).Length > 0) - Origin;
        Across = Normal.Cross(edge).ToUnit();
        Along = Across.Cross(Normal);
        Corners = [.. places.Select(place => place - Origin).Select(arm => (arm.Dot(Along), arm.Dot(Across)))];
        Defect = places.Max(place => Math.Abs((place - Origin).Dot(Normal)));
    }

    /// <summary>Its first corner, m.</summary>
    public Direction Origin { get; }

    /// <summary>Unit vectors in the plane and square to it.</summary>
    public Direction Along { get; }

    /// <summary>In the plane, square to <see cref="Along"/>.</summary>
    public Direction Across { get; }

    /// <summary>Square to the plane, by the right hand round the corners.</summary>
    public Direction Normal { get; }

    /// <summary>Area, m².</summary>
    public double Area { get; }

    /// <summary>Length of the edge round it, m.</summary>
    public double Girth { get; }

    /// <summary>How far a corner is off the plane at most, m.</summary>
    public double Defect { get; }

    /// <summary>The corners in the plane, m along <see cref="Along"/> and <see cref="Across"/> from the origin.</summary>
    public ImmutableArray<(double X, double Y)> Corners { get; } = [];

    /// <summary>Whether two edges that do not follow each other meet, so that the edge runs over itself.</summary>
    public bool CrossesItself()
    {
        var count = Corners.Length;
        for (var i = 0; i < count; i++)
            for (var j = i + 1; j < count; j++)
            {
                var isNext = j == i + 1 || (i == 0 && j == count - 1);
                if (!isNext && Meet(Corners[i], Corners[(i + 1) % count], Corners[j], Corners[(j + 1) % count])) return true;
            }
        return false;
    }

    /// <summary>Whether a place of the plane is on the surface, by how often a line from it crosses the edge.</summary>
    public bool Holds(double x, double y)
    {
        var isIn = false;
        for (var i = 0; i < Corners.Length; i++)
        {
            var (one, next) = (Corners[i], Corners[(i + 1) % Corners.Length]);
            if (one.Y <= y != next.Y <= y && x < one.X + (y - one.Y) / (next.Y - one.Y) * (next.X - one.X)) isIn = !isIn;
        }
        return isIn;
    }

    /// <summary>A place as an arrow from the origin of the layout's axes, m.</summary>
    public static Direction Of(Place place) => new(place.X.Meters, place.Y.Meters, place.Z.Meters);

    static bool Meet((double X, double Y) a, (double X, double Y) b, (double X, double Y) c, (double X, double Y) d)
    {
        var (first, second) = (Side(a, b, c) * Side(a, b, d), Side(c, d, a) * Side(c, d, b));
        if (first > 0 || second > 0) return false;
        // All in one line: they meet where their boxes do.
        return Math.Max(Math.Min(a.X, b.X), Math.Min(c.X, d.X)) <= Math.Min(Math.Max(a.X, b.X), Math.Max(c.X, d.X))
            && Math.Max(Math.Min(a.Y, b.Y), Math.Min(c.Y, d.Y)) <= Math.Min(Math.Max(a.Y, b.Y), Math.Max(c.Y, d.Y));
    }

    static double Side((double X, double Y) a, (double X, double Y) b, (double X, double Y) c) => (b.X - a.X) * (c.Y - a.Y) - (b.Y - a.Y) * (c.X - a.X);
}
