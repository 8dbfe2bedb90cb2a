using FlowCalc.Agents;

namespace FlowCalc.Discharge;

/// <summary>The tables of a gas that never condenses. Its stream hangs on the enthalpy alone, so that a table serves wherever the way comes by, falling or rising again.</summary>
/// <remarks>Tables that are put together have one highest pressure; once the bottle's has fallen far below, new ones with finer nodes take their place.</remarks>
/// <param name="problem">The discharge.</param>
/// <param name="rates">Its rates, which tell what leaves.</param>
internal sealed class GasTrack(ExpandingProblem problem, ExpandingRates rates) : TableTrack(problem, rates)
{
    const int Kept = 32;

    // How far the pressure may fall below the highest of the tables, as a ratio.
    const double Range = 2.7;

    // Of the temperature, between two tables.
    const double Farthest = 0.12;

    readonly TableKnots knots = new() { BeyondFirst = 0.1 };
    double top;

    /// <inheritdoc/>
    protected override int Count => knots.Count;

    /// <inheritdoc/>
    public override void Clear() => top = 0;

    /// <inheritdoc/>
    public override ExpansionTable? Now(ReadOnlySpan<double> y)
    {
        if (!Path.TryDraw(y, out var draw)) return null;
        var own = ExpansionTable.Top(Rates.Drive(draw), Ambient);
        if (Rates.Drive(draw) > top || own * Range < top)
        {
            knots.Clear();
            top = own;
        }
        return Between(draw) ?? Make(y, draw);
    }

    /// <inheritdoc/>
    public override ExpansionTable? Ahead(ReadOnlySpan<double> y, ReadOnlySpan<double> now, bool mayMake)
    {
        if (!Path.TryDraw(y, out var draw)) return null;
        var drive = Rates.Drive(draw);
        if (drive <= top && Between(draw) is { } table) return table;
        if (!mayMake) return null;
        return drive <= top ? Make(y, draw) : Build(y, ExpansionTable.Top(drive, Ambient));
    }

    /// <inheritdoc/>
    protected override bool IsShort(ReadOnlySpan<double> y, ReadOnlySpan<double> end, in Draw draw) => !IsLast(draw) && !knots.Serve(draw.Key, hasLiquid: false, Farthest);

    /// <inheritdoc/>
    protected override bool TryKeep(ReadOnlySpan<double> y, in Draw draw) => Make(y, draw) is not null;

    // A bottle that keeps its temperature may have one enthalpy throughout.
    bool IsLast(in Draw draw) => knots.Count > 0 && TableKnots.IsSame(draw.Key, knots.Last.Place);

    ExpansionTable? Between(in Draw draw) => IsLast(draw) ? knots.Last.Table : knots.Between(draw.Key, hasLiquid: false, Farthest)?.Table;

    ExpansionTable? Make(ReadOnlySpan<double> y, in Draw draw)
    {
        if (Build(y, top) is not { } table) return null;
        knots.Insert(new(draw.Key, table, draw.Temperature, 0, false), Kept);
        return table;
    }
}
