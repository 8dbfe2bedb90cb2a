namespace FlowCalc.Bottles;

/// <summary>Segments of the unit disc left of a line x = const, as means while the line sweeps from one place to another.</summary>
/// <remarks>
/// With x = −cos θ a segment has the area A = θ − sin θ cos θ and the arc 2θ; their integrals over x are xA + ⅔ sin³θ and 2(xθ + sin θ) (plane geometry).
/// A tilted plane cuts a cylinder in such a sweep: what is below it at each height along the axis is a segment.
/// Over a short sweep the difference of two integrals would lose its digits. There the mean of both ends is taken, and what that lacks is added in a form that is
/// of the third order in the difference Δ of the angles, term by term: with m = (x₁ + x₂)/2 and t = tan(Δ/2) = (x₂ − x₁)/(sin θ₁ + sin θ₂) it is
/// m(Δ − sin Δ − 4/3 m²t³) for the area and −4m(t − arctan t) for the arc (derived here).
/// </remarks>
internal readonly struct SegmentSpan
{
    const double Short = 0.1;
    readonly double from, to, lowAngle, highAngle, lowSine, highSine, low, high;

    /// <summary>The sweep from one line to another.</summary>
    /// <param name="from">Place of the first line, finite; beyond ±1 it misses the disc.</param>
    /// <param name="to">Place of the last line, over <paramref name="from"/>.</param>
    public SegmentSpan(double from, double to)
    {
        (this.from, this.to) = (from, to);
        (low, high) = (Math.Clamp(from, -1, 1), Math.Clamp(to, -1, 1));
        (lowAngle, highAngle) = (Math.Acos(-low), Math.Acos(-high));
        (lowSine, highSine) = (Math.Sqrt((1 - low) * (1 + low)), Math.Sqrt((1 - high) * (1 + high)));
    }

    double Width => to - from;
    double LowArea => lowAngle + low * lowSine;
    double HighArea => highAngle + high * highSine;

    // Lines beyond the disc have all of it to their left.
    double Beyond => Math.Max(to, 1) - Math.Max(from, 1);

    bool IsShort => high - low < Short;

    /// <summary>Area of one segment.</summary>
    /// <param name="at">Place of its line.</param>
    public static double AreaAt(double at)
    {
        at = Math.Clamp(at, -1, 1);
        return Math.Acos(-at) + at * Math.Sqrt((1 - at) * (1 + at));
    }

    /// <summary>Length of one line inside the disc.</summary>
    /// <param name="at">Place of the line.</param>
    public static double ChordAt(double at) => 2 * Math.Sqrt(Math.Max(0, (1 - at) * (1 + at)));

    /// <summary>Length of the arc left of one line.</summary>
    /// <param name="at">Place of the line.</param>
    public static double ArcAt(double at) => 2 * Math.Acos(-Math.Clamp(at, -1, 1));

    /// <summary>Mean area, 0 to π.</summary>
    public double Area()
    {
        var inside = IsShort
            ? (LowArea + HighArea) / 2 * Inside + Middle * (ArcOverSine() - 4.0 / 3 * Middle * Middle * Cube(Tangent))
            : high * HighArea - low * LowArea + 2.0 / 3 * (Cube(highSine) - Cube(lowSine));
        return (Math.PI * Beyond + inside) / Width;
    }

    /// <summary>Mean length of the line inside the disc, 0 to 2: how fast <see cref="Area"/> grows when both lines move on alike.</summary>
    public double Chord() => (IsShort ? ArcOverSine() + Tangent * Sines * Sines : HighArea - LowArea) / Width;

    /// <summary>Slope of <see cref="Chord"/> when both lines move on alike.</summary>
    public double ChordSlope() => (IsShort ? -4 * Middle * Tangent : 2 * (highSine - lowSine)) / Width;

    /// <summary>Mean length of the arc, 0 to 2π.</summary>
    public double Arc()
    {
        var inside = IsShort
            ? (lowAngle + highAngle) * Inside - 4 * Middle * OverArcTangent(Tangent)
            : 2 * (high * highAngle - low * lowAngle + highSine - lowSine);
        return (2 * Math.PI * Beyond + inside) / Width;
    }

    double Middle => (low + high) / 2;
    double Inside => high - low;
    double Sines => lowSine + highSine;

    // tan(Δ/2), from the width, which has all its digits, and not from the angles.
    double Tangent => Sines > 0 ? Inside / Sines : 0;

    // Δ − sin Δ.
    double ArcOverSine()
    {
        var t = Tangent;
        return 2 * (Cube(t) / (1 + t * t) - OverArcTangent(t));
    }

    // t − arctan t; by its series where little is left of the two.
    static double OverArcTangent(double t)
    {
        if (t > 0.1) return t - Math.Atan(t);
        var q = t * t;
        return t * q * (1.0 / 3 - q * (1.0 / 5 - q * (1.0 / 7 - q * (1.0 / 9 - q * (1.0 / 11 - q * (1.0 / 13 - q / 15))))));
    }

    static double Cube(double x) => x * x * x;
}
