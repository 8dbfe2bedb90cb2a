using FlowCalc.Agents;

namespace FlowCalc.Discharge;

/// <summary>The stream's tables along a discharge: made for a few states that the bottle is going to have, and put together for those between.</summary>
/// <param name="problem">The discharge.</param>
/// <param name="rates">Its rates, which tell what leaves.</param>
internal abstract class TableTrack(ExpandingProblem problem, ExpandingRates rates)
{
    // In the longest steps allowed, how far ahead a table is made.
    const double Steps = 1.6;
    const int MostSteps = 3;

    readonly double[] state = new double[rates.Length];

    /// <summary>The track that a discharge's agent asks for.</summary>
    /// <param name="problem">The discharge.</param>
    /// <param name="rates">Its rates.</param>
    public static TableTrack Of(ExpandingProblem problem, ExpandingRates rates) => problem.Bottle.IsGas ? new GasTrack(problem, rates) : new FlashingTrack(problem, rates);

    /// <summary>Surroundings of the discharge, Pa absolute.</summary>
    protected double Ambient => problem.Ambient;

    /// <summary>What leaves.</summary>
    protected ExpandingRates Rates => rates;

    /// <summary>Where the bottle's state goes.</summary>
    protected BottlePath Path { get; } = new(problem, rates);

    /// <summary>Number of tables.</summary>
    protected abstract int Count { get; }

    /// <summary>Forgets all tables, where what leaves is something else than before.</summary>
    public abstract void Clear();

    /// <summary>The table of the present state.</summary>
    /// <param name="y">State.</param>
    /// <returns>Null where the stream has no way to the surroundings within its data.</returns>
    public abstract ExpansionTable? Now(ReadOnlySpan<double> y);

    /// <summary>The table of a state within the step ahead.</summary>
    /// <param name="y">State.</param>
    /// <param name="now">State at the start of the step.</param>
    /// <param name="mayMake">Whether one may be made for this state alone.</param>
    /// <returns>Null where there is none of the same kind of stream.</returns>
    public abstract ExpansionTable? Ahead(ReadOnlySpan<double> y, ReadOnlySpan<double> now, bool mayMake);

    /// <summary>Makes tables as far as a step reaches, and further where the state there can be told. There is a table of the present state.</summary>
    /// <param name="y">State at its start.</param>
    /// <param name="rate">Its rates.</param>
    /// <param name="step">Size of the step, s.</param>
    /// <param name="largest">Size of the largest step allowed here, s.</param>
    public void Reach(ReadOnlySpan<double> y, ReadOnlySpan<double> rate, double step, double largest)
    {
        var flow = rate[rates.Out];
        if (!(flow > 0) || !Path.TryFollow(y, flow, flow * step, 1, state) || !Path.TryDraw(state, out var end) || !IsShort(y, state, end)) return;
        var steps = (int)Math.Max(Math.Round(Steps * largest / step), 1);
        if (!TryAdd(y, flow, flow * step, steps) && steps > 1) TryAdd(y, flow, flow * step, 1);
    }

    /// <summary>Whether the tables do not reach to the end of a step.</summary>
    /// <param name="y">State at its start.</param>
    /// <param name="end">State at its end.</param>
    /// <param name="draw">What is drawn then.</param>
    protected abstract bool IsShort(ReadOnlySpan<double> y, ReadOnlySpan<double> end, in Draw draw);

    /// <summary>Makes the table of a state and keeps it.</summary>
    /// <param name="y">State.</param>
    /// <param name="draw">What is drawn.</param>
    /// <returns>False where there is none of the same kind of stream.</returns>
    protected abstract bool TryKeep(ReadOnlySpan<double> y, in Draw draw);

    /// <summary>Makes the table of a state.</summary>
    /// <param name="y">State.</param>
    /// <param name="top">Highest absolute pressure, Pa.</param>
    /// <returns>Null where there is none within the data.</returns>
    protected ExpansionTable? Build(ReadOnlySpan<double> y, double top) =>
        problem.Bottle.Stream(y[..problem.Bottle.Length], rates.IsLiquid, 0.5 * problem.Ambient) is { } stream ? ExpansionTable.TryBuild(stream, top, problem.Ambient, problem.Nozzles) : null;

    bool TryAdd(ReadOnlySpan<double> y, double flow, double perStep, int steps)
    {
        // The first two need a third between them.
        foreach (var part in Count + 1 < TableKnots.Least ? [0.5, 1.0] : (ReadOnlySpan<double>)[1.0])
            if (!Path.TryFollow(y, flow, part * steps * perStep, Math.Min((int)Math.Ceiling(part * steps), MostSteps), state) || !Path.TryDraw(state, out var draw) || !TryKeep(state, draw)) return false;
        return true;
    }
}
