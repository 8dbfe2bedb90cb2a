using FlowCalc.Agents;

namespace FlowCalc.Discharge;

/// <summary>The stream's tables along a discharge: made for a few states that the bottle is going to have, and put together for those between.</summary>
/// <remarks>
/// By the agent that has left the bottles a bottle's state is a smooth function, whatever the flow does; so is each number of a table. States ahead come from the
/// bottle's own rates, and a table between is used only while the state that it stands for is the present one.
/// </remarks>
/// <param name="problem">The discharge.</param>
/// <param name="rates">Its rates, which tell what leaves.</param>
internal sealed class TableTrack(ExpandingProblem problem, ExpandingRates rates)
{
    // So many tables go into one between, and so many are kept.
    const int Most = 4;
    const int Least = 3;
    const int Kept = 8;

    // Of the way between two tables: how far beyond the last one they serve, and how near two are too near to tell a slope.
    const double Beyond = 0.1;
    const double TooNear = 0.2;

    // Parts of a place by which two are the same, and how much the weights may come to: more than that is drawn out of next to nothing.
    const double Same = 1e-9;
    const double MostWeight = 3;

    // How far the state that a table stands for may lie from the present one, where a stream hangs on more than one thing: parts of the temperature, and of what is in the agent.
    const double NearTemperature = 2e-5;
    const double NearRest = 1e-3;

    // In the longest steps allowed, how far ahead a table is made.
    const double Steps = 1.6;
    const int MostSteps = 3;

    readonly List<Knot> knots = [];
    readonly BottlePath path = new(problem, rates);
    readonly double[] state = new double[rates.Length];
    bool hasLiquid;

    /// <summary>Forgets all tables, where what leaves is something else than before.</summary>
    public void Clear() => knots.Clear();

    /// <summary>The table of the present state.</summary>
    /// <param name="y">State.</param>
    /// <returns>Null where the stream has no way to the surroundings within its data.</returns>
    public ExpansionTable? Of(ReadOnlySpan<double> y)
    {
        if (!path.TryDraw(y, out var draw)) return null;
        hasLiquid = draw.LiquidVolume > 0;
        if (Between(y, draw, isPresent: true) is { } table) return table;
        if (Build(y, draw, 0) is not { } own) return null;
        knots.Clear();
        knots.Add(own);
        return own.Table;
    }

    /// <summary>The table of a state within the step ahead.</summary>
    /// <param name="y">State.</param>
    /// <param name="now">State at the start of the step.</param>
    /// <param name="mayMake">Whether one may be made for this state alone.</param>
    /// <returns>Null where there is none of the same kind of stream.</returns>
    public ExpansionTable? Ahead(ReadOnlySpan<double> y, ReadOnlySpan<double> now, bool mayMake)
    {
        if (!path.TryDraw(y, out var draw)) return null;
        var isAlike = draw.LiquidVolume > 0 == hasLiquid;
        if (isAlike && Between(y, draw, isPresent: false) is { } table) return table;
        // An outlet in liquid has no such stream any more where there is none; one in gas goes on.
        return mayMake && (isAlike || !rates.IsLiquid) && path.TryDraw(now, out var start) ? Build(y, draw, rates.Drive(start))?.Table : null;
    }

    /// <summary>Makes tables as far as a step reaches, and further where the state there can be told.</summary>
    /// <param name="y">State at its start.</param>
    /// <param name="rate">Its rates.</param>
    /// <param name="step">Size of the step, s.</param>
    /// <param name="largest">Size of the largest step allowed here, s.</param>
    public void Reach(ReadOnlySpan<double> y, ReadOnlySpan<double> rate, double step, double largest)
    {
        var flow = rate[rates.Out];
        if (!(flow > 0) || knots.Count == 0 || !path.TryFollow(y, flow, flow * step, 1, state) || !path.TryDraw(state, out var end) || !path.TryDraw(y, out var start)) return;
        var (from, to) = (Place(y, start), Place(state, end));
        if (knots.Count >= Least && (to - from) * (knots[^1].Place - knots[^2].Place) < 0)
        {
            // The way has turned round, as when a shell warms what is left.
            if (Build(y, start, 0) is not { } own) return;
            knots.Clear();
            knots.Add(own);
        }
        if (knots.Count >= Least && IsWithin(to)) return;
        var steps = (int)Math.Max(Math.Round(Steps * largest / step), 1);
        if (!TryAdd(y, flow, flow * step, steps) && steps > 1) TryAdd(y, flow, flow * step, 1);
    }

    double Place(ReadOnlySpan<double> y, in Draw draw) => double.IsNaN(draw.Key) ? y[rates.Out] : draw.Key;

    bool TryAdd(ReadOnlySpan<double> y, double flow, double perStep, int steps)
    {
        // The first two need a third between them.
        foreach (var part in knots.Count + 1 < Least ? [0.5, 1.0] : (ReadOnlySpan<double>)[1.0])
        {
            if (!path.TryFollow(y, flow, part * steps * perStep, Math.Min((int)Math.Ceiling(part * steps), MostSteps), state) || !path.TryDraw(state, out var draw) || draw.LiquidVolume > 0 != hasLiquid || Build(state, draw, 0) is not { } knot) return false;
            if (!IsSame(knot.Place, knots[^1].Place)) knots.Add(knot);
        }
        if (knots.Count > Kept) knots.RemoveRange(0, knots.Count - Kept);
        return true;
    }

    Knot? Build(ReadOnlySpan<double> y, in Draw draw, double least)
    {
        if (problem.Bottle.Stream(y[..problem.Bottle.Length], rates.IsLiquid, 0.5 * problem.Ambient) is not { } stream) return null;
        var top = ExpansionTable.Top(Math.Max(rates.Drive(draw), least), problem.Ambient);
        return ExpansionTable.TryBuild(stream, top, problem.Ambient, problem.Nozzles) is { } table
            ? new(Place(y, draw), table, draw.Temperature, 1 - draw.AgentPart, draw.LiquidVolume > 0)
            : null;
    }

    static bool IsSame(double place, double other) => Math.Abs(place - other) <= Same * Math.Abs(place);

    // Places rise or fall.
    bool IsWithin(double place)
    {
        var (last, before) = (knots[^1].Place, knots[^2].Place);
        var to = Math.Sign(last - before);
        return to * (place - knots[0].Place) >= 0 && to * (place - last) <= Beyond * Math.Abs(last - before);
    }

    // Lagrange's polynomial through the tables around a place.
    ExpansionTable? Between(ReadOnlySpan<double> y, in Draw draw, bool isPresent)
    {
        var place = Place(y, draw);
        var reach = Math.Log(rates.Drive(draw));
        // What alone it hangs on may stay the same throughout, as in a bottle that keeps its temperature.
        if (!double.IsNaN(draw.Key) && knots.Count > 0 && knots[^1] is var same && same.HasLiquid == hasLiquid && IsSame(place, same.Place) && reach <= same.Table.LogTop) return same.Table;
        if (knots.Count < Least || !IsWithin(place)) return null;
        var above = 1;
        while (above < knots.Count - 1 && (knots[above].Place - place) * (knots[above].Place - knots[above - 1].Place) < 0) above++;
        Span<int> chosen = [above - 1, above, -1, -1];
        var count = 2;
        var near = TooNear * Math.Abs(knots[above].Place - knots[above - 1].Place);
        for (int before = above - 2, after = above + 1; count < Most && (before >= 0 || after < knots.Count);)
        {
            var isAfter = before < 0 || after < knots.Count && Math.Abs(knots[after].Place - place) < Math.Abs(place - knots[before].Place);
            var next = isAfter ? after++ : before--;
            var isApart = true;
            foreach (var one in chosen[..count]) isApart &= Math.Abs(knots[next].Place - knots[one].Place) >= near;
            if (isApart) chosen[count++] = next;
        }
        if (count < Least) return null;
        var (tables, weights) = (new ExpansionTable[count], new double[count]);
        double temperature = 0, rest = 0, sum = 0;
        for (var i = 0; i < count; i++)
        {
            var knot = knots[chosen[i]];
            if (knot.HasLiquid != hasLiquid || i > 0 && !knot.Table.IsLike(tables[0])) return null;
            (tables[i], weights[i]) = (knot.Table, 1);
            for (var k = 0; k < count; k++)
                if (k != i) weights[i] *= (place - knots[chosen[k]].Place) / (knot.Place - knots[chosen[k]].Place);
            sum += Math.Abs(weights[i]);
            temperature += weights[i] * knot.Temperature;
            rest += weights[i] * knot.Rest;
        }
        if (!(sum < MostWeight)) return null;
        if (isPresent && double.IsNaN(draw.Key)
            && !(Math.Abs(temperature - draw.Temperature) < NearTemperature * draw.Temperature && Math.Abs(rest - 1 + draw.AgentPart) <= NearRest * (1 - draw.AgentPart))) return null;
        var table = ExpansionTable.Mixed(tables, weights);
        return reach > table.LogTop ? null : table;
    }

    readonly record struct Knot(double Place, ExpansionTable Table, double Temperature, double Rest, bool HasLiquid);
}
