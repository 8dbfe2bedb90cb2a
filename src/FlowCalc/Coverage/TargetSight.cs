using UnitsNet;

namespace FlowCalc.Coverage;

/// <summary>How a nozzle stands to a target.</summary>
/// <param name="Point">Index of the nozzle.</param>
/// <param name="Distance">How far it is.</param>
/// <param name="OffAxis">Angle between the axis of its spray and the way to the target.</param>
/// <param name="IsInCone">Whether the target is in its cone.</param>
/// <param name="IsInRange">Whether the distance is within the range that the document states of its spray; so it is where none is stated.</param>
/// <param name="HiddenBy">Id of the first body in the straight way; null for none.</param>
public sealed record TargetSight(int Point, Length Distance, Angle OffAxis, bool IsInCone, bool IsInRange, string? HiddenBy)
{
    /// <summary>Whether the spray may come to the target.</summary>
    public bool Reaches => IsInCone && IsInRange && HiddenBy is null;
}
