namespace FlowCalc;

/// <summary>Sums and multiples of directions, which stand for places (m), forces (N), arms (m) and rows of a matrix.</summary>
static class Vectors
{
    public static Direction Times(double factor, Direction direction) => new(factor * direction.X, factor * direction.Y, factor * direction.Z);

    public static Direction Sum(params ReadOnlySpan<Direction> parts)
    {
        var (x, y, z) = (0.0, 0.0, 0.0);
        foreach (var part in parts) (x, y, z) = (x + part.X, y + part.Y, z + part.Z);
        return new(x, y, z);
    }

    public static Direction Less(Direction from, Direction what) => new(from.X - what.X, from.Y - what.Y, from.Z - what.Z);

    public static Direction Unit(Direction direction) => Times(1 / direction.Length, direction);
}
