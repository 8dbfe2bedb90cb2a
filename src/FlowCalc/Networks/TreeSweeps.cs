namespace FlowCalc.Networks;

/// <summary>The two sweeps of a Newton step: leaves to root, root to leaves. No recursion, no matrix.</summary>
internal static class TreeSweeps
{
    /// <summary>Condenses every subtree to its line, children before parents.</summary>
    /// <typeparam name="TPath">Kind of fluid.</typeparam>
    /// <param name="state">State with the losses at the present flows; its lines are overwritten.</param>
    /// <param name="path">The fluid.</param>
    /// <param name="reservoir">Potential of the reservoir, Pa.</param>
    public static void Condense<TPath>(SteadyState state, TPath path, double reservoir) where TPath : struct, IExpansionPath
    {
        var network = state.Network;
        NozzleLines(state, path);
        var count = network.Count;
        ReadOnlySpan<int> parents = network.Parent.AsSpan(0, count);
        ReadOnlySpan<double> rises = network.Rise.AsSpan(0, count), potentials = state.Potential.AsSpan(0, count);
        ReadOnlySpan<double> flows = state.Flow.AsSpan(0, count), losses = state.Loss.AsSpan(0, count);
        ReadOnlySpan<double> slopes = state.Slope.AsSpan(0, count), crosses = state.Cross.AsSpan(0, count);
        var lines = state.Lines.AsSpan(0, count);
        var sums = state.Sums.AsSpan(0, count);
        for (var j = count - 1; j > 0; j--)
        {
            var above = parents[j];
            var weight = path.Weight(0.5 * (potentials[above] + potentials[j]));
            var e = slopes[j] * flows[j] + crosses[j] * flows[above] - losses[j] - rises[j] * weight;
            var line = Line(ref sums[j], slopes[j], crosses[j], e);
            lines[j] = line;
            ref var sum = ref sums[above];
            sum.G += line.G;
            sum.T += line.C;
            sum.R += line.B;
        }
        var rest = slopes[0] * flows[0] - losses[0] - rises[0] * path.Weight(0.5 * (reservoir + potentials[0]));
        lines[0] = Line(ref sums[0], slopes[0], 0, rest);
    }

    /// <summary>Gives every run its new flow and every point its new potential, parents before children.</summary>
    /// <param name="state">State with its lines; flows and potentials are overwritten.</param>
    /// <param name="reservoir">Potential of the reservoir, Pa.</param>
    /// <param name="damping">Part of the step to take, over 0 to 1.</param>
    /// <returns>Largest change of a flow, relative to itself and a millionth of the total flow.</returns>
    public static double Spread(SteadyState state, double reservoir, double damping)
    {
        var network = state.Network;
        var count = network.Count;
        ReadOnlySpan<int> parents = network.Parent.AsSpan(0, count);
        ReadOnlySpan<double> slopes = state.Slope.AsSpan(0, count), crosses = state.Cross.AsSpan(0, count);
        ReadOnlySpan<RunLine> lines = state.Lines.AsSpan(0, count);
        var flows = state.Flow.AsSpan(0, count);
        var potentials = state.Potential.AsSpan(0, count);
        var root = lines[0];
        var total = flows[0] + damping * (root.G * reservoir - root.B - flows[0]);
        var floor = 1e-6 * Math.Abs(total) + double.Epsilon;
        var change = Math.Abs(total - flows[0]) / (Math.Abs(total) + floor);
        flows[0] = total;
        potentials[0] = reservoir - slopes[0] * total + root.E;
        for (var j = 1; j < count; j++)
        {
            var above = parents[j];
            var line = lines[j];
            var old = flows[j];
            var flow = old + damping * (line.G * potentials[above] - line.B - line.C * flows[above] - old);
            flows[j] = flow;
            potentials[j] = potentials[above] - slopes[j] * flow - crosses[j] * flows[above] + line.E;
            // The comparison lets a NaN through to the caller.
            var moved = Math.Abs(flow - old);
            if (!(moved <= change * (Math.Abs(flow) + floor))) change = moved / (Math.Abs(flow) + floor);
        }
        return change;
    }

    static RunLine Line(ref SubtreeSum below, double slope, double cross, double e)
    {
        var (g, t, r) = (below.G, below.T, below.R);
        below = SubtreeSum.Empty;
        var pivot = 1 / (t + g * slope);
        var line = g * pivot;
        return new(line, (r - g * e) * pivot, line * cross, e);
    }

    static void NozzleLines<TPath>(SteadyState state, TPath path) where TPath : struct, IExpansionPath
    {
        var network = state.Network;
        for (var i = 0; i < network.Nozzles.Length; i++)
        {
            if (state.IsClosed[i]) continue;
            var point = network.Nozzles[i];
            var tangent = path.Nozzle(state.Potential[point], state.Flow[point], network.NozzleArea[i]);
            state.Sums[point] = new() { G = tangent.G, T = tangent.T, R = tangent.R };
        }
    }
}
