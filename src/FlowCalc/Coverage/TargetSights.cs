using System.Collections.Immutable;
using FlowCalc.Layouts;
using FlowCalc.Layouts.Coverage;
using UnitsNet;

namespace FlowCalc.Coverage;

/// <summary>How nozzles stand to targets and persons, and what bodies hide.</summary>
sealed class TargetSights(Layout layout, ImmutableArray<NozzleSpray> sprays, ImmutableArray<Body> bodies, BodyBox[] boxes)
{
    // A distance on the edge of a range is in it.
    const double Slack = 1e-9;

    /// <summary>How every nozzle of its zone stands to a target.</summary>
    public TargetCover Of(Target target, CancellationToken cancellationToken)
    {
        var place = SurfacePlane.Of(target.At);
        var sights = ImmutableArray.CreateBuilder<TargetSight>();
        foreach (var spray in sprays)
        {
            cancellationToken.ThrowIfCancellationRequested();
            if (spray is not { Cone: { } cone, Spray: { } told } || !LayoutCoverage.Concerns(target.Zone, ((Nozzle)layout.Points[spray.Point]).Zone)) continue;
            var distance = (place - cone.Tip).Length;
            var isInRange = !(distance < told.Nearest?.Meters - Slack || distance > told.Farthest?.Meters + Slack);
            sights.Add(new(spray.Point, Length.FromMeters(distance), Angle.FromRadians(cone.AngleTo(place)), cone.Holds(place), isInRange, HiddenBy(cone.Tip, place)));
        }
        return new(target, sights.DrainToImmutable());
    }

    /// <summary>Which nozzle of any zone points most at a person, for a jet does not stop where a zone does; one behind a body does not.</summary>
    public PersonAim AimAt(Target person, CancellationToken cancellationToken)
    {
        var place = SurfacePlane.Of(person.At);
        var worst = new PersonAim(person, null, null, null);
        foreach (var spray in sprays)
        {
            cancellationToken.ThrowIfCancellationRequested();
            if (spray.Axis is not { } axis || layout.Points[spray.Point] is not Nozzle { At: { } at }) continue;
            var tip = SurfacePlane.Of(at);
            var angle = Angle.FromRadians(new SprayCone(tip, axis, 0).AngleTo(place));
            if (angle >= worst.OffAxis || IsShielded(tip, place)) continue;
            worst = new(person, spray.Point, angle, Length.FromMeters((place - tip).Length));
        }
        return worst;
    }

    // A body that has the nozzle or the face in it, such as a seat or a panel drawn as a box, shields nobody.
    bool IsShielded(Direction nozzle, Direction face) => boxes.Any(box => box.Hides(nozzle, face) && !box.Holds(nozzle) && !box.Holds(face));

    string? HiddenBy(Direction from, Direction to)
    {
        for (var i = 0; i < boxes.Length; i++)
            if (boxes[i].Hides(from, to)) return bodies[i].Id;
        return null;
    }
}
