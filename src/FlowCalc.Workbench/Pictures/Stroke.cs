using System.Collections.Immutable;

namespace FlowCalc.Workbench.Pictures;

/// <summary>A line from spot to spot.</summary>
/// <param name="Spots">Its corners, two or more.</param>
/// <param name="Ink">Its colour.</param>
/// <param name="Width">Its width, points.</param>
public sealed record Stroke(ImmutableArray<Spot> Spots, Ink Ink, double Width) : Mark
{
    /// <summary>Lengths of dashes and gaps in turn, points; empty for a full line.</summary>
    public ImmutableArray<double> Dashes { get; init; } = [];
}
