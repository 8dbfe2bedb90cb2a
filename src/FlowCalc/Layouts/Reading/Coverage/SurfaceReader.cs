using System.Collections.Immutable;
using System.Text.Json;
using FlowCalc.Layouts.Coverage;
using UnitsNet;

namespace FlowCalc.Layouts.Reading.Coverage;

/// <summary>Reads a surface: a corner with two edges, or all corners.</summary>
static class SurfaceReader
{
    /// <summary>Most corners of one surface.</summary>
    public const int MostCorners = 64;

    // Smaller, or thinner than its edge is long by so much, it is no face.
    const double LeastArea = 1e-10, LeastPart = 1e-9;
    const double MostDefect = 1e-3, LeastFacing = 1e-3;

    /// <summary>The surface; null where something is wrong.</summary>
    public static Surface? Read(ReadingContext context, string name, JsonValue element, NamedEntries<Zone> zones)
    {
        if (!LayoutFields.Surface.TryRead(context, element, out var members)) return null;
        TextValue.Read(context, members[SurfaceField.Note], "a note");
        var zone = ZoneReader.Named(context, members[SurfaceField.Zone], zones);
        var faces = SpaceValue.Direction(context, members[SurfaceField.Faces], Sizes.DirectionPart, mayBeZero: false);
        var corners = Corners(context, members);
        if (corners.IsDefaultOrEmpty) return null;
        var surface = new Surface(name, zone, corners, faces);
        var (plane, place) = (surface.Plane, members.Has(SurfaceField.Corners) ? members[SurfaceField.Corners] : members[SurfaceField.Edges]);
        if (plane.Area < Math.Max(LeastArea, LeastPart * plane.Girth * plane.Girth)) context.Faults.Add(place, "read a surface of no area: its corners stand in one line, in one place, or its edge runs back over itself");
        else if (plane.Defect > MostDefect * plane.Girth) context.Faults.Add(place, $"a corner stands {plane.Defect * 1e3:0.###} mm off the plane of the others: a surface is flat; make several of it");
        else if (plane.CrossesItself()) context.Faults.Add(place, "the edge crosses itself: give the corners in their order round it");
        else if (faces is { } outwards && Math.Abs(outwards.Dot(plane.Normal)) < LeastFacing * outwards.Length) context.Faults.Add(members[SurfaceField.Faces], "read a direction that lies in the surface: faces points out of the side that is to be sprayed");
        else return surface;
        return null;
    }

    static ImmutableArray<Place> Corners(ReadingContext context, in Members<SurfaceField> members)
    {
        const string right = "a surface has corner and edges (two of them), or corners";
        if (members.Has(SurfaceField.Corners))
        {
            members.Refuses(context, SurfaceField.Corner, right);
            members.Refuses(context, SurfaceField.Edges, right);
            return Listed(context, members[SurfaceField.Corners]);
        }
        if (!members.Has(SurfaceField.Corner) && !members.Has(SurfaceField.Edges))
        {
            context.Faults.Add(members.Owner, $"read neither corner with edges nor corners: {right}");
            return [];
        }
        members.Requires(context, SurfaceField.Corner, "the corner that both edges start at, [x, y, z]");
        members.Requires(context, SurfaceField.Edges, "two edges from the corner, each [x, y, z] in lengths");
        var corner = SpaceValue.Place(context, members[SurfaceField.Corner]);
        var (first, second) = Edges(context, members[SurfaceField.Edges]);
        if (corner is not { } one || first is not { } along || second is not { } across) return [];
        return [one, Moved(one, along), Moved(Moved(one, along), across), Moved(one, across)];
    }

    static ImmutableArray<Place> Listed(ReadingContext context, JsonValue element)
    {
        if (element.ValueKind is not JsonValueKind.Array || element.GetArrayLength() is < 3 or > MostCorners)
        {
            context.Faults.Add(element, $"read {Said.Entries(element)}: the corners are an array of 3 to {MostCorners} places [x, y, z], round the edge");
            return [];
        }
        var corners = ImmutableArray.CreateBuilder<Place>();
        var isWhole = true;
        foreach (var entry in element.EnumerateArray())
        {
            if (SpaceValue.Place(context, entry) is not { } place) isWhole = false;
            else if (corners.Contains(place))
            {
                context.Faults.Add(entry, "another corner stands at this place already");
                isWhole = false;
            }
            else corners.Add(place);
        }
        return isWhole ? corners.DrainToImmutable() : [];
    }

    static (Place? First, Place? Second) Edges(ReadingContext context, JsonValue element)
    {
        if (element.ValueKind is JsonValueKind.Undefined) return (null, null);
        if (element.ValueKind is JsonValueKind.Array && element.GetArrayLength() == 2)
            return (SpaceValue.Place(context, element[0], Sizes.Edge), SpaceValue.Place(context, element[1], Sizes.Edge));
        context.Faults.Add(element, $"read {Said.Entries(element)}: two edges from the corner are right, each [x, y, z] in lengths");
        return (null, null);
    }

    static Place Moved(Place from, Place by) => new(Length.FromMeters(from.X.Meters + by.X.Meters), Length.FromMeters(from.Y.Meters + by.Y.Meters), Length.FromMeters(from.Z.Meters + by.Z.Meters));
}
