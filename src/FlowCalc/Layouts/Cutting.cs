using System.Collections.Immutable;
using UnitsNet;

namespace FlowCalc.Layouts;

/// <summary>How tube is cut, bent and clipped: what the document says of the bench. No flow hangs on it.</summary>
public sealed record Cutting
{
    /// <summary>The stock that pieces are cut from; at most one entry a tube, and at most one for all others. Empty where none is stated.</summary>
    public ImmutableArray<TubeStock> Stock { get; init; } = [];

    /// <summary>Width that a cut takes; null where not given.</summary>
    public Length? Kerf { get; init; }

    /// <summary>Tube taken off each end to make it square and smooth; null where not given.</summary>
    public Length? Squaring { get; init; }

    /// <summary>Part of the tube that is ordered besides, for spoiled pieces, 0 to 1, dimensionless; null where not given.</summary>
    public double? Spare { get; init; }

    /// <summary>Straight tube that the bender needs between two bends; null where not given.</summary>
    public Length? BenderGrip { get; init; }

    /// <summary>Distance between clips; null where the table of spacings decides.</summary>
    public Length? ClipSpacing { get; init; }

    /// <summary>Depth to which tubes go into fittings that do not state theirs; null where not given.</summary>
    public Length? Insertion { get; init; }
}
