using Silk.NET.Maths;

namespace FlowCalc;

/// <summary>A direction in the layout's axes: x forward, y left, z up; of any length.</summary>
/// <param name="X">Part along x, dimensionless.</param>
/// <param name="Y">Part along y, dimensionless.</param>
/// <param name="Z">Part along z, dimensionless.</param>
public readonly record struct Direction(double X, double Y, double Z)
{
    /// <summary>The length of the arrow, dimensionless.</summary>
    public double Length => Vector.Length;

    /// <summary>The angle between two directions, rad, 0 to π; by the arc tangent, so that small angles keep their digits.</summary>
    /// <param name="other">The other direction; neither may have length 0.</param>
    public double AngleTo(Direction other)
    {
        var cross = Cross(other);
        return Math.Atan2(cross.Length, Dot(other));
    }

    /// <summary>The direction square to two, by the right hand; as long as the product of their lengths and the sine between them.</summary>
    /// <param name="other">The other direction.</param>
    public Direction Cross(Direction other) => Of(Vector3D.Cross(Vector, other.Vector));

    /// <summary>The product of two directions: of their lengths and the cosine between them.</summary>
    /// <param name="other">The other direction.</param>
    public double Dot(Direction other) => Vector3D.Dot(Vector, other.Vector);

    /// <summary>The direction of length 1; this one may not have length 0.</summary>
    public Direction ToUnit() => Of(Vector3D.Normalize(Vector));

    Vector3D<double> Vector => new(X, Y, Z);

    /// <summary>One direction and then the other.</summary>
    /// <param name="one">The one, in the unit of both.</param>
    /// <param name="other">The other.</param>
    public static Direction operator +(Direction one, Direction other) => Of(one.Vector + other.Vector);

    /// <summary>What leads from one place to another: its place less that of the start.</summary>
    /// <param name="to">Where it leads, in the unit of both.</param>
    /// <param name="from">Where it starts.</param>
    public static Direction operator -(Direction to, Direction from) => Of(to.Vector - from.Vector);

    /// <summary>A direction made longer or shorter, or turned round by a factor below 0.</summary>
    /// <param name="factor">By how much, in any unit.</param>
    /// <param name="direction">The direction.</param>
    public static Direction operator *(double factor, Direction direction) => Of(direction.Vector * factor);

    static Direction Of(Vector3D<double> vector) => new(vector.X, vector.Y, vector.Z);
}
