namespace FlowCalc.Bottles;

/// <summary>Where a line has to stand for the segments of the unit disc to have a given mean area; up to half of the disc.</summary>
internal static class SegmentInverse
{
    const int MostPasses = 60;

    // A step of Halley’s leaves about its cube; where a line is just about to touch the disc, with the kink there, its power of 2.5.
    const double Enough = 2e-6;

    /// <summary>Place of the line whose segment has an area.</summary>
    /// <param name="area">Area, over 0 to π/2.</param>
    public static double Of(double area)
    {
        var place = SegmentStart(area);
        // So little that no number lies between it and none.
        if (!(place > -1)) return -1;
        for (var pass = 0; pass < MostPasses; pass++)
        {
            var (half, excess) = (Math.Sqrt((1 - place) * (1 + place)), SegmentSpan.AreaAt(place) - area);
            // The area's slope is twice the half chord, and the slope of that is −x over the half chord.
            var step = Halley(excess, 2 * half, -2 * place / half);
            place = Math.Clamp(place - step, -1, 0);
            if (IsEnough(step, place)) break;
        }
        return place;
    }

    /// <summary>Place of the leading line of a span of lines.</summary>
    /// <param name="area">Mean area, over 0 to π/2.</param>
    /// <param name="span">Distance of the lines, over 0.</param>
    /// <param name="place">A start; at −1 or below there is so little that it is −1.</param>
    public static double Refine(double area, double span, double place)
    {
        if (!(place > -1)) return -1;
        var (low, high) = (-1.0, Math.Max(1, span / 2));
        for (var pass = 0; pass < MostPasses; pass++)
        {
            var lines = new SegmentSpan(place - span, place);
            var (excess, slope) = (lines.Area() - area, lines.Chord());
            if (excess > 0) high = place;
            else low = place;
            var step = Halley(excess, slope, lines.ChordSlope());
            if (IsEnough(step, place)) return Math.Max(-1, place - step);
            var next = place - step;
            // The area rises with the place, so the root stays between the two; also where the step is no number.
            place = next > low && next < high ? next : (low + high) / 2;
        }
        return place;
    }

    /// <summary>Start where the trailing line misses the disc: what lies below a tilted plane is an ungula.</summary>
    /// <param name="moment">Mean area times distance, over 0 to π.</param>
    /// <remarks>For a shallow ungula (2/15)·(2(1+x))^(5/2); the polynomial carries that on to the whole disc, within 0.04 % of 1 + x (fitted here to the closed form).</remarks>
    public static double UngulaStart(double moment)
    {
        var u = Math.Pow(7.5 * moment, 0.4);
        return u / 2 * (1.000093 + u * (0.020132 + u * (0.004712 + u * (-0.001534 + u * 0.00043)))) - 1;
    }

    /// <summary>Start where both lines cut the disc: the mean of segments is nearly the segment of the mean, and the next term of its series is added.</summary>
    /// <param name="area">Mean area, over 0 to π/2.</param>
    /// <param name="span">Distance of the lines, over 0 to 2.</param>
    public static double SlabStart(double area, double span)
    {
        var middle = SegmentStart(area);
        return middle + span / 2 + span * span / 24 * middle / ((1 - middle) * (1 + middle));
    }

    // For a flat segment (2/3)·(2(1+x))^(3/2); the polynomial carries that on to half the disc, within 0.003 % of 1 + x (fitted here to the closed form).
    static double SegmentStart(double area)
    {
        var u = Math.Cbrt(1.5 * area);
        u *= u;
        return u / 2 * (1.000017 + u * (0.049533 + u * (0.009855 + u * (-0.001164 + u * 0.001761)))) - 1;
    }

    static double Halley(double excess, double slope, double curvature) => excess * slope / (slope * slope - excess * curvature / 2);

    static bool IsEnough(double step, double place) => Math.Abs(step) <= Math.Max(Enough * (1 + place), 1e-15);
}
