using System.Collections.Immutable;
using FlowCalc.Stock;
using UnitsNet;

namespace FlowCalc.Layouts.Mounts;

/// <summary>A group of equal bolts in one plane.</summary>
public sealed record MountBolts
{
    /// <summary>Their size.</summary>
    public required BoltSize Size { get; init; }

    /// <summary>Their property class; null where they bear no mark.</summary>
    public BoltClass? Class { get; init; }

    /// <summary>Their places in the mount's x and y, 1 to 64.</summary>
    public required ImmutableArray<BoltPlace> At { get; init; }

    /// <summary>Whether heads are countersunk.</summary>
    public bool IsCountersunk { get; init; }

    /// <summary>Outside diameter of the washer or of a round spreader on the far side; null for the bare head or nut.</summary>
    public Length? Washer { get; init; }

    /// <summary>From the middle of a hole to the nearest edge of the sheet; null where not given.</summary>
    public Length? Edge { get; init; }

    /// <summary>Force with which each bolt is tightened; null where not given.</summary>
    public Force? Preload { get; init; }

    /// <summary>The tapped hole that they go into; null for nuts.</summary>
    public TappedHole? Thread { get; init; }
}
