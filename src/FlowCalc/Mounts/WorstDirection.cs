using System.Collections.Immutable;

namespace FlowCalc.Mounts;

/// <summary>The direction in which a load is worst, searched over the whole sphere with a proof.</summary>
/// <remarks>
/// <para>
/// Every use of a mount is a convex function of the force that scales with it: pulls, shears, and sums and greater ones of these. For such a function u and a direction d within
/// a triangle of directions v: d·|s| = s, s the point of the flat triangle below it, s = Σ λ·v with Σ λ = 1; so u(d) = u(s)/|s| ≤ max u(v)/|s|, and |s| is at least
/// the distance of the flat triangle from the middle. Triangles that this bound leaves below the best found are dropped, the others divided in four, until the bound is within
/// <see cref="Tolerance"/>; the best direction is then moved on by steps that halve.
/// </para>
/// <para>Derived here: branch and bound with the homogeneity of the function for the bound.</para>
/// </remarks>
public static class WorstDirection
{
    /// <summary>No direction has more than the answer by over this part, dimensionless.</summary>
    public const double Tolerance = 1e-4;

    // A function that is the same in every direction keeps all triangles: 8·4^10 of them are far under the tolerance.
    const int MostLevels = 12;
    const int MostPatches = 200_000;

    /// <summary>Finds the direction of length 1 in which a function is greatest.</summary>
    /// <param name="use">A convex function of the direction that scales with its length, 0 or more.</param>
    /// <param name="cancellationToken">Asked throughout.</param>
    /// <returns>The direction, the function there, and a bound that no direction exceeds.</returns>
    /// <exception cref="OperationCanceledException">The token was cancelled.</exception>
    public static (Direction Direction, double Value, double Bound) Of(Func<Direction, double> use, CancellationToken cancellationToken = default)
    {
        ArgumentNullException.ThrowIfNull(use);
        var (best, most) = (new Direction(0, 0, 1), use(new(0, 0, 1)));
        List<SpherePatch> open = [.. Octants.Select(octant => Patch(octant.A, octant.B, octant.C))];
        double bound = open.Max(patch => patch.Bound), dropped = 0;
        for (var level = 0; level < MostLevels && bound > most * (1 + Tolerance) && open.Count < MostPatches; level++)
        {
            List<SpherePatch> next = [];
            foreach (var patch in open)
            {
                cancellationToken.ThrowIfCancellationRequested();
                if (patch.Bound <= most * (1 + Tolerance))
                {
                    dropped = Math.Max(dropped, patch.Bound);
                    continue;
                }
                var (ab, bc, ca) = (Middle(patch.A, patch.B), Middle(patch.B, patch.C), Middle(patch.C, patch.A));
                next.AddRange([Patch(patch.A, ab, ca), Patch(ab, patch.B, bc), Patch(ca, bc, patch.C), Patch(ab, bc, ca)]);
            }
            open = next;
            bound = Math.Max(dropped, open.Count == 0 ? 0 : open.Max(patch => patch.Bound));
        }
        (best, most) = Climb(use, best, most);
        return (best, most, Math.Max(bound, most));

        SpherePatch Patch(Direction a, Direction b, Direction c) => new(a, b, c, Math.Max(At(a), Math.Max(At(b), At(c))) / SpherePatch.Depth(a, b, c));

        double At(Direction direction)
        {
            var value = use(direction);
            // A hair more is no better: equal directions keep the first, whatever the last digit says.
            if (value > most * (1 + 1e-12)) (best, most) = (direction, value);
            return value;
        }
    }

    static ImmutableArray<(Direction A, Direction B, Direction C)> Octants { get; } =
    [
        .. from x in (double[])[1, -1] from y in (double[])[1, -1] from z in (double[])[1, -1]
           select (new Direction(x, 0, 0), new Direction(0, y, 0), new Direction(0, 0, z)),
    ];

    static Direction Middle(Direction a, Direction b) => (a + b).ToUnit();

    // From within the tolerance up to the last digits that matter; what a kink holds back is within the tolerance all the same.
    static (Direction, double) Climb(Func<Direction, double> use, Direction best, double most)
    {
        for (var step = 0.01; step > 1e-8; step /= 2)
        {
            var hasMoved = true;
            while (hasMoved)
            {
                hasMoved = false;
                var across = best.Cross(Math.Abs(best.X) < 0.7 ? new(1, 0, 0) : new(0, 1, 0)).ToUnit();
                var up = best.Cross(across);
                foreach (var (a, b) in ((double, double)[])[(1, 0), (-1, 0), (0, 1), (0, -1), (1, 1), (-1, 1), (1, -1), (-1, -1)])
                {
                    var moved = (best + a * step * across + b * step * up).ToUnit();
                    var value = use(moved);
                    if (value <= most * (1 + 1e-13)) continue;
                    (best, most, hasMoved) = (moved, value, true);
                    break;
                }
            }
        }
        return (best, most);
    }
}
