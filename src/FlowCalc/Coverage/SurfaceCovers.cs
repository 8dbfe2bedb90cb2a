using System.Collections.Immutable;
using FlowCalc.Layouts;
using FlowCalc.Layouts.Coverage;
using UnitsNet;

namespace FlowCalc.Coverage;

/// <summary>Puts the cones of the nozzles on a surface.</summary>
static class SurfaceCovers
{
    // Less of a surface is a rounding error and no footprint.
    const double LeastPart = 1e-9;

    /// <summary>The cover of a surface; its footprints are added to those of the nozzles.</summary>
    public static SurfaceCover Of(
        Layout layout, Surface surface, int index, ImmutableArray<NozzleSpray> sprays, ImmutableArray<Footprint>.Builder[] footprints, CancellationToken cancellationToken)
    {
        var plane = surface.Plane;
        List<(int At, SprayCone Cone, ConeSection Section)> reaching = [];
        for (var at = 0; at < sprays.Length; at++)
            if (sprays[at].Cone is { } cone && surface.IsBefore(cone.Tip) && LayoutCoverage.Concerns(surface.Zone, ((Nozzle)layout.Points[sprays[at].Point]).Zone) && ConeSection.Of(cone, plane) is { } section)
                reaching.Add((at, cone, section));
        var (single, once, twice) = SurfaceStrips.Measure(plane, [.. reaching.Select(one => one.Cone)], cancellationToken);

        var nozzles = ImmutableArray.CreateBuilder<int>();
        double? least = 0, most = 0;
        for (var i = 0; i < reaching.Count; i++)
        {
            if (single[i] <= LeastPart * plane.Area) continue;
            var (at, _, section) = reaching[i];
            var footprint = FootprintOf(index, section, single[i]);
            footprints[at].Add(footprint);
            nozzles.Add(sprays[at].Point);
            var part = single[i] / plane.Area;
            least += sprays[at].Flow is { } low ? footprint.Density(low.Least) * part : null;
            most += sprays[at].Flow is { } high ? footprint.Density(high.Most) * part : null;
        }
        // Rounding alone may make a face that is covered whole more than itself.
        return new(surface, Area.FromSquareMeters(plane.Area), Area.FromSquareMeters(Math.Min(once, plane.Area)), Area.FromSquareMeters(twice), nozzles.DrainToImmutable(), least, most);
    }

    static Footprint FootprintOf(int surface, ConeSection section, double onSurface)
    {
        var ellipse = section.Ellipse;
        return new(
            surface, Length.FromMeters(section.Height), Angle.FromRadians(section.Tilt), section.Distance is { } distance ? Length.FromMeters(distance) : null,
            ellipse is null ? null : Length.FromMeters(ellipse.SemiMajor), ellipse is null ? null : Length.FromMeters(ellipse.SemiMinor),
            ellipse is null ? null : new Place(Length.FromMeters(ellipse.Centre.X), Length.FromMeters(ellipse.Centre.Y), Length.FromMeters(ellipse.Centre.Z)),
            ellipse is null ? null : Area.FromSquareMeters(ellipse.Area), Area.FromSquareMeters(onSurface));
    }
}
