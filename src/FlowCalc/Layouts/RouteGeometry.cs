using System.Collections.Immutable;
using System.Diagnostics.CodeAnalysis;
using UnitsNet;

namespace FlowCalc.Layouts;

/// <summary>Lays a tube along straight lines from place to place, with an arc in every corner.</summary>
/// <remarks>
/// An arc of radius R that turns by θ touches both lines R·tan(θ/2) before and behind the corner and is R·θ long (plane geometry).
/// The developed length is the sum of the straights and the arcs.
/// </remarks>
static class RouteGeometry
{
    const double LeastDistance = 1e-6, LeastTurn = 0.1 * Math.PI / 180, MostTurn = 179.9 * Math.PI / 180;
    const double HalfTurn = 1e-6;

    /// <summary>Lays the tube.</summary>
    /// <param name="places">The start, the corners and the end: two or more.</param>
    /// <param name="radius">Radius of the centre line in every corner, m, over 0; null where there is none.</param>
    /// <param name="laid">The way; a turn under 0.1° counts as straight on.</param>
    /// <param name="flaw">Why there is no way, where there is none.</param>
    /// <returns>Whether the tube can be laid; straights that are negative singly, where arcs overlap, do not prevent it.</returns>
    public static bool TryLay(ReadOnlySpan<Place> places, double? radius, [NotNullWhen(true)] out LaidRoute? laid, out RouteFlaw flaw)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(places.Length, 2);
        laid = null;
        flaw = default;
        var straights = ImmutableArray.CreateBuilder<Length>(places.Length - 1);
        var bends = ImmutableArray.CreateBuilder<Bend>(places.Length - 2);
        var rotations = ImmutableArray.CreateBuilder<Angle>();
        Direction? plane = null;
        var leg = Between(places[0], places[1]);
        var (first, total, straight, arcs) = (leg, 0.0, leg.Length, 0.0);
        if (leg.Length < LeastDistance) return Fails(new RouteFlaw(RouteFlawKind.SamePlace, 1, leg.Length), out flaw);
        for (var i = 1; i < places.Length - 1; i++)
        {
            var next = Between(places[i], places[i + 1]);
            if (next.Length < LeastDistance) return Fails(new RouteFlaw(RouteFlawKind.SamePlace, i + 1, next.Length), out flaw);
            var turn = leg.AngleTo(next);
            if (turn >= MostTurn) return Fails(new RouteFlaw(RouteFlawKind.TurnsBack, i, turn), out flaw);
            if (turn < LeastTurn) straight += next.Length;
            else
            {
                if (radius is not { } bendRadius) return Fails(new RouteFlaw(RouteFlawKind.NoRadius, i, turn), out flaw);
                var tangent = bendRadius * Math.Tan(turn / 2);
                bends.Add(new Bend(Angle.FromRadians(turn), Length.FromMeters(bendRadius), 1));
                var nextPlane = leg.Cross(next);
                if (plane is { } before) rotations.Add(Angle.FromRadians(Rotation(before, nextPlane, leg)));
                plane = nextPlane;
                straights.Add(Length.FromMeters(straight - tangent));
                total += straight - tangent;
                arcs += bendRadius * turn;
                straight = next.Length - tangent;
            }
            leg = next;
        }
        straights.Add(Length.FromMeters(straight));
        total += straight;
        if (total < 0) return Fails(new RouteFlaw(RouteFlawKind.NoRoom, -1, -total), out flaw);

        var route = new RunRoute(Unit(first), Unit(leg), straights.DrainToImmutable(), [.. places[1..^1]]) { Rotations = rotations.DrainToImmutable() };
        laid = new LaidRoute(total + arcs, places[^1].Z.Meters - places[0].Z.Meters, bends.DrainToImmutable(), route);
        return true;
    }

    // Half a turn has no side: it is +180°, whichever way rounding would have it.
    static double Rotation(Direction from, Direction to, Direction about)
    {
        var rotation = Math.Atan2(about.Dot(from.Cross(to)) / about.Length, from.Dot(to));
        return rotation < -Math.PI + HalfTurn ? Math.PI : rotation;
    }

    static Direction Between(in Place from, in Place to) =>
        new(to.X.Meters - from.X.Meters, to.Y.Meters - from.Y.Meters, to.Z.Meters - from.Z.Meters);

    static Direction Unit(Direction direction)
    {
        var length = direction.Length;
        return new Direction(direction.X / length, direction.Y / length, direction.Z / length);
    }

    static bool Fails(RouteFlaw why, out RouteFlaw flaw)
    {
        flaw = why;
        return false;
    }
}
