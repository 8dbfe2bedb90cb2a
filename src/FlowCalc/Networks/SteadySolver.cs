namespace FlowCalc.Networks;

/// <summary>Steady flow of a fluid through a network, by Newton's method in two sweeps a step.</summary>
/// <remarks>
/// The unknowns are the potential of every point and the flow of every run. The sweep from the leaves to the root condenses each subtree to
/// a line between the flow into it, the potential above it and the flow that passes there (tees couple the two); the sweep back gives the
/// new values. Every run keeps its balance implicit, so neither a nozzle at rest nor a run at rest is divided by.
/// </remarks>
internal static class SteadySolver
{
    const int FullSteps = 40;
    const int DampedSteps = 160;
    const int RoundsOfClosing = 60;

    // Newton squares the error: after a step of 1e-7 the answer is good to about 1e-14.
    const double LastStep = 1e-7;
    const double LargestMismatch = 1e-13;

    // A nozzle behind so much loss that rounding alone moves its flow never takes so small a step; then the balance decides.
    const int PatientSteps = 8;
    const double RestlessMismatch = 1e-10;

    /// <summary>Solves for one pressure of the reservoir. Starts from the state's last answer where there is one.</summary>
    /// <typeparam name="TPath">Kind of fluid.</typeparam>
    /// <param name="state">Network, start and answer.</param>
    /// <param name="path">The fluid.</param>
    /// <param name="reservoirPressure">Absolute total pressure of the reservoir, Pa.</param>
    /// <param name="cancellationToken">Asked once a step.</param>
    /// <returns>How it ended; the answer is in the state.</returns>
    /// <exception cref="OperationCanceledException">The token was cancelled.</exception>
    public static SolveReport Solve<TPath>(SteadyState state, TPath path, double reservoirPressure, CancellationToken cancellationToken)
        where TPath : struct, IExpansionPath
    {
        var reservoir = path.Potential(reservoirPressure);
        if (!state.IsWarm) Array.Clear(state.IsClosed);
        var steps = 0;
        for (var round = 0; round < RoundsOfClosing; round++)
        {
            if (Converge(state, path, reservoir, ref steps, cancellationToken) is not { } residual)
            {
                // Air drawn through a tee, which the answer would not allow anyway, is the usual reason: close what draws and try again.
                if (DryNozzles.Update(state, path, mayOpen: false, out _)) continue;
                return Fail(state, steps, "The flow did not converge: neither full nor damped steps settle. This happens where one leg of a tee is all but starved, or where nearly all pressure is lost on the way to a nozzle.");
            }
            var mayOpen = round < RoundsOfClosing / 2;
            if (DryNozzles.Update(state, path, mayOpen, out var isTrimmed)) continue;
            if (!mayOpen && DryNozzles.IsAnyClosedInVain(state, path)) break;
            if (isTrimmed) residual = Balance.Settle(state, path, reservoir);
            return new(true, steps, residual.Mass, residual.Pressure, null);
        }
        return Fail(state, steps, "The flow did not converge: nozzles at the edge of running dry keep opening and closing.");
    }

    static Mismatch? Converge<TPath>(
        SteadyState state, TPath path, double reservoir, ref int steps, CancellationToken cancellationToken)
        where TPath : struct, IExpansionPath
    {
        if (state.IsWarm && Iterate(state, path, reservoir, 1, ref steps, cancellationToken) is { } warm) return warm;
        for (var damping = 1.0; damping > 0.1; damping /= 2)
        {
            Restart(state, path, reservoir);
            if (Iterate(state, path, reservoir, damping, ref steps, cancellationToken) is not { } residual) continue;
            state.IsWarm = true;
            return residual;
        }
        return null;
    }

    static Mismatch? Iterate<TPath>(
        SteadyState state, TPath path, double reservoir, double damping, ref int steps, CancellationToken cancellationToken)
        where TPath : struct, IExpansionPath
    {
        var most = damping == 1 ? FullSteps : DampedSteps;
        for (var step = 0; step < most; step++)
        {
            cancellationToken.ThrowIfCancellationRequested();
            LossSweep.Fill(state, path.Viscosity, path.ReferenceDensity);
            TreeSweeps.Condense(state, path, reservoir);
            var change = TreeSweeps.Spread(state, reservoir, damping);
            steps++;
            if (double.IsNaN(change)) return null;
            if (!(change < LastStep) && step < PatientSteps) continue;
            var residual = Balance.Settle(state, path, reservoir);
            if (residual.IsWithin(step < 2 * PatientSteps ? LargestMismatch : RestlessMismatch)) return residual;
        }
        return null;
    }

    /// <summary>First flows of a solve without an earlier answer.</summary>
    /// <typeparam name="TPath">Kind of fluid.</typeparam>
    /// <param name="state">Network, and the flows to start from; overwritten.</param>
    /// <param name="path">The fluid.</param>
    /// <param name="reservoir">Potential of the reservoir, Pa.</param>
    public static void Restart<TPath>(SteadyState state, TPath path, double reservoir) where TPath : struct, IExpansionPath
    {
        ColdStart.Fill(state, path.ReferenceDensity, reservoir, path.AmbientPotential);
        Array.Fill(state.Root, FrictionKernel.StartRoot);
        Array.Fill(state.BendRoot, FrictionKernel.StartRoot);
        state.LastBends.Steps = 0;
        Array.Fill(state.ThroatRoot, FrictionKernel.StartRoot);
        Array.Fill(state.Sums, SubtreeSum.Empty);
    }

    static SolveReport Fail(SteadyState state, int steps, string why)
    {
        state.IsWarm = false;
        return new(false, steps, double.NaN, double.NaN, why);
    }
}
