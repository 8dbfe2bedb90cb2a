using FlowCalc.Agents;

namespace FlowCalc.Discharge;

/// <summary>A stream's table and what the stream hangs on.</summary>
/// <param name="Place">By what tables between are found.</param>
/// <param name="Table">The table.</param>
/// <param name="Temperature">Temperature of what is drawn, K.</param>
/// <param name="Rest">Part of the stream that is no agent, 0 to 1.</param>
/// <param name="HasLiquid">Whether there is liquid in the bottle.</param>
internal readonly record struct TableKnot(double Place, ExpansionTable Table, double Temperature, double Rest, bool HasLiquid);

/// <summary>Tables of a stream at places that rise or fall, and those between by Lagrange's polynomial through the nearest of them.</summary>
internal sealed class TableKnots
{
    /// <summary>Fewest tables that give one between.</summary>
    public const int Least = 3;

    // So many tables go into one between.
    const int Most = 4;

    // Of the way between two tables: how far beyond the outermost ones they serve, and how near two are too near to tell a slope.
    const double Beyond = 0.1;
    const double TooNear = 0.2;

    // Parts of a place by which two are the same, and how much the weights may come to: more than that is drawn out of next to nothing.
    const double Same = 1e-9;
    const double MostWeight = 3;

    readonly List<TableKnot> knots = [];

    /// <summary>Number of tables.</summary>
    public int Count => knots.Count;

    /// <summary>The last one.</summary>
    public TableKnot Last => knots[^1];

    /// <summary>Which way the places go at their end: 1, -1, or 0 of fewer than two.</summary>
    public int Direction => knots.Count > 1 ? Math.Sign(knots[^1].Place - knots[^2].Place) : 0;

    /// <summary>Forgets all tables.</summary>
    public void Clear() => knots.Clear();

    /// <summary>Puts a table at the end, unless there is one of the same place.</summary>
    /// <param name="knot">The table.</param>
    /// <param name="kept">Most tables; the first are forgotten.</param>
    public void Add(in TableKnot knot, int kept)
    {
        if (knots.Count == 0 || !IsSame(knot.Place, knots[^1].Place)) knots.Add(knot);
        if (knots.Count > kept) knots.RemoveRange(0, knots.Count - kept);
    }

    /// <summary>Puts a table at its place among those that rise, unless there is one of the same place.</summary>
    /// <param name="knot">The table.</param>
    /// <param name="kept">Most tables; the farthest one is forgotten.</param>
    public void Insert(in TableKnot knot, int kept)
    {
        var at = knots.Count;
        while (at > 0 && knots[at - 1].Place > knot.Place) at--;
        if (at > 0 && IsSame(knots[at - 1].Place, knot.Place) || at < knots.Count && IsSame(knots[at].Place, knot.Place)) return;
        knots.Insert(at, knot);
        if (knots.Count > kept) knots.RemoveAt(knots[^1].Place - knot.Place > knot.Place - knots[0].Place ? knots.Count - 1 : 0);
    }

    /// <summary>Whether two places are one.</summary>
    /// <param name="place">A place.</param>
    /// <param name="other">Another one.</param>
    public static bool IsSame(double place, double other) => Math.Abs(place - other) <= Same * Math.Abs(place);

    /// <summary>Whether the tables serve a place.</summary>
    /// <param name="place">The place.</param>
    public bool IsWithin(double place)
    {
        if (knots.Count < Least) return false;
        var (to, first, last) = (Direction, knots[0].Place, knots[^1].Place);
        return to * (first - place) <= BeyondFirst * Math.Abs(knots[1].Place - first) && to * (place - last) <= Beyond * Math.Abs(last - knots[^2].Place);
    }

    /// <summary>How far before the first table the tables serve, as a part of the way to the second: 0 where places only go on.</summary>
    public double BeyondFirst { get; init; }

    /// <summary>The table of a place.</summary>
    /// <param name="place">The place.</param>
    /// <param name="hasLiquid">Whether there is liquid in the bottle.</param>
    /// <param name="farthest">Largest difference of temperature between the tables on either side, as a part of the temperature.</param>
    /// <returns>The table, with what else belongs to it; null where the tables give none.</returns>
    public TableKnot? Between(double place, bool hasLiquid, double farthest)
    {
        Span<int> chosen = stackalloc int[Most];
        Span<double> parts = stackalloc double[Most];
        if (Weigh(place, hasLiquid, farthest, chosen, parts) is not (> 0 and var count)) return null;
        var tables = new ExpansionTable[count];
        double temperature = 0, rest = 0;
        for (var i = 0; i < count; i++)
        {
            var knot = knots[chosen[i]];
            tables[i] = knot.Table;
            temperature += parts[i] * knot.Temperature;
            rest += parts[i] * knot.Rest;
        }
        return new(place, ExpansionTable.Mixed(tables, parts[..count]), temperature, rest, hasLiquid);
    }

    /// <summary>Whether <see cref="Between"/> gives a table.</summary>
    /// <param name="place">The place.</param>
    /// <param name="hasLiquid">Whether there is liquid in the bottle.</param>
    /// <param name="farthest">Largest difference of temperature between the tables on either side, as a part of the temperature.</param>
    public bool Serve(double place, bool hasLiquid, double farthest) => Weigh(place, hasLiquid, farthest, stackalloc int[Most], stackalloc double[Most]) > 0;

    // The tables that give one between, and their weights; 0 where they give none.
    int Weigh(double place, bool hasLiquid, double farthest, Span<int> chosen, Span<double> weights)
    {
        if (!IsWithin(place)) return 0;
        var above = 1;
        while (above < knots.Count - 1 && (knots[above].Place - place) * (knots[above].Place - knots[above - 1].Place) < 0) above++;
        if (Math.Abs(knots[above].Temperature - knots[above - 1].Temperature) > farthest * knots[above].Temperature) return 0;
        if (Choose(place, above, chosen) is not (>= Least and var count)) return 0;
        double sum = 0;
        for (var i = 0; i < count; i++)
        {
            var knot = knots[chosen[i]];
            if (knot.HasLiquid != hasLiquid || i > 0 && !knot.Table.IsLike(knots[chosen[0]].Table)) return 0;
            weights[i] = 1;
            for (var k = 0; k < count; k++)
                if (k != i) weights[i] *= (place - knots[chosen[k]].Place) / (knot.Place - knots[chosen[k]].Place);
            sum += Math.Abs(weights[i]);
        }
        return sum < MostWeight ? count : 0;
    }

    // The tables on either side of a place, and the nearest of the others that are not too near to one chosen.
    int Choose(double place, int above, Span<int> chosen)
    {
        (chosen[0], chosen[1]) = (above - 1, above);
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
        return count;
    }
}
