using FlowCalc.Agents;

namespace FlowCalc.Discharge;

/// <summary>The stream's tables along a discharge: made for a few states that the bottle is going to have, and put together for those between.</summary>
/// <remarks>
/// By the agent that has left the bottles a bottle's state is a smooth function, whatever the flow does; so is each number of a table. States ahead come from the
/// bottle's own rates, and a table between is used only while the state that it stands for is the present one.
/// </remarks>
/// <param name="problem">The discharge.</param>
/// <param name="rates">Its rates, which tell what leaves.</param>
internal sealed class TableTrack(ExpandingProblem problem, ExpandingRates rates) : ITableTrack
{
    const int Kept = 8;

    // How far the state that a table stands for may lie from the present one, where a stream hangs on more than one thing: parts of the temperature, and of what is in the agent.
    const double NearTemperature = 2e-5;
    const double NearRest = 1e-3;

    // In the longest steps allowed, how far ahead a table is made.
    const double Steps = 1.6;
    const int MostSteps = 3;

    readonly TableKnots knots = new();
    readonly BottlePath path = new(problem, rates);
    readonly double[] state = new double[rates.Length];
    bool hasLiquid;

    /// <inheritdoc/>
    public void Clear() => knots.Clear();

    /// <inheritdoc/>
    public ExpansionTable? Of(ReadOnlySpan<double> y)
    {
        if (!path.TryDraw(y, out var draw)) return null;
        hasLiquid = draw.LiquidVolume > 0;
        if (Between(y, draw, isPresent: true) is { } table) return table;
        if (Build(y, draw, 0) is not { } own) return null;
        knots.Clear();
        knots.Add(own, Kept);
        return own.Table;
    }

    /// <inheritdoc/>
    public ExpansionTable? Ahead(ReadOnlySpan<double> y, ReadOnlySpan<double> now, bool mayMake)
    {
        if (!path.TryDraw(y, out var draw)) return null;
        var isAlike = draw.LiquidVolume > 0 == hasLiquid;
        if (isAlike && Between(y, draw, isPresent: false) is { } table) return table;
        // An outlet in liquid has no such stream any more where there is none; one in gas goes on.
        return mayMake && (isAlike || !rates.IsLiquid) && path.TryDraw(now, out var start) ? Build(y, draw, rates.Drive(start))?.Table : null;
    }

    /// <inheritdoc/>
    public void Reach(ReadOnlySpan<double> y, ReadOnlySpan<double> rate, double step, double largest)
    {
        var flow = rate[rates.Out];
        if (!(flow > 0) || knots.Count == 0 || !path.TryFollow(y, flow, flow * step, 1, state) || !path.TryDraw(state, out var end) || !path.TryDraw(y, out var start)) return;
        var (from, to) = (Place(y, start), Place(state, end));
        if (knots.Count >= TableKnots.Least && (to - from) * knots.Direction < 0)
        {
            // The way has turned round, as when a shell warms what is left.
            if (Build(y, start, 0) is not { } own) return;
            knots.Clear();
            knots.Add(own, Kept);
        }
        if (knots.IsWithin(to)) return;
        var steps = (int)Math.Max(Math.Round(Steps * largest / step), 1);
        if (!TryAdd(y, flow, flow * step, steps) && steps > 1) TryAdd(y, flow, flow * step, 1);
    }

    double Place(ReadOnlySpan<double> y, in Draw draw) => double.IsNaN(draw.Key) ? y[rates.Out] : draw.Key;

    bool TryAdd(ReadOnlySpan<double> y, double flow, double perStep, int steps)
    {
        // The first two need a third between them.
        foreach (var part in knots.Count + 1 < TableKnots.Least ? [0.5, 1.0] : (ReadOnlySpan<double>)[1.0])
        {
            if (!path.TryFollow(y, flow, part * steps * perStep, Math.Min((int)Math.Ceiling(part * steps), MostSteps), state) || !path.TryDraw(state, out var draw) || draw.LiquidVolume > 0 != hasLiquid || Build(state, draw, 0) is not { } knot) return false;
            knots.Add(knot, Kept);
        }
        return true;
    }

    TableKnot? Build(ReadOnlySpan<double> y, in Draw draw, double least)
    {
        if (problem.Bottle.Stream(y[..problem.Bottle.Length], rates.IsLiquid, 0.5 * problem.Ambient) is not { } stream) return null;
        var top = ExpansionTable.Top(Math.Max(rates.Drive(draw), least), problem.Ambient);
        return ExpansionTable.TryBuild(stream, top, problem.Ambient, problem.Nozzles) is { } table
            ? new(Place(y, draw), table, draw.Temperature, 1 - draw.AgentPart, draw.LiquidVolume > 0)
            : null;
    }

    ExpansionTable? Between(ReadOnlySpan<double> y, in Draw draw, bool isPresent)
    {
        var place = Place(y, draw);
        var reach = Math.Log(rates.Drive(draw));
        // What alone it hangs on may stay the same throughout, as in a bottle that keeps its temperature.
        if (!double.IsNaN(draw.Key) && knots.Count > 0 && knots.Last is var same && same.HasLiquid == hasLiquid && TableKnots.IsSame(place, same.Place) && reach <= same.Table.LogTop) return same.Table;
        if (knots.Between(place, hasLiquid, farthest: double.PositiveInfinity) is not { } between) return null;
        if (isPresent && double.IsNaN(draw.Key)
            && !(Math.Abs(between.Temperature - draw.Temperature) < NearTemperature * draw.Temperature && Math.Abs(between.Rest - 1 + draw.AgentPart) <= NearRest * (1 - draw.AgentPart))) return null;
        return reach > between.Table.LogTop ? null : between.Table;
    }
}
