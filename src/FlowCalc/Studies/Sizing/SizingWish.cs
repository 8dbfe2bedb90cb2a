using UnitsNet;

namespace FlowCalc.Studies.Sizing;

/// <summary>What a choice has to do.</summary>
public sealed record SizingWish
{
    /// <summary>Largest deviation of any nozzle's share from its wanted share, as a part of that, over 0 to 1; null for no matter.</summary>
    public double? Deviation { get; init; }

    /// <summary>Shortest time of the requirement's part in any case; null for no matter.</summary>
    public Duration? Earliest { get; init; }

    /// <summary>Longest time of the requirement's part in any case; null for no matter.</summary>
    public Duration? Latest { get; init; }

    /// <summary>Lowest absolute total pressure at any nozzle; null for no matter.</summary>
    public Pressure? LeastPressure { get; init; }

    /// <summary>Whether a discharge has to be followed to judge it.</summary>
    public bool HasTime => Earliest is not null || Latest is not null;
}
