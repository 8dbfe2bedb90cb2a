namespace FlowCalc.Mounts;

/// <summary>One check of a mount, before load cases are put on it: use = Offset + measure / Bears.</summary>
/// <param name="Kind">What is checked.</param>
/// <param name="Part">Of which part.</param>
/// <param name="Number">Of which bolt or strap, from 0; 0 for an end.</param>
/// <param name="Measure">What loads it.</param>
/// <param name="Bears">What it bears, in the unit of the measure, over 0.</param>
/// <param name="Offset">Use without any acceleration, dimensionless.</param>
/// <param name="IsForce">Whether the measure is a force, N; else it is a use.</param>
sealed record MountCheck(MountCheckKind Kind, MountPart Part, int Number, LoadMeasure Measure, double Bears, double Offset, bool IsForce)
{
    /// <summary>Its use at an acceleration, or at the worst direction of one.</summary>
    /// <param name="factor">The acceleration, m/s².</param>
    /// <param name="direction">Its direction in the mount's axes, of length 1; null for any.</param>
    /// <param name="cancellationToken">Asked throughout.</param>
    public (double Use, double Load, Direction Direction) At(double factor, Direction? direction, CancellationToken cancellationToken)
    {
        if (direction is { } one)
        {
            var load = Measure.At(factor * one);
            return (Offset + load / Bears, load, one);
        }
        var (worst, value, _) = Measure.Peak(cancellationToken);
        return (Offset + factor * value / Bears, factor * value, worst);
    }
}
