using System.Collections.Immutable;

namespace FlowCalc.Routes;

/// <summary>Fills one bin after another as full as possible, each around the largest size that is left.</summary>
/// <remarks>After J. N. D. Gupta and J. C. Ho, 1999, and K. Fleszar and K. S. Hindi, 2002 (from memory), who keep the largest size in each bin.</remarks>
static class FullestBins
{
    const int StepsABin = 20_000, DeepestBin = 64;

    /// <summary>Packs into bins of the largest capacity.</summary>
    /// <param name="problem">The sizes.</param>
    /// <param name="effort">What is left of the search's effort; where it runs out, bins are filled as the sizes come.</param>
    /// <param name="cancellation">Ends the packing early.</param>
    public static Packing Pack(PackingProblem problem, SearchEffort effort, CancellationToken cancellation)
    {
        List<int> left = [.. Enumerable.Range(0, problem.Sizes.Length)];
        List<ImmutableArray<int>> bins = [];
        while (left.Count > 0)
        {
            cancellation.ThrowIfCancellationRequested();
            var fill = new Filling(problem, left, Math.Min(StepsABin, effort.Left));
            fill.Search(1, problem.Largest - problem.Sizes[left[0]], 0);
            effort.Left -= fill.Steps;
            bins.Add([left[0], .. fill.Best.Select(place => left[place])]);
            // From the back, so that the places before stay what they are.
            foreach (var place in fill.Best.Reverse()) left.RemoveAt(place);
            left.RemoveAt(0);
        }
        return problem.Of(bins);
    }

    /// <summary>The search for the fullest bin around the first size that is left.</summary>
    sealed class Filling(PackingProblem problem, List<int> left, int most)
    {
        readonly int[] chosen = new int[DeepestBin];
        long bestRoom = long.MaxValue;

        public int Steps { get; private set; }

        /// <summary>Places in what is left, rising.</summary>
        public int[] Best { get; private set; } = [];

        public void Search(int from, long room, int depth)
        {
            if (room < bestRoom) (bestRoom, Best) = (room, chosen[..depth]);
            if (depth == DeepestBin) return;
            long tried = -1;
            for (var place = from; place < left.Count && bestRoom > 0 && Steps < most; place++)
            {
                Steps++;
                var size = problem.Sizes[left[place]];
                if (size > room || size == tried) continue;
                tried = size;
                chosen[depth] = place;
                Search(place + 1, room - size, depth + 1);
            }
        }
    }
}
