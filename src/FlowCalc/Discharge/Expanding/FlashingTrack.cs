using FlowCalc.Agents;

namespace FlowCalc.Discharge;

/// <summary>The tables of an agent that condenses or flashes: its bottle's states and their tables follow one way, and serve ahead on it.</summary>
/// <remarks>
/// By the agent that has left the bottles a bottle's state is a smooth function, whatever the flow does; so is each number of a table. States ahead come from the
/// bottle's own rates, and a table between is used only while the state that it stands for is the present one.
/// </remarks>
/// <param name="problem">The discharge.</param>
/// <param name="rates">Its rates, which tell what leaves.</param>
internal sealed class FlashingTrack(ExpandingProblem problem, ExpandingRates rates) : TableTrack(problem, rates)
{
    const int Kept = 8;

    // How far the state that a table stands for may lie from the present one, where a stream hangs on more than one thing: parts of the temperature, and of what is in the agent.
    const double NearTemperature = 2e-5;
    const double NearRest = 1e-3;

    readonly TableKnots knots = new();
    bool hasLiquid;

    /// <inheritdoc/>
    protected override int Count => knots.Count;

    /// <inheritdoc/>
    public override void Clear() => knots.Clear();

    /// <inheritdoc/>
    public override ExpansionTable? Now(ReadOnlySpan<double> y)
    {
        if (!Path.TryDraw(y, out var draw)) return null;
        hasLiquid = draw.LiquidVolume > 0;
        if (Between(y, draw, isPresent: true) is { } table) return table;
        if (Make(y, draw, 0) is not { } own) return null;
        knots.Clear();
        knots.Add(own, Kept);
        return own.Table;
    }

    /// <inheritdoc/>
    public override ExpansionTable? Ahead(ReadOnlySpan<double> y, ReadOnlySpan<double> now, bool mayMake)
    {
        if (!Path.TryDraw(y, out var draw)) return null;
        var isAlike = draw.LiquidVolume > 0 == hasLiquid;
        if (isAlike && Between(y, draw, isPresent: false) is { } table) return table;
        // An outlet in liquid has no such stream any more where there is none; one in gas goes on.
        return mayMake && (isAlike || !Rates.IsLiquid) && Path.TryDraw(now, out var start) ? Make(y, draw, Rates.Drive(start))?.Table : null;
    }

    /// <inheritdoc/>
    protected override bool IsShort(ReadOnlySpan<double> y, ReadOnlySpan<double> end, in Draw draw)
    {
        if (!Path.TryDraw(y, out var start)) return false;
        var (from, to) = (Place(y, start), Place(end, draw));
        if (knots.Count >= TableKnots.Least && (to - from) * knots.Direction < 0)
        {
            // The way has turned round, as when a shell warms what is left.
            if (Make(y, start, 0) is not { } own) return false;
            knots.Clear();
            knots.Add(own, Kept);
        }
        return !knots.IsWithin(to);
    }

    /// <inheritdoc/>
    protected override bool TryKeep(ReadOnlySpan<double> y, in Draw draw)
    {
        if (draw.LiquidVolume > 0 != hasLiquid || Make(y, draw, 0) is not { } knot) return false;
        knots.Add(knot, Kept);
        return true;
    }

    double Place(ReadOnlySpan<double> y, in Draw draw) => double.IsNaN(draw.Key) ? y[Rates.Out] : draw.Key;

    TableKnot? Make(ReadOnlySpan<double> y, in Draw draw, double least) =>
        Build(y, ExpansionTable.Top(Math.Max(Rates.Drive(draw), least), Ambient)) is { } table
            ? new(Place(y, draw), table, draw.Temperature, 1 - draw.AgentPart, draw.LiquidVolume > 0)
            : null;

    ExpansionTable? Between(ReadOnlySpan<double> y, in Draw draw, bool isPresent)
    {
        var place = Place(y, draw);
        var reach = Math.Log(Rates.Drive(draw));
        // What alone it hangs on may stay the same throughout, as in a bottle that keeps its temperature.
        if (!double.IsNaN(draw.Key) && knots.Count > 0 && knots.Last is var same && same.HasLiquid == hasLiquid && TableKnots.IsSame(place, same.Place) && reach <= same.Table.LogTop) return same.Table;
        if (knots.Between(place, hasLiquid, farthest: double.PositiveInfinity) is not { } between) return null;
        if (isPresent && double.IsNaN(draw.Key)
            && !(Math.Abs(between.Temperature - draw.Temperature) < NearTemperature * draw.Temperature && Math.Abs(between.Rest - 1 + draw.AgentPart) <= NearRest * (1 - draw.AgentPart))) return null;
        return reach > between.Table.LogTop ? null : between.Table;
    }
}
