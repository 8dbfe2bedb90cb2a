namespace FlowCalc.Networks;

/// <summary>The two sweeps of a Newton step: leaves to root, root to leaves. No recursion, no matrix.</summary>
internal static class TreeSweeps
{
    /// <summary>Condenses every subtree to its line, children before parents.</summary>
    /// <typeparam name="TPath">Kind of fluid.</typeparam>
    /// <param name="state">State with the losses at the present flows; its lines are overwritten.</param>
    /// <param name="path">The fluid.</param>
    /// <param name="reservoir">Potential of the reservoir, Pa.</param>
    public static void Condense<TPath>(SteadyState state, TPath path, double reservoir) where TPath : struct, IExpansionPath =>
        Condense(state, path, new LinearEnds<TPath>(state, path), reservoir);

    /// <summary>The same where the balance of a run is not linear in the potentials of its ends.</summary>
    /// <typeparam name="TPath">Kind of fluid.</typeparam>
    /// <typeparam name="TEnds">How the ends act on a run.</typeparam>
    /// <param name="state">State with the losses at the present flows; its lines are overwritten.</param>
    /// <param name="path">The fluid.</param>
    /// <param name="ends">The ends' part of each run's balance at the present state.</param>
    /// <param name="reservoir">Potential of the reservoir, Pa.</param>
    public static void Condense<TPath, TEnds>(SteadyState state, TPath path, TEnds ends, double reservoir)
        where TPath : struct, IExpansionPath
        where TEnds : struct, IRunEnds
    {
        var network = state.Network;
        NozzleLines(state, path);
        var count = network.Count;
        ReadOnlySpan<int> parents = network.Parent.AsSpan(0, count);
        ReadOnlySpan<double> potentials = state.Potential.AsSpan(0, count);
        ReadOnlySpan<double> flows = state.Flow.AsSpan(0, count), losses = state.Loss.AsSpan(0, count);
        ReadOnlySpan<double> slopes = state.Slope.AsSpan(0, count), crosses = state.Cross.AsSpan(0, count);
        var lines = state.Lines.AsSpan(0, count);
        var sums = state.Sums.AsSpan(0, count);
        for (var j = count - 1; j > 0; j--)
        {
            var above = parents[j];
            var e = slopes[j] * flows[j] + crosses[j] * flows[above] - losses[j] + ends.Rest(j, potentials[above], potentials[j]);
            var line = Line(ref sums[j], ends.Below(j), slopes[j], e);
            lines[j] = line;
            ref var sum = ref sums[above];
            sum.G += line.G * ends.Above(j);
            sum.T += line.G * crosses[j];
            sum.R += line.B;
        }
        var rest = slopes[0] * flows[0] - losses[0] + ends.Rest(0, reservoir, potentials[0]);
        lines[0] = Line(ref sums[0], ends.Below(0), slopes[0], rest);
    }

    /// <summary>Gives every run its new flow and every point its new potential, parents before children.</summary>
    /// <param name="state">State with its lines; flows and potentials are overwritten.</param>
    /// <param name="reservoir">Potential of the reservoir, Pa.</param>
    /// <param name="damping">Part of the step to take, over 0 to 1.</param>
    /// <returns>Largest change of a flow, relative to itself and a millionth of the total flow.</returns>
    /// <remarks>
    /// A potential comes from the subtree below, not from the one above less a loss: behind a long way it would be the small difference of
    /// large numbers, and its rounding would move the flows there.
    /// </remarks>
    public static double Spread(SteadyState state, double reservoir, double damping) => Spread(state, new LinearEnds<LiquidPath>(state, default), reservoir, damping);

    /// <summary>The same for the ends that condensed the lines.</summary>
    /// <typeparam name="TEnds">How the ends act on a run.</typeparam>
    /// <param name="state">State with its lines; flows and potentials are overwritten.</param>
    /// <param name="ends">The ends' part of each run's balance.</param>
    /// <param name="reservoir">Potential of the reservoir, Pa.</param>
    /// <param name="damping">Part of the step to take, over 0 to 1.</param>
    /// <returns>As without.</returns>
    public static double Spread<TEnds>(SteadyState state, TEnds ends, double reservoir, double damping) where TEnds : struct, IRunEnds
    {
        var count = state.Network.Count;
        ReadOnlySpan<int> parents = state.Network.Parent.AsSpan(0, count);
        ReadOnlySpan<RunLine> lines = state.Lines.AsSpan(0, count);
        ReadOnlySpan<double> crosses = state.Cross.AsSpan(0, count);
        var flows = state.Flow.AsSpan(0, count);
        var potentials = state.Potential.AsSpan(0, count);
        double change = 0, floor = double.Epsilon;
        for (var j = 0; j < count; j++)
        {
            var above = parents[j];
            var (potentialAbove, flowAbove) = j == 0 ? (reservoir, 0) : (potentials[above], flows[above]);
            var line = lines[j];
            var old = flows[j];
            var flow = line.G * (ends.Above(j) * potentialAbove - crosses[j] * flowAbove) - line.B;
            if (damping < 1) flow = old + damping * (flow - old);
            flows[j] = flow;
            potentials[j] = double.IsNaN(line.V) ? potentialAbove : line.U * flow + line.V;
            if (j == 0) floor += 1e-6 * Math.Abs(flow);
            var moved = Math.Abs(flow - old);
            var size = Math.Abs(flow) + floor;
            // The comparison lets a NaN through to the caller.
            if (!(moved <= change * size)) change = moved / size;
        }
        return change;
    }

    static RunLine Line(ref SubtreeSum below, double pull, double slope, double e)
    {
        var (g, t, r) = (below.G, below.T, below.R);
        below = SubtreeSum.Empty;
        if (g == 0) return new(0, r / t, 0, double.NaN);
        // In a chain each line waits for the one below, so the shortest way to it counts: one division, not the fewest divisions.
        var pivot = t * pull + g * slope;
        var line = g / pivot;
        var perG = 1 / g;
        var v = r * perG;
        return new(line, line * (pull * v - e), t * perG, v);
    }

    static void NozzleLines<TPath>(SteadyState state, TPath path) where TPath : struct, IExpansionPath
    {
        var network = state.Network;
        for (var i = 0; i < network.Nozzles.Length; i++)
        {
            if (state.IsClosed[i]) continue;
            var point = network.Nozzles[i];
            var tangent = path.Nozzle(point, state.Potential[point], state.Flow[point], network.NozzleArea[i]);
            state.Sums[point] = new() { G = tangent.G, T = tangent.T, R = tangent.R };
        }
    }
}
