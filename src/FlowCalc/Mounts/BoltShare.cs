namespace FlowCalc.Mounts;

/// <summary>What one bolt bears of a force, as a map from the force in the mount's axes.</summary>
/// <param name="AlongX">Its shear along x over the force: a row to multiply the force with, dimensionless.</param>
/// <param name="AlongY">Its shear along y.</param>
/// <param name="AlongZ">Its pull; under 0 it presses.</param>
public readonly record struct BoltShare(Direction AlongX, Direction AlongY, Direction AlongZ)
{
    /// <summary>Pull of a force, N; 0 where it presses.</summary>
    /// <param name="force">The force, N.</param>
    public double Pull(Direction force) => Math.Max(0, AlongZ.Dot(force));

    /// <summary>Shear of a force, N.</summary>
    /// <param name="force">The force, N.</param>
    public double Shear(Direction force)
    {
        var (x, y) = (AlongX.Dot(force), AlongY.Dot(force));
        return Math.Sqrt(x * x + y * y);
    }
}
