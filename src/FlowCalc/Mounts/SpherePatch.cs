namespace FlowCalc.Mounts;

/// <summary>A triangle of directions, and the most that a function can reach in it.</summary>
/// <param name="A">A corner, of length 1.</param>
/// <param name="B">A corner.</param>
/// <param name="C">A corner.</param>
/// <param name="Bound">No direction within has more.</param>
readonly record struct SpherePatch(Direction A, Direction B, Direction C, double Bound)
{
    /// <summary>Distance of the flat triangle from the middle of the sphere, over 0 to 1.</summary>
    public static double Depth(Direction a, Direction b, Direction c)
    {
        var normal = a.Cross(b) + b.Cross(c) + c.Cross(a);
        return Math.Abs(a.Dot(normal)) / normal.Length;
    }
}
