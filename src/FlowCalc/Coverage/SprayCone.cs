namespace FlowCalc.Coverage;

/// <summary>The full cone of a spray, straight from the nozzle.</summary>
/// <param name="Tip">Its tip, m in the layout's axes.</param>
/// <param name="Axis">Its axis, of length 1.</param>
/// <param name="HalfAngle">Half of its full angle, rad, over 0 and under π/2.</param>
readonly record struct SprayCone(Direction Tip, Direction Axis, double HalfAngle)
{
    // An arc of a degree's billionth: a point on the cone's edge is in it.
    const double Slack = 1e-9;

    /// <summary>Angle between the axis and the way to a place, rad, 0 to π; 0 at the tip itself.</summary>
    public double AngleTo(Direction place)
    {
        var arm = place - Tip;
        return arm.Length > 0 ? Axis.AngleTo(arm) : 0;
    }

    /// <summary>Whether a place is in the cone, its edge included.</summary>
    public bool Holds(Direction place) => AngleTo(place) <= HalfAngle + Slack;

    /// <summary>The part of a line that is in the cone.</summary>
    /// <param name="start">A place on the line, m.</param>
    /// <param name="along">Its direction, of length 1.</param>
    /// <returns>From where to where, m from <paramref name="start"/>; an end may be infinite; null where the line misses the cone.</returns>
    /// <remarks>
    /// A place w from the tip is in the cone where w·a ≥ |w| cos α; squared along a line that is A·s² + 2B·s + C ≥ 0 on the side of the axis.
    /// A cone is convex, so that it is one interval.
    /// </remarks>
    public (double From, double To)? Slice(Direction start, Direction along)
    {
        var arm = start - Tip;
        // From the point of the line that is nearest to the tip, so that few digits cancel.
        var foot = -arm.Dot(along);
        var nearest = arm + foot * along;
        return Slice(Axis.Dot(along), Axis.Dot(nearest), nearest.Dot(nearest), foot, Math.Cos(HalfAngle));
    }

    /// <summary>The same by numbers.</summary>
    /// <param name="rise">Part of the line's direction along the axis.</param>
    /// <param name="height">Height along the axis of the line's point nearest to the tip, m.</param>
    /// <param name="square">Square of that point's distance from the tip, m².</param>
    /// <param name="foot">Where on the line that point is, m.</param>
    /// <param name="cosine">Cosine of the half angle.</param>
    public static (double From, double To)? Slice(double rise, double height, double square, double foot, double cosine)
    {
        var a = (rise - cosine) * (rise + cosine);
        var b = height * rise;
        var c = height * height - cosine * cosine * square;
        var discriminant = b * b - a * c;
        if (a < 0)
        {
            // Both ends on one cone of the double one; the middle tells which.
            if (!(discriminant > 0) || height - b / a * rise <= 0) return null;
            var (one, other) = Roots(a, b, c, discriminant);
            return (foot + Math.Min(one, other), foot + Math.Max(one, other));
        }
        var (first, second) = Roots(a, b, c, Math.Max(0, discriminant));
        return rise > 0 ? (foot + Math.Max(first, second), double.PositiveInfinity) : (double.NegativeInfinity, foot + Math.Min(first, second));
    }

    // Without the difference of two near numbers; a root at infinity falls on the side that does not count.
    static (double One, double Other) Roots(double a, double b, double c, double discriminant)
    {
        var q = -(b + Math.CopySign(Math.Sqrt(discriminant), b));
        if (q == 0) return (0, 0);
        var one = c / q;
        return (one, a == 0 ? one : q / a);
    }
}
