using System.Text.Json;
using FlowCalc.Layouts.Coverage;

namespace FlowCalc.Layouts.Reading.Coverage;

/// <summary>Reads where a nozzle points.</summary>
static class AimReader
{
    const string Right = "an aim is a direction of three bare numbers [x, y, z], a place of three lengths, or the name of a target of the coverage";

    /// <summary>The aim; null where it is none.</summary>
    /// <param name="context">The reading.</param>
    /// <param name="members">The nozzle.</param>
    /// <param name="at">Where the nozzle is; null where that is not known.</param>
    /// <param name="targets">The targets of the coverage.</param>
    public static NozzleAim? Read(ReadingContext context, in Members<PointField> members, Place? at, NamedEntries<Target> targets)
    {
        var element = members[PointField.Aim];
        switch (element.ValueKind)
        {
            case JsonValueKind.String:
                if (TextValue.Name(context, element, "a target's name") is not { } name) return null;
                if (targets.TryFind(name, out var target))
                {
                    Check(context, members, at, target?.At);
                    return new NozzleAim(null, null, name);
                }
                if (!targets.IsBroken) context.Faults.Add(element, $"read {Said.Name(name)}: not among the targets of the coverage{NearNames.Advice(context, name, targets.Names)}");
                return null;
            case JsonValueKind.Array when IsPlace(element):
                if (SpaceValue.Place(context, element) is not { } place) return null;
                Check(context, members, at, place);
                return new NozzleAim(null, place, null);
            case JsonValueKind.Array:
                return SpaceValue.Direction(context, element, Sizes.DirectionPart, mayBeZero: false) is { } direction ? new NozzleAim(direction, null, null) : null;
            default:
                context.Faults.Add(element, $"read {Said.Value(element)}: {Right}");
                return null;
        }
    }

    static bool IsPlace(JsonValue element)
    {
        foreach (var entry in element.EnumerateArray())
            if (entry.ValueKind is not (JsonValueKind.String or JsonValueKind.Object)) return false;
        return element.GetArrayLength() == 3;
    }

    static void Check(ReadingContext context, in Members<PointField> members, Place? at, Place? to)
    {
        if (!members.Has(PointField.At)) context.Faults.Add(members[PointField.Aim], $"read {Said.Value(members[PointField.Aim])}: a nozzle that aims at a place has a place of its own, at; or give a direction of three bare numbers");
        if (at is { } from && to is { } there && (SurfacePlane.Of(there) - SurfacePlane.Of(from)).Length < 1e-6)
            context.Faults.Add(members[PointField.Aim], $"read {Said.Value(members[PointField.Aim])}: the nozzle is at that place itself, so that it has no direction");
    }
}
