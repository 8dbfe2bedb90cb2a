using FlowCalc.Layouts;

namespace FlowCalc.Explanations;

/// <summary>The way of a run through its corners.</summary>
internal static class RouteSteps
{
    static readonly string[] Axes = ["x", "y", "z"];

    /// <summary>Writes legs, bends, straights and the developed length down.</summary>
    /// <param name="log">Where to; it stands at the run.</param>
    /// <param name="run">The run.</param>
    /// <param name="route">Its route.</param>
    /// <param name="places">Its start, corners and end.</param>
    public static void Add(StepLog log, Run run, RunRoute route, Place[] places)
    {
        var legs = new Direction[places.Length - 1];
        for (var leg = 0; leg < legs.Length; leg++) legs[leg] = Leg(log, $"leg {leg + 1}", places[leg], places[leg + 1]);
        var (bend, terms) = (0, new List<double> { legs[0].Length });
        Direction? plane = null;
        List<(int Straight, double[] Terms)> straights = [];
        for (var corner = 1; corner < legs.Length; corner++)
        {
            var (before, behind) = (legs[corner - 1], legs[corner]);
            if (bend < run.Bends.Length && IsBend(before.AngleTo(behind), run.Bends[bend]))
            {
                var part = $"bend {bend + 1}";
                var normal = Normal(log, part, before, behind);
                Turn(log, part, run.Bends[bend], normal, before, behind);
                if (plane is { } last) Rotation(log, part, route.Rotations[bend - 1].Radians, last, normal, before);
                plane = normal;
                var setback = Arc(log, part, run.Bends[bend]);
                straights.Add((bend, [.. terms, -setback]));
                terms = [-setback];
                bend++;
            }
            terms.Add(behind.Length);
        }
        straights.Add((bend, [.. terms]));
        foreach (var (straight, of) in straights) log.Sum(RouteEquations.Straight, $"straight {straight + 1}", route.Straights[straight].Meters, of);
        log.Sum(RouteEquations.Developed, "run", run.Length.Meters, [.. route.Straights.Take(bend).SelectMany((straight, at) => (double[])[straight.Meters, run.Bends[at].Arcs.Meters]), route.Straights[bend].Meters]);
    }

    // A corner that hardly turns has no bend; that of the bend has its very angle.
    static bool IsBend(double turn, Bend bend) => Math.Abs(turn - bend.Angle.Radians) <= 1e-9;

    static Direction Leg(StepLog log, string part, in Place from, in Place to)
    {
        var dx = log.Add(RouteEquations.LegPart, $"{part}: x", to.X.Meters - from.X.Meters, to.X.Meters, from.X.Meters);
        var dy = log.Add(RouteEquations.LegPart, $"{part}: y", to.Y.Meters - from.Y.Meters, to.Y.Meters, from.Y.Meters);
        var dz = log.Add(RouteEquations.LegPart, $"{part}: z", to.Z.Meters - from.Z.Meters, to.Z.Meters, from.Z.Meters);
        var leg = new Direction(dx, dy, dz);
        log.Add(RouteEquations.LegLength, part, leg.Length, dx, dy, dz);
        return leg;
    }

    static Direction Normal(StepLog log, string part, in Direction a, in Direction b)
    {
        // A zero without a sign.
        var arrow = a.Cross(b);
        var normal = new Direction(arrow.X + 0, arrow.Y + 0, arrow.Z + 0);
        double[] from = [a.X, a.Y, a.Z], to = [b.X, b.Y, b.Z], across = [normal.X, normal.Y, normal.Z];
        for (var axis = 0; axis < 3; axis++)
        {
            var (next, third) = ((axis + 1) % 3, (axis + 2) % 3);
            log.Add(RouteEquations.PlaneNormal, $"{part}: {Axes[axis]}", across[axis], from[next], to[third], from[third], to[next]);
        }
        return normal;
    }

    static void Turn(StepLog log, string part, Bend bend, in Direction n, in Direction a, in Direction b) =>
        log.Add(RouteEquations.Turn, part, bend.Angle.Radians, n.X, n.Y, n.Z, a.X, a.Y, a.Z, b.X, b.Y, b.Z);

    static void Rotation(StepLog log, string part, double rotation, in Direction n, in Direction m, in Direction leg)
    {
        // The sign of half a turn is rounding's.
        var equation = rotation > Math.PI - 1e-6 ? RouteEquations.HalfTurn : RouteEquations.BendRotation;
        log.Add(equation, part, rotation, leg.X, leg.Y, leg.Z, n.X, n.Y, n.Z, m.X, m.Y, m.Z, leg.Length);
    }

    static double Arc(StepLog log, string part, Bend bend)
    {
        var (radius, angle) = (bend.Radius.Meters, bend.Angle.Radians);
        var mark = new Routes.BendMark(UnitsNet.Length.Zero, bend.Angle, bend.Radius, null);
        log.Add(RouteEquations.BendSetback, part, mark.Setback.Meters, radius, angle);
        log.Add(RouteEquations.BendArc, part, mark.Arc.Meters, radius, angle);
        log.Add(RouteEquations.BendGain, part, mark.Gain.Meters, mark.Setback.Meters, mark.Arc.Meters);
        return mark.Setback.Meters;
    }
}
