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

    /// <summary>The greatest of some lengths √((A·a)² + (B·a)²); its peak is the root of the larger eigenvalue of their Gram matrix, exactly.</summary>
    public LoadMeasure(ImmutableArray<(Direction A, Direction B)> pairs)
    {
        of = acceleration =>
        {
            var most = 0.0;
            foreach (var (a, b) in pairs)
            {
                var (along, across) = (a.Dot(acceleration), b.Dot(acceleration));
                most = Math.Max(most, Math.Sqrt(along * along + across * across));
            }
            return most;
        };
        peak = pairs.Select(pair => Greatest(pair.A, pair.B)).MaxBy(found => found.Value);
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

    // a = (x·A + y·B) of length 1 with (x, y) the eigenvector of [A·A, A·B; A·B, B·B].
    static (Direction Direction, double Value, double Bound) Greatest(Direction a, Direction b)
    {
        var (aa, bb, ab) = (a.Dot(a), b.Dot(b), a.Dot(b));
        var half = Math.Atan2(2 * ab, aa - bb) / 2;
        var direction = Math.Cos(half) * a + Math.Sin(half) * b;
        var value = Math.Sqrt(Math.Max(0, (aa + bb) / 2 + Math.Sqrt((aa - bb) * (aa - bb) / 4 + ab * ab)));
        return direction.Length > 0 ? (direction.ToUnit(), value, value) : (new(0, 0, 1), 0, 0);
    }

    (Direction, double, double) Longest()
    {
        var longest = rows.MaxBy(row => row.Length);
        return longest.Length > 0 ? (longest.ToUnit(), longest.Length, longest.Length) : (new(0, 0, 1), 0, 0);
    }
}
