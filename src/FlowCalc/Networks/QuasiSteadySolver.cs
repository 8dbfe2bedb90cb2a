namespace FlowCalc.Networks;

/// <summary>Follows the steady flow of a tree whose pressures and lengths change a little from call to call.</summary>
/// <remarks>
/// The same two sweeps as <see cref="SteadySolver"/>, ended by the size of the step alone: Newton squares the error, so that after a step of
/// 3e-3 about 1e-5 is left. Anything else than plain convergence goes to the full solver.
/// </remarks>
internal static class QuasiSteadySolver
{
    const int MostSteps = 12;

    // Below, the error of bends that are recalled rather than worked out would show.
    const double CoarseEnough = 1e-3;

    /// <summary>Solves for one pressure of the reservoir; flows balance to rounding at every point.</summary>
    /// <param name="state">Network, start and answer.</param>
    /// <param name="path">The liquid.</param>
    /// <param name="reservoirPressure">Absolute total pressure of the reservoir, Pa.</param>
    /// <param name="settled">Largest relative change of a flow in the last step.</param>
    /// <param name="cancellationToken">Asked once.</param>
    /// <returns>Why there is no answer; null where there is one.</returns>
    public static string? Solve(SteadyState state, LiquidPath path, double reservoirPressure, double settled, CancellationToken cancellationToken)
    {
        cancellationToken.ThrowIfCancellationRequested();
        var reservoir = path.Potential(reservoirPressure);
        if (IsAnyClosed(state)) return Whole(state, path, reservoirPressure, cancellationToken);
        if (!state.IsWarm) SteadySolver.Restart(state, path, reservoir);
        state.LastBends.IsAllowed = settled >= CoarseEnough;
        for (var step = 0; step < MostSteps; step++)
        {
            LossSweep.Fill(state, path.Viscosity, path.ReferenceDensity);
            TreeSweeps.Condense(state, path, reservoir);
            var change = TreeSweeps.Spread(state, reservoir, damping: 1);
            if (double.IsNaN(change)) break;
            if (change > settled) continue;
            Balance.SumFlows(state);
            state.IsWarm = true;
            return IsAnyDrawing(state) ? Whole(state, path, reservoirPressure, cancellationToken) : null;
        }
        state.IsWarm = false;
        return Whole(state, path, reservoirPressure, cancellationToken);
    }

    static string? Whole(SteadyState state, LiquidPath path, double reservoirPressure, CancellationToken cancellationToken)
    {
        state.LastBends.IsAllowed = false;
        var report = SteadySolver.Solve(state, path, reservoirPressure, cancellationToken);
        return report.Converged ? null : report.Failure;
    }

    static bool IsAnyClosed(SteadyState state) => Array.IndexOf(state.IsClosed, true) >= 0;

    static bool IsAnyDrawing(SteadyState state)
    {
        foreach (var point in state.Network.Nozzles)
            if (state.Flow[point] < 0) return true;
        return false;
    }
}
