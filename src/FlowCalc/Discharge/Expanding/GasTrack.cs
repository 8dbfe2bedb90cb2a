using FlowCalc.Agents;

namespace FlowCalc.Discharge;

/// <summary>The tables of a gas that never condenses. Its stream hangs on the enthalpy alone, so that a table serves wherever the way comes by, falling or rising again.</summary>
/// <remarks>Tables that are put together have one highest pressure; once the bottle's has fallen far below, new ones with finer nodes take their place.</remarks>
/// <param name="problem">The discharge.</param>
/// <param name="rates">Its rates, which tell what leaves.</param>
internal sealed class GasTrack(ExpandingProblem problem, ExpandingRates rates) : ITableTrack
{
    const int Kept = 32;

    // How far the pressure may fall below the highest of the tables, as a ratio.
    const double Range = 2.7;

    // Of the temperature, between two tables.
    const double Farthest = 0.12;

    // In the longest steps allowed, how far ahead a table is made.
    const double Steps = 1.6;
    const int MostSteps = 3;

    readonly TableKnots knots = new() { BeyondFirst = 0.1 };
    readonly BottlePath path = new(problem, rates);
    readonly double[] state = new double[rates.Length];
    double top;

    /// <inheritdoc/>
    public void Clear() => top = 0;

    /// <inheritdoc/>
    public ExpansionTable? Of(ReadOnlySpan<double> y)
    {
        if (!path.TryDraw(y, out var draw)) return null;
        var own = ExpansionTable.Top(rates.Drive(draw), problem.Ambient);
        if (rates.Drive(draw) > top || own * Range < top)
        {
            knots.Clear();
            top = own;
        }
        return Between(draw) ?? Make(y, draw);
    }

    /// <inheritdoc/>
    public ExpansionTable? Ahead(ReadOnlySpan<double> y, ReadOnlySpan<double> now, bool mayMake) =>
        !path.TryDraw(y, out var draw) ? null
        : rates.Drive(draw) > top ? (mayMake ? Build(y, ExpansionTable.Top(rates.Drive(draw), problem.Ambient)) : null)
        : Between(draw) ?? (mayMake ? Make(y, draw) : null);

    /// <inheritdoc/>
    public void Reach(ReadOnlySpan<double> y, ReadOnlySpan<double> rate, double step, double largest)
    {
        var flow = rate[rates.Out];
        if (!(flow > 0) || !path.TryFollow(y, flow, flow * step, 1, state) || !path.TryDraw(state, out var end) || Between(end) is not null) return;
        var steps = (int)Math.Max(Math.Round(Steps * largest / step), 1);
        if (!TryAdd(y, flow, flow * step, steps) && steps > 1) TryAdd(y, flow, flow * step, 1);
    }

    bool TryAdd(ReadOnlySpan<double> y, double flow, double perStep, int steps)
    {
        // The first two need a third between them.
        foreach (var part in knots.Count + 1 < TableKnots.Least ? [0.5, 1.0] : (ReadOnlySpan<double>)[1.0])
            if (!path.TryFollow(y, flow, part * steps * perStep, Math.Min((int)Math.Ceiling(part * steps), MostSteps), state) || !path.TryDraw(state, out var draw) || Make(state, draw) is null) return false;
        return true;
    }

    ExpansionTable? Between(in Draw draw)
    {
        if (knots.Count > 0 && TableKnots.IsSame(draw.Key, knots.Last.Place)) return knots.Last.Table;
        return knots.Between(draw.Key, hasLiquid: false, Farthest)?.Table;
    }

    ExpansionTable? Make(ReadOnlySpan<double> y, in Draw draw)
    {
        if (Build(y, top) is not { } table) return null;
        knots.Insert(new(draw.Key, table, draw.Temperature, 0, false), Kept);
        return table;
    }

    ExpansionTable? Build(ReadOnlySpan<double> y, double highest) =>
        problem.Bottle.Stream(y[..problem.Bottle.Length], rates.IsLiquid, 0.5 * problem.Ambient) is { } stream ? ExpansionTable.TryBuild(stream, highest, problem.Ambient, problem.Nozzles) : null;
}
