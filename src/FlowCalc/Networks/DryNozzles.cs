namespace FlowCalc.Networks;

/// <summary>
/// Nozzles that height alone puts under the surroundings would draw air, which is not modelled: they are closed, and opened again where
/// closing others leaves them above.
/// </summary>
internal static class DryNozzles
{
    // Of the total flow: a nozzle that draws less than this stands at the surroundings' pressure but for rounding.
    const double Rounding = 1e-14;

    /// <summary>True where a closed nozzle stands above the surroundings, so that liquid would leave it after all.</summary>
    /// <typeparam name="TPath">Kind of fluid.</typeparam>
    /// <param name="state">The answer.</param>
    /// <param name="path">The fluid.</param>
    public static bool IsAnyClosedInVain<TPath>(SteadyState state, TPath path) where TPath : struct, IExpansionPath
    {
        var nozzles = state.Network.Nozzles;
        for (var i = 0; i < nozzles.Length; i++)
            if (state.IsClosed[i] && state.Potential[nozzles[i]] > path.AmbientPotential) return true;
        return false;
    }

    /// <summary>Closes and opens nozzles by the present answer.</summary>
    /// <typeparam name="TPath">Kind of fluid.</typeparam>
    /// <param name="state">The answer; <see cref="SteadyState.IsClosed"/> is overwritten.</param>
    /// <param name="path">The fluid.</param>
    /// <param name="mayOpen">False to close only, which ends for certain.</param>
    /// <param name="isTrimmed">True where a nozzle was closed that drew no more than rounding: the flows need to be summed again, not solved.</param>
    /// <returns>True where any nozzle changed so that the rest changes with it.</returns>
    public static bool Update<TPath>(SteadyState state, TPath path, bool mayOpen, out bool isTrimmed) where TPath : struct, IExpansionPath
    {
        var nozzles = state.Network.Nozzles;
        var negligible = Rounding * Math.Abs(state.Flow[0]);
        var changed = isTrimmed = false;
        for (var i = 0; i < nozzles.Length; i++)
        {
            var point = nozzles[i];
            var flow = state.Flow[point];
            if (state.IsClosed[i])
            {
                if (!mayOpen || !(state.Potential[point] > path.AmbientPotential)) continue;
                state.IsClosed[i] = false;
                changed = true;
            }
            else if (flow < 0)
            {
                state.IsClosed[i] = true;
                isTrimmed = true;
                changed |= -flow > negligible;
            }
        }
        return changed;
    }
}
