namespace FlowCalc.Mounts;

/// <summary>The axes of a mount in the layout's: z from the structure to the bottle, x and y in its face, by the right hand.</summary>
/// <param name="X">The mount's x, of length 1.</param>
/// <param name="Y">The mount's y, of length 1.</param>
/// <param name="Z">The mount's z, of length 1.</param>
internal readonly record struct MountFrame(Direction X, Direction Y, Direction Z)
{
    /// <summary>The axes of a normal and a direction whose part square to it is x.</summary>
    /// <param name="normal">From the structure to the bottle, of any length but 0.</param>
    /// <param name="x">Of any length but 0, not along the normal.</param>
    public static MountFrame Of(Direction normal, Direction x)
    {
        var z = normal.ToUnit();
        var y = z.Cross(x).ToUnit();
        return new(y.Cross(z), y, z);
    }

    /// <summary>A direction of the layout's axes in the mount's.</summary>
    public Direction FromLayout(Direction direction) => new(X.Dot(direction), Y.Dot(direction), Z.Dot(direction));

    /// <summary>A direction of the mount's axes in the layout's.</summary>
    public Direction ToLayout(Direction direction) => direction.X * X + direction.Y * Y + direction.Z * Z;
}
