using FlowCalc.Layouts.Coverage;

namespace FlowCalc.Coverage;

/// <summary>A body as a box, m.</summary>
readonly struct BodyBox
{
    // What grazes a face, or ends on it, goes past.
    const double Grazing = 1e-6;

    readonly Direction low, high;

    public BodyBox(Body body)
    {
        var (one, other) = (SurfacePlane.Of(body.From), SurfacePlane.Of(body.To));
        low = new(Math.Min(one.X, other.X), Math.Min(one.Y, other.Y), Math.Min(one.Z, other.Z));
        high = new(Math.Max(one.X, other.X), Math.Max(one.Y, other.Y), Math.Max(one.Z, other.Z));
    }

    /// <summary>Whether the straight way from one place to another goes through the box, by over a thousandth of a millimetre.</summary>
    public bool Hides(Direction from, Direction to)
    {
        var way = to - from;
        var (enter, leave) = (0.0, 1.0);
        return Clip(from.X, way.X, low.X, high.X, ref enter, ref leave) && Clip(from.Y, way.Y, low.Y, high.Y, ref enter, ref leave)
            && Clip(from.Z, way.Z, low.Z, high.Z, ref enter, ref leave) && (leave - enter) * way.Length > Grazing;
    }

    /// <summary>Whether a place is in the box or on it.</summary>
    public bool Holds(Direction place) => place.X >= low.X && place.X <= high.X && place.Y >= low.Y && place.Y <= high.Y && place.Z >= low.Z && place.Z <= high.Z;

    // Between two faces of the box, by slabs; what runs along a face is not between.
    static bool Clip(double from, double way, double low, double high, ref double enter, ref double leave)
    {
        if (way == 0) return from > low && from < high;
        var (near, far) = ((low - from) / way, (high - from) / way);
        if (near > far) (near, far) = (far, near);
        (enter, leave) = (Math.Max(enter, near), Math.Min(leave, far));
        return enter < leave;
    }
}
