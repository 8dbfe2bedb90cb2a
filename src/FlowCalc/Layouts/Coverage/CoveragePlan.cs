using System.Collections.Immutable;

namespace FlowCalc.Layouts.Coverage;

/// <summary>What the nozzles are to reach, whom they may not be aimed at, and what stands in between.</summary>
public sealed record CoveragePlan
{
    /// <summary>The surfaces, in the document's order.</summary>
    public ImmutableArray<Surface> Surfaces { get; init; } = [];

    /// <summary>The targets, in the document's order.</summary>
    public ImmutableArray<Target> Targets { get; init; } = [];

    /// <summary>The persons, in the document's order.</summary>
    public ImmutableArray<Target> Persons { get; init; } = [];

    /// <summary>The bodies, in the document's order.</summary>
    public ImmutableArray<Body> Bodies { get; init; } = [];
}
