using System.Collections.Immutable;
using FlowCalc.Layouts;
using FlowCalc.Layouts.Coverage;
using UnitsNet;

namespace FlowCalc.Coverage;

/// <summary>Resolves place, aim and spray of every nozzle.</summary>
static class NozzleSprays
{
    // Nothing can be said of geometry where no nozzle has any of it, so that nothing is missed then.
    public static ImmutableArray<NozzleSpray> Of(Layout layout, CoveragePlan plan, ZoneMasses masses, CoverageNotes notes)
    {
        var targets = plan.Targets.ToDictionary(target => target.Id, target => target.At, StringComparer.Ordinal);
        var types = layout.Nozzles.ToDictionary(type => type.Name, type => type.Spray, StringComparer.Ordinal);
        var isAsked = !plan.Surfaces.IsEmpty || !plan.Targets.IsEmpty || !plan.Persons.IsEmpty;
        List<string> lacking = [];
        var sprays = ImmutableArray.CreateBuilder<NozzleSpray>();
        for (var point = 0; point < layout.Points.Length; point++)
        {
            if (layout.Points[point] is not Nozzle nozzle) continue;
            var spray = nozzle.Spray ?? (nozzle.Type is { } type ? types.GetValueOrDefault(type) : null);
            var (axis, aimed) = Axis(nozzle, targets);
            SprayCone? cone = spray is not null && axis is { } way && nozzle.At is { } at ? new(SurfacePlane.Of(at), way, spray.Angle.Radians / 2) : null;
            if (cone is null && isAsked) lacking.Add(nozzle.Id);
            sprays.Add(new(point, axis, spray, aimed ?? (cone is { } known ? FirstMet(known, plan, nozzle.Zone) : null), masses.FlowOf(point), []) { Cone = cone });
        }
        if (lacking.Count > 0) notes.NotAnswer($"where the spray goes of {Named(lacking)}: at, aim and spray are needed");
        return sprays.DrainToImmutable();
    }

    static (Direction? Axis, Length? Aimed) Axis(Nozzle nozzle, Dictionary<string, Place> targets)
    {
        if (nozzle.Aim is not { } aim) return (null, null);
        if (aim.Direction is { } direction) return (direction.ToUnit(), null);
        if (nozzle.At is not { } from || (aim.Place ?? (aim.Target is { } id && targets.TryGetValue(id, out var there) ? there : null)) is not { } to) return (null, null);
        var way = SurfacePlane.Of(to) - SurfacePlane.Of(from);
        return (way.ToUnit(), Length.FromMeters(way.Length));
    }

    static Length? FirstMet(in SprayCone cone, CoveragePlan plan, string? zone)
    {
        double? first = null;
        foreach (var surface in plan.Surfaces)
        {
            if (!LayoutCoverage.Concerns(surface.Zone, zone) || !surface.IsBefore(cone.Tip)) continue;
            var plane = surface.Plane;
            if (ConeSection.Of(cone, plane)?.Distance is not { } distance || distance >= first) continue;
            var met = cone.Tip + distance * cone.Axis - plane.Origin;
            if (plane.Holds(met.Dot(plane.Along), met.Dot(plane.Across))) first = distance;
        }
        return first is { } known ? Length.FromMeters(known) : null;
    }

    static string Named(List<string> ids) => ids.Count <= 3 ? string.Join(", ", ids) : $"{ids[0]}, {ids[1]}, {ids[2]} and {ids.Count - 3} more";
}
