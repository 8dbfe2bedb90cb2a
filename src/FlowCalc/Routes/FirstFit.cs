using System.Collections.Immutable;

namespace FlowCalc.Routes;

/// <summary>First-fit decreasing: each size, largest first, into the first bin that has room for it.</summary>
/// <remarks>
/// D. S. Johnson, 1973 (from memory): with one capacity it uses at most 11/9 of the least number of bins, and 2/3 of one. The first bin with room is found in a tournament of the
/// rooms, so that n sizes take n·log n steps.
/// </remarks>
static class FirstFit
{
    /// <summary>Packs into bins of one capacity.</summary>
    /// <param name="problem">The sizes; each at most <paramref name="capacity"/>.</param>
    /// <param name="capacity">The capacity.</param>
    public static Packing Pack(PackingProblem problem, long capacity)
    {
        var sizes = problem.Sizes;
        var leaves = 1;
        while (leaves < sizes.Length) leaves *= 2;
        // Most room among the bins below each node; a bin that is not open yet has all of it.
        var room = new long[2 * leaves];
        Array.Fill(room, capacity);
        List<ImmutableArray<int>.Builder> bins = [];
        for (var item = 0; item < sizes.Length; item++)
        {
            var node = 1;
            while (node < leaves) node = room[2 * node] >= sizes[item] ? 2 * node : 2 * node + 1;
            room[node] -= sizes[item];
            var bin = node - leaves;
            if (bin == bins.Count) bins.Add(ImmutableArray.CreateBuilder<int>());
            bins[bin].Add(item);
            for (node /= 2; node >= 1; node /= 2) room[node] = Math.Max(room[2 * node], room[2 * node + 1]);
        }
        return problem.Of(bins.Select(bin => bin.ToImmutable()));
    }
}
