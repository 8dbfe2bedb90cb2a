namespace FlowCalc.Networks;

/// <summary>The ends of a liquid's runs: their potentials act in full, and the weight between them.</summary>
/// <typeparam name="TPath">Kind of fluid.</typeparam>
/// <param name="state">The state, for the rises.</param>
/// <param name="path">The fluid.</param>
internal readonly struct LinearEnds<TPath>(SteadyState state, TPath path) : IRunEnds where TPath : struct, IExpansionPath
{
    readonly double[] rise = state.Network.Rise;

    /// <inheritdoc/>
    public double Above(int run) => 1;

    /// <inheritdoc/>
    public double Below(int run) => 1;

    /// <inheritdoc/>
    public double Rest(int run, double above, double below) => -rise[run] * path.Weight(0.5 * (above + below));
}
