namespace FlowCalc;

/// <summary>A direction in the layout's axes: x forward, y left, z up; of any length.</summary>
/// <param name="X">Part along x, dimensionless.</param>
/// <param name="Y">Part along y, dimensionless.</param>
/// <param name="Z">Part along z, dimensionless.</param>
public readonly record struct Direction(double X, double Y, double Z)
{
    /// <summary>The length of the arrow, dimensionless.</summary>
    public double Length => Math.Sqrt(X * X + Y * Y + Z * Z);

    /// <summary>The angle between two directions, rad, 0 to π; by the arc tangent, so that small angles keep their digits.</summary>
    /// <param name="other">The other direction; neither may have length 0.</param>
    public double AngleTo(Direction other)
    {
        var cross = Cross(other);
        return Math.Atan2(cross.Length, Dot(other));
    }

    /// <summary>The direction square to two, by the right hand; as long as the product of their lengths and the sine between them.</summary>
    /// <param name="other">The other direction.</param>
    public Direction Cross(Direction other) => new(Y * other.Z - Z * other.Y, Z * other.X - X * other.Z, X * other.Y - Y * other.X);

    /// <summary>The product of two directions: of their lengths and the cosine between them.</summary>
    /// <param name="other">The other direction.</param>
    public double Dot(Direction other) => X * other.X + Y * other.Y + Z * other.Z;
}
