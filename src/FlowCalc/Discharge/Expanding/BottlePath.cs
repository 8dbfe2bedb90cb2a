namespace FlowCalc.Discharge;

/// <summary>Where a bottle's state goes as agent leaves it, from its own rates alone: at the flow that its pressure would drive through a nozzle, beside the present one.</summary>
/// <param name="problem">The discharge.</param>
/// <param name="rates">Its rates, which tell what leaves and by which table.</param>
internal sealed class BottlePath(ExpandingProblem problem, ExpandingRates rates)
{
    readonly int length = problem.Bottle.Length;
    readonly double[] first = new double[problem.Bottle.Length], second = new double[problem.Bottle.Length], third = new double[problem.Bottle.Length], fourth = new double[problem.Bottle.Length];

    /// <summary>What the outlet draws.</summary>
    /// <param name="y">State.</param>
    /// <param name="draw">What it draws.</param>
    /// <returns>False where the state has left the data.</returns>
    public bool TryDraw(ReadOnlySpan<double> y, out Draw draw) => problem.Bottle.TryDraw(y[..length], rates.IsLiquid, out draw);

    /// <summary>The state after so much more agent has left, by the classical fourth-order rule over the agent instead of time.</summary>
    /// <param name="y">State now.</param>
    /// <param name="flow">Agent that leaves all bottles now, kg/s.</param>
    /// <param name="more">How much more, kg.</param>
    /// <param name="steps">In how many steps.</param>
    /// <param name="state">The state then, of the bottle and the agent that has left; the rest as now.</param>
    /// <returns>False where the way leaves the data.</returns>
    public bool TryFollow(ReadOnlySpan<double> y, double flow, double more, int steps, Span<double> state)
    {
        y.CopyTo(state);
        if (!TryDraw(y, out var draw)) return false;
        var perFlux = flow / draw.AgentPart / Flux(draw);
        if (!double.IsFinite(perFlux)) return false;
        Span<double> at = stackalloc double[length];
        var part = more / steps;
        for (var step = 0; step < steps; step++)
        {
            var bottle = state[..length];
            if (!TrySlopes(bottle, perFlux, first)) return false;
            Add(bottle, 0.5 * part, first, at);
            if (!TrySlopes(at, perFlux, second)) return false;
            Add(bottle, 0.5 * part, second, at);
            if (!TrySlopes(at, perFlux, third)) return false;
            Add(bottle, part, third, at);
            if (!TrySlopes(at, perFlux, fourth)) return false;
            for (var i = 0; i < length; i++) bottle[i] += part / 6 * (first[i] + 2 * (second[i] + third[i]) + fourth[i]);
        }
        state[rates.Out] += more;
        return true;
    }

    // Slopes by the agent that has left.
    bool TrySlopes(ReadOnlySpan<double> y, double perFlux, Span<double> slopes)
    {
        if (!TryDraw(y, out var draw)) return false;
        var flow = perFlux * Flux(draw);
        if (!(flow > 0) || !problem.Bottle.TryRates(y, rates.IsLiquid, flow / problem.Count, rates.Step, slopes)) return false;
        for (var i = 0; i < length; i++) slopes[i] /= flow * draw.AgentPart;
        return true;
    }

    double Flux(in Draw draw) => rates.Table.Nozzle(Math.Log(rates.Drive(draw))).Flux;

    static void Add(ReadOnlySpan<double> y, double part, ReadOnlySpan<double> slopes, Span<double> to)
    {
        for (var i = 0; i < y.Length; i++) to[i] = y[i] + part * slopes[i];
    }
}
