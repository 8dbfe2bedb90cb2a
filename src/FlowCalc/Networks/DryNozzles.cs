namespace FlowCalc.Networks;

/// <summary>
/// Nozzles that height alone puts under the surroundings would draw air, which is not modelled: they are closed, and opened again where
/// closing others leaves them above.
/// </summary>
internal static class DryNozzles
{
    /// <summary>Closes and opens nozzles by the present answer.</summary>
    /// <typeparam name="TPath">Kind of fluid.</typeparam>
    /// <param name="state">The answer; <see cref="SteadyState.IsClosed"/> is overwritten.</param>
    /// <param name="path">The fluid.</param>
    /// <param name="mayOpen">False to close only, which ends for certain.</param>
    /// <returns>True where any nozzle changed.</returns>
    public static bool Update<TPath>(SteadyState state, TPath path, bool mayOpen) where TPath : struct, IExpansionPath
    {
        var nozzles = state.Network.Nozzles;
        var changed = false;
        for (var i = 0; i < nozzles.Length; i++)
        {
            var point = nozzles[i];
            var isUnder = state.IsClosed[i]
                ? !(mayOpen && state.Potential[point] > path.AmbientPotential)
                : state.Flow[point] < 0;
            changed |= isUnder != state.IsClosed[i];
            state.IsClosed[i] = isUnder;
        }
        return changed;
    }
}
