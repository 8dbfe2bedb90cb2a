using System.Collections.Immutable;
using System.Text.Json;
using FlowCalc.Bottles;
using FlowCalc.Layouts.Mounts;
using UnitsNet;

namespace FlowCalc.Layouts.Reading.Mounts;

/// <summary>The members of a strap.</summary>
enum MountStrapField
{
    At,
    Width,
    Thickness,
    Material,
    Pretension,
    Wrap,
    Tightened,
    Note,
}

/// <summary>The members of an end stop.</summary>
enum EndStopField
{
    End,
    Capacity,
    Note,
}

/// <summary>Reads straps and end stops.</summary>
static class StrapReader
{
    /// <summary>Most straps of one mount.</summary>
    public const int MostStraps = 20;

    public static readonly Vocabulary Ends = new("base", "outlet");
    public static readonly Vocabulary Tightening = new("one-end", "both-ends");

    /// <summary>The straps; null where they are missing.</summary>
    public static ImmutableArray<MountStrap>? Straps(ReadingContext context, JsonValue element, Bottle? bottle)
    {
        if (element.ValueKind is JsonValueKind.Undefined) return null;
        if (!MassReader.IsList(context, element, MostStraps, "straps", LayoutFields.MountStrap.Listed)) return null;
        var straps = ImmutableArray.CreateBuilder<MountStrap>();
        var number = 0;
        foreach (var entry in element.EnumerateArray())
        {
            number++;
            if (Strap(context, entry, bottle) is not { } strap) continue;
            foreach (var (other, at) in straps.Select((other, at) => (other, at)))
                if (Math.Abs((other.At - strap.At).Meters) < (other.Width + strap.Width).Meters / 2 * (1 - 1e-9))
                {
                    context.Faults.Add(entry, $"strap {number} lies {Math.Abs((other.At - strap.At).Millimeters):0.###} mm from strap {at + 1} and would lie on it: their widths need {(other.Width + strap.Width).Millimeters / 2:0.###} mm");
                    break;
                }
            straps.Add(strap);
        }
        return straps.DrainToImmutable();
    }

    /// <summary>The stops; null where they are missing.</summary>
    public static ImmutableArray<EndStop>? Stops(ReadingContext context, JsonValue element)
    {
        if (element.ValueKind is JsonValueKind.Undefined) return null;
        if (!MassReader.IsList(context, element, 2, "endStops", LayoutFields.EndStop.Listed)) return null;
        var stops = ImmutableArray.CreateBuilder<EndStop>();
        foreach (var entry in element.EnumerateArray())
        {
            if (!LayoutFields.EndStop.TryRead(context, entry, out var members)) continue;
            TextValue.Read(context, members[EndStopField.Note], "a note");
            members.Requires(context, EndStopField.End, $"one of {Ends.Listed}");
            var end = TextValue.Choice(context, members[EndStopField.End], Ends);
            var capacity = QuantityValue.Read(context, members[EndStopField.Capacity], Sizes.StopCapacity);
            if (end < 0) continue;
            if (stops.Any(stop => stop.IsAtOutlet == (end == 1))) context.Faults.Add(entry, $"the end {Ends.Words[end]} has a stop already");
            stops.Add(new EndStop(end == 1, double.IsFinite(capacity) ? Force.FromNewtons(capacity) : null));
        }
        return stops.DrainToImmutable();
    }

    static MountStrap? Strap(ReadingContext context, JsonValue element, Bottle? bottle)
    {
        if (!LayoutFields.MountStrap.TryRead(context, element, out var members)) return null;
        TextValue.Read(context, members[MountStrapField.Note], "a note");
        members.Requires(context, MountStrapField.At, Sizes.StrapPlace);
        members.Requires(context, MountStrapField.Width, Sizes.StrapWidth);
        members.Requires(context, MountStrapField.Thickness, Sizes.StrapThickness);
        members.Requires(context, MountStrapField.Material, MountMaterialReader.Right);
        var at = LengthValue.Read(context, members[MountStrapField.At], Sizes.StrapPlace);
        if (at is { } place && bottle?.Shape is { } shape && Math.Abs(place.Meters) > shape.Length.Meters / 2)
            context.Faults.Add(members[MountStrapField.At], $"read {QuantityValue.Shown(members[MountStrapField.At])}: the bottle ends {shape.Length.Millimeters / 2:0.###} mm from its middle");
        var width = LengthValue.Read(context, members[MountStrapField.Width], Sizes.StrapWidth);
        var thickness = LengthValue.Read(context, members[MountStrapField.Thickness], Sizes.StrapThickness);
        var material = MountMaterialReader.Read(context, members[MountStrapField.Material]);
        var pretension = QuantityValue.Read(context, members[MountStrapField.Pretension], Sizes.Pretension);
        var wrap = QuantityValue.Read(context, members[MountStrapField.Wrap], Sizes.Wrap);
        var tightened = TextValue.Choice(context, members[MountStrapField.Tightened], Tightening);
        return at is { } a && width is { } w && thickness is { } t && material is not null
            ? new MountStrap(a, w, t, material, double.IsFinite(pretension) ? Force.FromNewtons(pretension) : null, double.IsFinite(wrap) ? Angle.FromRadians(wrap) : null, tightened == 1)
            : null;
    }
}
