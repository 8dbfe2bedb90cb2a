using FlowCalc.Losses;

namespace FlowCalc.Networks;

/// <summary>Steady flow of a gas or of a flashing liquid through a network: the sweeps of <see cref="SteadySolver"/>, with choking and acceleration.</summary>
internal static class CompressibleSolver
{
    const int FullSteps = 30;
    const int DampedSteps = 200;
    const int RoundsOfClosing = 30;

    // A nozzle behind so much loss that rounding alone moves its flow never takes so small a step; then the balance decides.
    const int PatientSteps = 8;
    const double RestlessStep = 1e-3;
    const double RestlessMismatch = 1e-7;

    /// <summary>Relative change of a flow in the last step that makes an answer good to rounding.</summary>
    public const double Tight = 1e-9;

    /// <summary>Solves for one total pressure of the reservoir. Starts from the state's last answer where there is one.</summary>
    /// <typeparam name="TPath">Kind of fluid.</typeparam>
    /// <param name="state">Network, start and answer.</param>
    /// <param name="path">The fluid.</param>
    /// <param name="reservoirPressure">Absolute total pressure before the first run, Pa.</param>
    /// <param name="settled">Largest relative change of a flow in the last step.</param>
    /// <param name="cancellationToken">Asked once a step.</param>
    /// <returns>How it ended; the answer is in the state. Mismatches are told only where <paramref name="settled"/> is <see cref="Tight"/> or less.</returns>
    /// <exception cref="OperationCanceledException">The token was cancelled.</exception>
    public static SolveReport Solve<TPath>(CompressibleState state, TPath path, double reservoirPressure, double settled, CancellationToken cancellationToken)
        where TPath : struct, ICompressiblePath
    {
        var steady = state.Steady;
        var seen = new CompressiblePath<TPath>(path, state.Log);
        var log = Math.Log(reservoirPressure);
        if (!steady.IsWarm) Array.Clear(steady.IsClosed);
        else Follow(state, path, log);
        state.ReservoirLog = log;
        var steps = 0;
        for (var round = 0; round < RoundsOfClosing; round++)
        {
            if (!Converge(state, path, seen, settled, ref steps, cancellationToken))
            {
                // Air drawn through a tee, which the answer would not allow anyway, is the usual reason: close what draws and try again.
                if (DryNozzles.Update(steady, seen, mayOpen: false, out _)) continue;
                break;
            }
            Balance.SumFlows(steady);
            Still(state, path);
            var mayOpen = round < RoundsOfClosing / 2;
            if (DryNozzles.Update(steady, seen, mayOpen, out _)) continue;
            if (!mayOpen && DryNozzles.IsAnyClosedInVain(steady, seen)) break;
            // Who asks for less than rounding does not ask how far it is off either.
            return settled > Tight ? new(true, steps, double.NaN, double.NaN, null) : Measure(state, path, seen, steps);
        }
        steady.IsWarm = false;
        return new(false, steps, double.NaN, double.NaN, "The flow of the expanding agent did not converge: neither full nor damped steps settle.");
    }

    // The last answer, each pressure in its place between surroundings and reservoir, and flows as those of nozzles: nearly all of what a change of the reservoir makes.
    static void Follow<TPath>(CompressibleState state, TPath path, double reservoirLog) where TPath : struct, ICompressiblePath
    {
        var (steady, ambient) = (state.Steady, path.LogAmbient);
        var (over, lastOver) = (reservoirLog - ambient, state.ReservoirLog - ambient);
        var isNear = over > 0 && lastOver > 0 && over < 2 * lastOver && lastOver < 2 * over;
        var (place, flow) = isNear ? (over / lastOver, Math.Sqrt(Math.Exp(over) * (Math.Exp(over) - 1) / (Math.Exp(lastOver) * (Math.Exp(lastOver) - 1)))) : (1, 1);
        for (var j = 0; j < state.Log.Length; j++)
        {
            state.Log[j] = Math.Clamp(ambient + place * (state.Log[j] - ambient), path.LogLow, path.LogTop);
            steady.Potential[j] = path.At(state.Log[j]).Potential;
            steady.Flow[j] *= flow;
        }
    }

    // Where nothing flows no line gave a potential: it is the one above less what the tee takes from it and the weight.
    static void Still<TPath>(CompressibleState state, TPath path) where TPath : struct, ICompressiblePath
    {
        var (network, steady) = (state.Network, state.Steady);
        LossSweep.Fill(steady, new ViscosityByRun(state.Viscosity), path.ReferenceDensity);
        for (var j = 0; j < network.Count; j++)
        {
            if (steady.Flow[j] != 0) continue;
            var above = network.Parent[j] < 0 ? state.ReservoirLog : state.Log[network.Parent[j]];
            var at = path.At(above);
            var weight = network.Rise[j] * HydrostaticRise.StandardGravity * at.Density * at.Density / path.ReferenceDensity;
            var potential = at.Potential - steady.Loss[j] - weight;
            state.Log[j] = Math.Clamp(path.LogOf(potential, above), path.LogLow, path.LogTop);
            steady.Potential[j] = potential;
        }
    }

    static bool Converge<TPath>(CompressibleState state, TPath path, CompressiblePath<TPath> seen, double settled, ref int steps, CancellationToken cancellationToken)
        where TPath : struct, ICompressiblePath
    {
        if (state.Steady.IsWarm && Iterate(state, path, seen, 1, settled, ref steps, cancellationToken)) return true;
        for (var damping = 1.0; damping > 0.1; damping /= 2)
        {
            SteadySolver.Restart(state.Steady, seen, path.At(state.ReservoirLog).Potential);
            Tame(state, path);
            var fill = path.Viscosity(path.LogTop);
            Array.Fill(state.Viscosity, fill);
            TakePotentials(state, path, isFilled: false);
            if (!Iterate(state, path, seen, damping, settled, ref steps, cancellationToken)) continue;
            state.Steady.IsWarm = true;
            return true;
        }
        return false;
    }

    // The start is a liquid's, whose tubes never choke: flows that no tube can pass are taken back, all of them together.
    static void Tame<TPath>(CompressibleState state, TPath path) where TPath : struct, ICompressiblePath
    {
        const double ofGreatest = 0.7;
        var (flows, potentials) = (state.Steady.Flow, state.Steady.Potential);
        double most = 0;
        for (var j = 0; j < potentials.Length; j++) most = Math.Max(most, Math.Abs(flows[j]) / state.Area[j]);
        var part = ofGreatest * path.Nozzle(state.ReservoirLog).Flux / most;
        if (!(part < 1)) return;
        var reservoir = path.At(state.ReservoirLog).Potential;
        for (var j = 0; j < potentials.Length; j++)
        {
            flows[j] *= part;
            potentials[j] = reservoir - part * part * (reservoir - potentials[j]);
        }
    }

    static bool Iterate<TPath>(
        CompressibleState state, TPath path, CompressiblePath<TPath> seen, double damping, double settled, ref int steps, CancellationToken cancellationToken)
        where TPath : struct, ICompressiblePath
    {
        var steady = state.Steady;
        var reservoir = path.At(state.ReservoirLog).Potential;
        var most = damping == 1 ? FullSteps : DampedSteps;
        for (var step = 0; step < most; step++)
        {
            cancellationToken.ThrowIfCancellationRequested();
            Balances(state, path);
            var ends = new CompressibleEnds(state);
            TreeSweeps.Condense(steady, seen, ends, reservoir);
            steady.Flow.AsSpan(0, state.LastFlow.Length).CopyTo(state.LastFlow);
            steady.Potential.CopyTo(state.LastPotential, 0);
            var change = TreeSweeps.Spread(steady, ends, reservoir, damping: 1);
            steps++;
            if (double.IsNaN(change)) return false;
            Shorten(state, path, damping);
            // Behind a choked end a pressure may still move where no flow does.
            change = Math.Max(change, TakePotentials(state, path, isFilled: true));
            if (change < settled || (step >= PatientSteps && change < RestlessStep && IsBalanced(state, path, seen))) return true;
        }
        return false;
    }

    static void Balances<TPath>(CompressibleState state, TPath path) where TPath : struct, ICompressiblePath
    {
        LossSweep.Fill(state.Steady, new ViscosityByRun(state.Viscosity), path.ReferenceDensity);
        CompressibleRuns.Fill(state, path);
        // The viscosity of the next step: friction hangs on it weakly.
        for (var j = 0; j < state.Log.Length; j++) state.Viscosity[j] = path.Viscosity(0.5 * (state.StartLog[j] + state.EndLog[j]));
    }

    // A step that would change a pressure by more than this, as a logarithm, or send it beyond the path, is shortened as a whole: its linear view does not reach so far.
    static void Shorten<TPath>(CompressibleState state, TPath path, double damping) where TPath : struct, ICompressiblePath
    {
        const double farthest = 1, nearEdge = 0.3;
        var (potentials, last) = (state.Steady.Potential, state.LastPotential);
        var part = damping;
        for (var j = 0; j < potentials.Length; j++)
        {
            if (potentials[j] == last[j]) continue;
            var isFalling = potentials[j] < last[j];
            // A point at the edge of the path is put back there on its own; it must not hold up the others.
            if (isFalling ? state.Log[j] - path.LogLow < nearEdge : path.LogTop - state.Log[j] < nearEdge) continue;
            var bound = isFalling ? Math.Max(state.Log[j] - farthest, path.LogLow) : Math.Min(state.Log[j] + farthest, path.LogTop);
            var most = path.At(bound).Potential - last[j];
            var asked = potentials[j] - last[j];
            if (isFalling ? part * asked < most : part * asked > most) part = most / asked;
        }
        if (part >= 1) return;
        part = Math.Max(part, 0.02);
        var flows = state.Steady.Flow;
        for (var j = 0; j < potentials.Length; j++)
        {
            potentials[j] = last[j] + part * (potentials[j] - last[j]);
            flows[j] = state.LastFlow[j] + part * (flows[j] - state.LastFlow[j]);
        }
    }

    // A step may send a point beyond the path; it comes back to its edge. Gives the largest change of a pressure's logarithm where anything flows.
    // Once the runs have been filled in, the states that the step starts from are known.
    static double TakePotentials<TPath>(CompressibleState state, TPath path, bool isFilled) where TPath : struct, ICompressiblePath
    {
        var (potentials, flows) = (state.Steady.Potential, state.Steady.Flow);
        double change = 0;
        for (var j = 0; j < potentials.Length; j++)
        {
            var guess = isFilled ? state.Log[j] + state.Points[j].StepTo(potentials[j], path.ReferenceDensity) : state.Log[j];
            var log = path.LogOf(potentials[j], Math.Clamp(guess, path.LogLow, path.LogTop));
            if (flows[j] != 0) change = Math.Max(change, Math.Abs(log - state.Log[j]));
            if (!(log >= path.LogLow && log <= path.LogTop))
            {
                log = Math.Clamp(double.IsNaN(log) ? path.LogLow : log, path.LogLow, path.LogTop);
                potentials[j] = path.At(log).Potential;
            }
            state.Log[j] = log;
        }
        return change;
    }

    static bool IsBalanced<TPath>(CompressibleState state, TPath path, CompressiblePath<TPath> seen) where TPath : struct, ICompressiblePath
    {
        Balance.SumFlows(state.Steady);
        var left = Measure(state, path, seen, 0);
        return left.MassResidual < RestlessMismatch && left.PressureResidual < RestlessMismatch * Math.Exp(state.ReservoirLog);
    }

    static SolveReport Measure<TPath>(CompressibleState state, TPath path, CompressiblePath<TPath> seen, int steps) where TPath : struct, ICompressiblePath
    {
        var (network, steady) = (state.Network, state.Steady);
        Balances(state, path);
        double pressure = 0, mass = 0;
        for (var j = 0; j < network.Count; j++)
            if (steady.Flow[j] != 0) pressure = Math.Max(pressure, Math.Abs(state.Drive[j] - steady.Loss[j]));
        for (var i = 0; i < network.Nozzles.Length; i++)
        {
            if (steady.IsClosed[i]) continue;
            var point = network.Nozzles[i];
            var tangent = seen.Nozzle(point, steady.Potential[point], steady.Flow[point], network.NozzleArea[i]);
            mass = Math.Max(mass, Math.Abs(tangent.G * steady.Potential[point] - tangent.R - tangent.T * steady.Flow[point]) / tangent.T);
        }
        return new(true, steps, mass == 0 ? 0 : mass / Math.Abs(steady.Flow[0]), pressure, null);
    }
}
