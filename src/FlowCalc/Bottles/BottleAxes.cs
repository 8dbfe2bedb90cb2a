namespace FlowCalc.Bottles;

/// <summary>The axes of a bottle in the layout's: z from base to outlet end, x and y by the smallest rotation that takes the layout's z to it.</summary>
/// <param name="X">The bottle's x in the layout's axes, of length 1.</param>
/// <param name="Y">The bottle's y, of length 1.</param>
/// <param name="Z">The bottle's z, of length 1.</param>
internal readonly record struct BottleAxes(Direction X, Direction Y, Direction Z)
{
    // Nearer to straight down than this the smallest rotation has no axis to turn about.
    const double LeastLean = 1e-9;

    /// <summary>Whether x and y are the layout's own.</summary>
    public bool AreTheLayouts => X.X == 1 && Y.Y == 1;

    /// <summary>The axes of a bottle that lies along a direction; straight down, half a turn about x.</summary>
    /// <param name="axis">From base to outlet end in the layout's axes, of any length but 0.</param>
    /// <remarks>Rotation about z × axis: R = I + K + K²/(1 + cos), K the matrix of that cross product (Rodrigues, 1840, from memory).</remarks>
    public static BottleAxes Along(Direction axis)
    {
        var length = axis.Length;
        var (x, y, z) = (axis.X / length, axis.Y / length, axis.Z / length);
        var lean = x * x + y * y;
        if (z < 0 && lean < LeastLean * LeastLean) return new(new(1, 0, 0), new(0, -1, 0), new(0, 0, -1));
        // 1/(1 + z), which loses its digits near straight down, by z² = 1 − x² − y².
        var k = z < 0 ? (1 - z) / lean : 1 / (1 + z);
        return new(new(1 - k * x * x, -k * x * y, -x), new(-k * x * y, 1 - k * y * y, -y), new(x, y, z));
    }

    /// <summary>A direction of the layout's axes in the bottle's.</summary>
    /// <param name="direction">The direction, of any length.</param>
    public Direction FromLayout(Direction direction) => new(Dot(X, direction), Dot(Y, direction), Dot(Z, direction));

    static double Dot(Direction a, Direction b) => a.X * b.X + a.Y * b.Y + a.Z * b.Z;
}
