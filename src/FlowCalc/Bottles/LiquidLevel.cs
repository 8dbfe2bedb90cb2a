using FlowCalc.Losses;

namespace FlowCalc.Bottles;

/// <summary>Liquid at rest in a flat-ended cylinder, under an effective gravity of any direction.</summary>
/// <remarks>
/// Heights are along the unit vector <c>up</c> against gravity, in m from the centre of the base.
/// With x across the axis in the plane of <c>up</c>, z along it and the tilt t, a place is at the height x·sin t + z·cos t, so that the surface
/// at height h cuts the base at x = h/sin t and the far end L·cot t before that; all else is the mean of disc segments between the two (<see cref="SegmentSpan"/>).
/// </remarks>
internal sealed class LiquidLevel
{
    // Below these the tilted formula and the limit differ by less than the last digit of a height.
    const double LeastSine = 1e-15, LeastSpan = 1e-10;

    readonly Direction up;
    readonly double radius, length, sine, cosine, floor, span, unit, ungulaShare;
    readonly bool isUpright, isLying;

    /// <summary>A bottle and the direction in which it stands.</summary>
    /// <param name="radius">Inside radius, m, over 0.</param>
    /// <param name="length">Inside length, m, over 0.</param>
    /// <param name="up">Against gravity, in the bottle's axes (z from base to outlet end), of length 1 to within a millionth.</param>
    /// <exception cref="ArgumentOutOfRangeException">A size is not above 0 and finite, or the direction is not of length 1.</exception>
    public LiquidLevel(double radius, double length, Direction up)
    {
        Require.FiniteAndPositive(radius);
        Require.FiniteAndPositive(length);
        var norm = up.Length;
        Require.Within(norm, 1 - 1e-6, 1 + 1e-6, nameof(up));
        (this.radius, this.length, this.up) = (radius, length, new Direction(up.X / norm, up.Y / norm, up.Z / norm));
        (sine, cosine) = (Math.Sqrt(this.up.X * this.up.X + this.up.Y * this.up.Y), Math.Abs(this.up.Z));
        // Upside down, the outlet end is the floor on which the liquid stands; a cylinder looks the same from both ends.
        floor = Math.Min(0, this.up.Z * length);
        unit = sine * radius;
        span = cosine * length / unit;
        isUpright = sine < LeastSine;
        isLying = !isUpright && span < LeastSpan;
        (Lowest, Highest) = (floor - unit, floor + cosine * length + unit);
        Volume = Math.PI * radius * radius * length;
        ungulaShare = isUpright || isLying ? 0 : new SegmentSpan(Math.Min(-1, 1 - span), Math.Min(span - 1, 1)).Area();
    }

    /// <summary>Height of the lowest place inside, m.</summary>
    public double Lowest { get; }

    /// <summary>Height of the highest place inside, m.</summary>
    public double Highest { get; }

    /// <summary>Volume of the whole cylinder, m³.</summary>
    public double Volume { get; }

    /// <summary>Volume below a height.</summary>
    /// <param name="height">Height, m.</param>
    /// <returns>Volume, m³: 0 below the lowest place, all of it above the highest.</returns>
    public double VolumeBelow(double height)
    {
        if (height <= Lowest) return 0;
        if (height >= Highest) return Volume;
        if (isUpright) return Math.PI * radius * radius * (height - floor);
        var place = (height - floor) / unit;
        return radius * radius * length * (isLying ? SegmentSpan.AreaAt(place - span / 2) : new SegmentSpan(place - span, place).Area());
    }

    /// <summary>Area of the liquid's surface: the slope of <see cref="VolumeBelow"/>.</summary>
    /// <param name="height">Height, m.</param>
    /// <returns>Area, m²; 0 outside the bottle.</returns>
    public double SurfaceArea(double height)
    {
        if (!(height > Lowest && height < Highest)) return 0;
        if (isUpright) return Math.PI * radius * radius;
        var place = (height - floor) / unit;
        var chord = isLying ? SegmentSpan.ChordAt(place - span / 2) : new SegmentSpan(place - span, place).Chord();
        return radius * length / sine * chord;
    }

    /// <summary>Area of the shell, side and ends, that the liquid does not touch.</summary>
    /// <param name="height">Height of the liquid's surface, m.</param>
    /// <returns>Area, m²: all of the shell at the lowest place and below, 0 at the highest and above.</returns>
    public double WallAreaAbove(double height)
    {
        var (side, end) = (2 * Math.PI * radius * length, Math.PI * radius * radius);
        if (height <= Lowest) return side + 2 * end;
        if (height >= Highest) return 0;
        if (isUpright) return side * (1 - (height - floor) / length) + end;
        var place = (height - floor) / unit;
        var wet = isLying
            ? radius * length * SegmentSpan.ArcAt(place - span / 2)
            : radius * length * new SegmentSpan(place - span, place).Arc();
        wet += radius * radius * (SegmentSpan.AreaAt(place) + SegmentSpan.AreaAt(place - span));
        return Math.Max(0, side + 2 * end - wet);
    }

    /// <summary>Height of the surface of so much liquid.</summary>
    /// <param name="volume">Volume, m³.</param>
    /// <returns>Height, m, to about 1e-15 of the bottle's size; where the volume is below 0 or above the whole, as rounding makes it, the lowest or highest place.</returns>
    public double HeightOf(double volume)
    {
        if (volume <= 0) return Lowest;
        if (volume >= Volume) return Highest;
        if (isUpright) return floor + volume / (Math.PI * radius * radius);
        // The cylinder turned about its centre is itself: the gas above one level lies like the liquid below the other.
        var rest = Volume - volume;
        return volume <= rest ? floor + unit * Place(volume) : Lowest + Highest - (floor + unit * Place(rest));
    }

    /// <summary>Height of a place.</summary>
    /// <param name="x">Across the axis, m.</param>
    /// <param name="y">Across the axis, m.</param>
    /// <param name="z">From the base towards the outlet end, m.</param>
    /// <returns>Height, m from the centre of the base.</returns>
    public double HeightAt(double x, double y, double z) => up.X * x + up.Y * y + up.Z * z;

    // Where the surface of half the bottle or less cuts the floor, in radii.
    double Place(double volume)
    {
        var share = volume / (radius * radius * length);
        if (isLying) return SegmentInverse.Of(share) + span / 2;
        // The floor is covered and the far end is dry: the height goes with the volume.
        if (share * span >= Math.PI) return share * span / Math.PI;
        var start = share <= ungulaShare ? SegmentInverse.UngulaStart(share * span) : SegmentInverse.SlabStart(share, span);
        return SegmentInverse.Refine(share, span, start);
    }
}
