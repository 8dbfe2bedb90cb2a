namespace FlowCalc.Networks;

/// <summary>The ends of a compressible fluid's runs, linearised at the present state.</summary>
/// <param name="state">The state, filled by <see cref="CompressibleRuns"/>.</param>
internal readonly struct CompressibleEnds(CompressibleState state) : IRunEnds
{
    readonly double[] above = state.Above, below = state.Below, drive = state.Drive;

    /// <inheritdoc/>
    public double Above(int run) => above[run];

    /// <inheritdoc/>
    public double Below(int run) => below[run];

    /// <inheritdoc/>
    public double Rest(int run, double potentialAbove, double potentialBelow) => drive[run] - above[run] * potentialAbove + below[run] * potentialBelow;
}
