using System.Collections.Immutable;

namespace FlowCalc.Mounts;

/// <summary>A load or a use as a convex function of the acceleration (m/s², mount's axes) that scales with it, and its peak over all directions.</summary>
sealed class LoadMeasure
{
    readonly Func<Direction, double> of;
    readonly ImmutableArray<Direction> rows;
    (Direction Direction, double Value, double Bound)? peak;

    /// <summary>Any such function; its peak is searched.</summary>
    public LoadMeasure(Func<Direction, double> of) => this.of = of;

    /// <summary>The greatest of some rows times the acceleration, 0 where all are under it; its peak is the longest row, exactly.</summary>
    public LoadMeasure(ImmutableArray<Direction> rows)
    {
        this.rows = rows;
        of = acceleration =>
        {
            var most = 0.0;
            foreach (var row in rows) most = Math.Max(most, row.Dot(acceleration));
            return most;
        };
    }

    /// <summary>Its value at an acceleration.</summary>
    public double At(Direction acceleration) => of(acceleration);

    /// <summary>Its value at 1 m/s² in its worst direction, that direction, and what no direction exceeds.</summary>
    public (Direction Direction, double Value, double Bound) Peak(CancellationToken cancellationToken)
    {
        if (peak is { } known) return known;
        var found = rows.IsDefault ? WorstDirection.Of(of, cancellationToken) : Longest();
        peak = found;
        return found;
    }

    (Direction, double, double) Longest()
    {
        var longest = rows.MaxBy(row => row.Length);
        return longest.Length > 0 ? (Vectors.Unit(longest), longest.Length, longest.Length) : (new(0, 0, 1), 0, 0);
    }
}
