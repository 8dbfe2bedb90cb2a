using FlowCalc.Losses;

namespace FlowCalc.Networks;

/// <summary>
/// The momentum balance of a run of constant bore, Ψ(p1) − Ψ(p2) = G|G|/ρ0·[ln(ρ1/ρ2) + f·L/(2D) + ΣK/2] + weight, between the static pressures
/// just inside its ends. The bracket's last two terms are <see cref="LossSweep"/>'s loss at the reference density.
/// </summary>
/// <remarks>
/// A point holds total pressure. Into a run the fluid speeds up without loss, ∫v dp = (G·v)²/2 along the same path, and slows down again without
/// loss into the point at its end; both are there so that bores may differ. Where the end's total pressure is less than a flow at the local choking
/// flux has, the run is choked and the end's pressure does not act. Derivatives: of Ψ just inside an end, with the acceleration, by the total
/// potential (ρ/ρ_total)², by the flux −G/ρ0.
/// </remarks>
internal static class CompressibleRuns
{
    // (Mach number)² below which choking is out of reach and the first guess of a static pressure is near.
    const double Slow = 0.15;

    // Of ln p: what is left after a step of this size is its square.
    const double Settled = 1e-5;
    const int MostSteps = 40;

    /// <summary>Fills in every run's balance and adds acceleration to its slope.</summary>
    /// <typeparam name="TPath">Kind of fluid.</typeparam>
    /// <param name="state">State with losses; overwritten.</param>
    /// <param name="path">The fluid.</param>
    public static void Fill<TPath>(CompressibleState state, TPath path) where TPath : struct, ICompressiblePath
    {
        var (network, steady) = (state.Network, state.Steady);
        var reservoir = path.At(state.ReservoirLog);
        for (var j = 0; j < network.Count; j++)
        {
            state.Points[j] = path.At(state.Log[j]);
            var parent = network.Parent[j];
            if (parent < 0) One(state, path, j, state.ReservoirLog, reservoir, steady.Flow[j]);
            else One(state, path, j, state.Log[parent], state.Points[parent], steady.Flow[j]);
        }
    }

    static void One<TPath>(CompressibleState state, TPath path, int run, double above, in PathPoint first, double flow) where TPath : struct, ICompressiblePath
    {
        var below = state.Log[run];
        ref readonly var last = ref state.Points[run];
        var flux = flow / state.Area[run];
        // Reverse flow is only passed through on the way to an answer: it takes its losses, and no acceleration.
        var isForward = flow > 0;
        var square = flux * flux;
        var isChoked = false;
        var (start, end) = (above, below);
        double lack = 0;
        var (inside, outside) = (first, last);
        if (isForward)
        {
            (end, isChoked, outside) = path.HasHeads ? End(path, below, last, flux) : ChokedEnd(path, below, last, flux);
            if (path.HasHeads)
            {
                (start, lack, inside) = Start(path, above, first, flux);
                // A liquid right over its bubble point looks slow, and is not where its speed makes it boil.
                if (!isChoked && square > outside.ChokingFluxSquared) (end, isChoked, outside) = FastEnd(path, below, last, flux);
                if (lack == 0 && square > inside.ChokingFluxSquared) (start, lack, inside) = FastStart(path, above, first, flux);
            }
        }
        (state.StartLog[run], state.EndLog[run], state.IsChoked[run]) = (start, end, isChoked);
        var perDensity = 1 / path.ReferenceDensity;
        var logRatio = isForward ? Math.Log(inside.Density / outside.Density) : 0;
        var weight = state.Network.Rise[run] == 0 ? 0
            : state.Network.Rise[run] * HydrostaticRise.StandardGravity * perDensity * 0.5 * (inside.Density * inside.Density + outside.Density * outside.Density);
        state.Drive[run] = inside.Potential - outside.Potential - square * perDensity * logRatio - weight - lack * inside.Density * inside.Density * perDensity;
        if (!isForward)
        {
            (state.Above[run], state.Below[run]) = (1, 1);
            return;
        }
        var entered = path.HasHeads ? Part(inside.Density, first.Density) : 1 - square / inside.ChokingFluxSquared;
        var left = isChoked ? 0 : path.HasHeads ? Part(outside.Density, last.Density) : 1 - square / outside.ChokingFluxSquared;
        // A flux beyond what the start can pass is on its way down: the factor must not turn round.
        (state.Above[run], state.Below[run]) = (Math.Max(entered, 1e-3), left);
        var perFlux = perDensity * flux * (2 * logRatio + (isChoked && path.HasHeads ? 1 : 0));
        state.Steady.Slope[run] += perFlux / state.Area[run];
    }

    static double Part(double inside, double total) => inside / total * (inside / total);

    // Where the flux is the local choking flux at the end itself.
    static (double Log, bool IsChoked, PathPoint At) ChokedEnd<TPath>(TPath path, double total, in PathPoint point, double flux) where TPath : struct, ICompressiblePath
    {
        if (flux * flux < Slow * point.ChokingFluxSquared) return (total, false, point);
        var choking = path.ChokingLog(flux);
        return choking > total ? (choking, true, path.At(choking)) : (total, false, point);
    }

    static (double Log, bool IsChoked, PathPoint At) End<TPath>(TPath path, double total, in PathPoint point, double flux) where TPath : struct, ICompressiblePath
    {
        var square = flux * flux;
        if (square >= Slow * point.ChokingFluxSquared) return FastEnd(path, total, point, flux);
        var (log, at) = Static(path, total, point, square, path.LogLow);
        return (log, false, at);
    }

    static (double Log, bool IsChoked, PathPoint At) FastEnd<TPath>(TPath path, double total, in PathPoint point, double flux) where TPath : struct, ICompressiblePath
    {
        var square = flux * flux;
        var choking = path.ChokingLog(flux);
        var sonic = path.At(choking);
        if (point.Work <= sonic.Work + 0.5 * square / (sonic.Density * sonic.Density)) return (choking, true, sonic);
        var (log, at) = Static(path, total, point, square, choking);
        return (log, false, at);
    }

    // A flux beyond what the total pressure can drive: its sonic state, and the work that it lacks, which carries the balance on with the slope of its limit.
    static (double Log, double Lack, PathPoint At) Start<TPath>(TPath path, double total, in PathPoint point, double flux) where TPath : struct, ICompressiblePath
    {
        var square = flux * flux;
        if (square >= Slow * point.ChokingFluxSquared) return FastStart(path, total, point, flux);
        var (log, at) = Static(path, total, point, square, path.LogLow);
        return (log, 0, at);
    }

    static (double Log, double Lack, PathPoint At) FastStart<TPath>(TPath path, double total, in PathPoint point, double flux) where TPath : struct, ICompressiblePath
    {
        var square = flux * flux;
        var choking = path.ChokingLog(flux);
        var sonic = path.At(choking);
        var lack = sonic.Work + 0.5 * square / (sonic.Density * sonic.Density) - point.Work;
        if (lack >= 0) return (choking, lack, sonic);
        var (log, at) = Static(path, total, point, square, choking);
        return (log, 0, at);
    }

    // Subsonic root x of W(total) − W(x) = G²/(2ρ²), between the sonic pressure and the total one, and the state there.
    static (double Log, PathPoint At) Static<TPath>(TPath path, double total, in PathPoint point, double square, double sonic) where TPath : struct, ICompressiblePath
    {
        // Where p/ρ and the density's slope keep their values, the fall s of ln p has s·exp(−2·s·slope) = G²/(2ρp): the first terms of its series.
        var still = 0.5 * square / (point.Density * point.Density * point.Quotient);
        var grows = 2 * still * point.DensitySlope;
        var log = total - still * (1 + grows * (1 + 1.5 * grows));
        var (low, high) = (sonic, total);
        for (var i = 0; ; i++)
        {
            if (!(log > low && log <= high)) log = 0.5 * (low + high);
            var at = path.At(log);
            var kinetic = square / (at.Density * at.Density);
            var miss = point.Work - at.Work - 0.5 * kinetic;
            // Over 0 where the static pressure is too low.
            if (miss > 0) low = log;
            else high = log;
            var step = miss / (at.Quotient - kinetic * at.DensitySlope);
            // Newton squares what is left.
            if (Math.Abs(step) < Settled || i == MostSteps) return (log + step, at.Moved(step, path.ReferenceDensity));
            log += step;
        }
    }
}
