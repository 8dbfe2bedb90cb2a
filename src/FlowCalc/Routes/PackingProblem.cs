using System.Collections.Immutable;

namespace FlowCalc.Routes;

/// <summary>Sizes to be packed into bins of a few capacities, any number of each.</summary>
/// <param name="Sizes">Sizes, falling, each over 0 and at most the largest capacity.</param>
/// <param name="Capacities">Capacities, rising; at least one.</param>
/// <param name="Kerf">What a bin's capacity is over its cost, 0 or more.</param>
sealed record PackingProblem(long[] Sizes, long[] Capacities, long Kerf)
{
    /// <summary>What divides the cost of every bin.</summary>
    public long Grain { get; } = Capacities.Aggregate(0L, (grain, capacity) => Divisor(capacity - Kerf, grain));

    /// <summary>The largest capacity.</summary>
    public long Largest => Capacities[^1];

    /// <summary>The least capacity that holds a content.</summary>
    public long Capacity(long content)
    {
        foreach (var capacity in Capacities)
            if (content <= capacity) return capacity;
        throw new ArgumentOutOfRangeException(nameof(content), content, "More than the largest capacity.");
    }

    /// <summary>What a bin of a content costs: its capacity less the kerf.</summary>
    public long Cost(long content) => content == 0 ? 0 : Capacity(content) - Kerf;

    /// <summary>Content of a bin.</summary>
    public long Content(ImmutableArray<int> bin)
    {
        long content = 0;
        foreach (var item in bin) content += Sizes[item];
        return content;
    }

    /// <summary>A packing of these bins.</summary>
    public Packing Of(IEnumerable<ImmutableArray<int>> bins)
    {
        ImmutableArray<ImmutableArray<int>> all = [.. bins];
        return new Packing(all, all.Sum(bin => Cost(Content(bin))));
    }

    static long Divisor(long a, long b)
    {
        while (b != 0) (a, b) = (b, a % b);
        return a;
    }
}
