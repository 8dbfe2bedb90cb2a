using System.Collections.Immutable;
using FlowCalc.Layouts;

namespace FlowCalc.Studies.Tolerance;

/// <summary>What a study of tolerances asks.</summary>
public sealed record ToleranceQuestion
{
    /// <summary>Samples where none are asked for.</summary>
    public const int UsualSamples = 1_000;

    /// <summary>Seed where none is given.</summary>
    public const ulong UsualSeed = 1;

    /// <summary>Least samples: with fewer, what one input explains drowns in chance.</summary>
    public const int LeastSamples = 100;

    /// <summary>The design, a checked layout; for a discharge its supply is a bottle.</summary>
    public required Layout Layout { get; init; }

    /// <summary>What varies, 1 or more; the order decides nothing but the order of the answer.</summary>
    public required ImmutableArray<SpreadVariable> Variables { get; init; }

    /// <summary>What is worked out of every sample.</summary>
    public StudiedAnswer Answer { get; init; }

    /// <summary>Whether a discharge is followed in every case; else in the first: the first temperature in the first attitude.</summary>
    public bool IsEveryCase { get; init; }

    /// <summary>Samples, <see cref="LeastSamples"/> to 2²⁰.</summary>
    public int Samples { get; init; } = UsualSamples;

    /// <summary>Seed: the same one gives the same samples.</summary>
    public ulong Seed { get; init; } = UsualSeed;

    /// <summary>What was taken for what the question left open.</summary>
    public ImmutableArray<Assumption> Assumptions { get; init; } = [];
}
