using System.Collections.Immutable;
using FlowCalc.Layouts;

namespace FlowCalc.Studies.Sizing;

/// <summary>What may be chosen, and what is wished of it.</summary>
public sealed record SizingProblem
{
    internal const int UsualWork = 150_000;

    /// <summary>The layout as it is.</summary>
    public required Layout Layout { get; init; }

    /// <summary>Tubes that a free run may have beside its own.</summary>
    public ImmutableArray<TubeOption> Tubes { get; init; } = [];

    /// <summary>Sizes that a free nozzle may have beside its own.</summary>
    public ImmutableArray<NozzleOption> Nozzles { get; init; } = [];

    /// <summary>What is free; no run and no nozzle twice.</summary>
    public required ImmutableArray<SizingGroup> Groups { get; init; }

    /// <summary>The wish.</summary>
    public required SizingWish Wish { get; init; }

    /// <summary>What to look for among what meets the wish.</summary>
    public required SizingObjective Objective { get; init; }

    /// <summary>Work after which the search ends with what it has, in solves of one steady flow of a liquid; 1 or more. It is counted, not timed, so that the answer hangs on no clock.</summary>
    public int Work { get; init; } = UsualWork;
}
