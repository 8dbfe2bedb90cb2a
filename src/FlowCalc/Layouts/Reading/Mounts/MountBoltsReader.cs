using System.Collections.Immutable;
using System.Text.Json;
using FlowCalc.Layouts.Mounts;
using FlowCalc.Stock;
using UnitsNet;

namespace FlowCalc.Layouts.Reading.Mounts;

/// <summary>The members of a group of bolts.</summary>
enum MountBoltsField
{
    Size,
    Class,
    At,
    Rectangle,
    Head,
    Washer,
    Edge,
    Preload,
    Thread,
    Note,
}

/// <summary>The members of a tapped hole.</summary>
enum TappedHoleField
{
    Engagement,
    Material,
    Note,
}

/// <summary>Reads a group of bolts.</summary>
static class MountBoltsReader
{
    /// <summary>Most bolts of one group.</summary>
    public const int MostBolts = 64;

    public static readonly Vocabulary Heads = new("hexagon", "countersunk");
    public static readonly Vocabulary SizeNames = new([.. BoltCatalogue.Sizes.Select(size => size.Id)]);
    public static readonly Vocabulary ClassNames = new([.. BoltCatalogue.Classes.Select(one => one.Id)]);

    /// <summary>The bolts; null where they are missing or have faults.</summary>
    public static MountBolts? Read(ReadingContext context, JsonValue element)
    {
        if (element.ValueKind is JsonValueKind.Undefined || !LayoutFields.MountBolts.TryRead(context, element, out var members)) return null;
        var before = context.Faults.Count;
        TextValue.Read(context, members[MountBoltsField.Note], "a note");
        members.Requires(context, MountBoltsField.Size, $"the size of the bolts: one of {SizeNames.Listed}");
        var size = TextValue.Choice(context, members[MountBoltsField.Size], SizeNames);
        var strength = TextValue.Choice(context, members[MountBoltsField.Class], ClassNames);
        var known = size < 0 ? null : BoltCatalogue.Sizes[size];
        var places = Places(context, members, known);
        var washer = LengthValue.Read(context, members[MountBoltsField.Washer], Sizes.Washer);
        if (known is not null && washer is { } round && round <= known.Hole)
            context.Faults.Add(members[MountBoltsField.Washer], $"read {QuantityValue.Shown(members[MountBoltsField.Washer])}: a washer of {known.Id} is wider than its hole of {known.Hole.Millimeters:0.#} mm");
        var edge = LengthValue.Read(context, members[MountBoltsField.Edge], Sizes.BoltEdge);
        if (known is not null && edge is { } near && near <= known.Hole / 2)
            context.Faults.Add(members[MountBoltsField.Edge], $"read {QuantityValue.Shown(members[MountBoltsField.Edge])}: the hole of {known.Id} itself reaches {known.Hole.Millimeters / 2:0.##} mm");
        var preload = QuantityValue.Read(context, members[MountBoltsField.Preload], Sizes.Preload);
        if (known is not null && strength >= 0 && BoltCatalogue.LoadsOf(known, BoltCatalogue.Classes[strength]).Proof.Newtons is var proof && preload > proof)
            context.Faults.Add(members[MountBoltsField.Preload], $"read {QuantityValue.Shown(members[MountBoltsField.Preload])}: over the proof load of {known.Id} {BoltCatalogue.Classes[strength].Id}, {proof / 1e3:0.##} kN");
        var head = TextValue.Choice(context, members[MountBoltsField.Head], Heads);
        var thread = Thread(context, members[MountBoltsField.Thread]);
        if (context.Faults.Count > before || known is null) return null;
        return new MountBolts
        {
            Size = known,
            Class = strength < 0 ? null : BoltCatalogue.Classes[strength],
            At = places,
            IsCountersunk = head == 1,
            Washer = washer,
            Edge = edge,
            Preload = double.IsFinite(preload) ? Force.FromNewtons(preload) : null,
            Thread = thread,
        };
    }

    static ImmutableArray<BoltPlace> Places(ReadingContext context, in Members<MountBoltsField> members, BoltSize? size)
    {
        var (at, rectangle) = (members[MountBoltsField.At], members[MountBoltsField.Rectangle]);
        if (members.Has(MountBoltsField.At) == members.Has(MountBoltsField.Rectangle))
        {
            context.Faults.Add(members.Owner, members.Has(MountBoltsField.At)
                ? "read both at and rectangle: the places of bolts are given by one of them"
                : "read neither at nor rectangle: bolts have their places, [[x, y], …] in the mount's axes, or the sides of a rectangle round its origin with a bolt at each corner");
            return [];
        }
        if (members.Has(MountBoltsField.Rectangle))
        {
            if (!IsPair(context, rectangle, "two lengths, the sides along x and y")) return [];
            var (a, b) = (LengthValue.Read(context, rectangle[0], Sizes.BoltSide), LengthValue.Read(context, rectangle[1], Sizes.BoltSide));
            if (a is not { } along || b is not { } across) return [];
            ImmutableArray<BoltPlace> corners = [new(along / -2, across / -2), new(along / 2, across / -2), new(along / 2, across / 2), new(along / -2, across / 2)];
            CheckApart(context, rectangle, corners, [rectangle, rectangle, rectangle, rectangle], size);
            return corners;
        }
        if (at.ValueKind is not JsonValueKind.Array || at.GetArrayLength() is < 1 or > MostBolts)
        {
            context.Faults.Add(at, $"read {Said.Entries(at)}: the places of bolts are an array of 1 to {MostBolts} pairs [x, y]");
            return [];
        }
        var places = ImmutableArray.CreateBuilder<BoltPlace>();
        List<JsonValue> elements = [];
        foreach (var entry in at.EnumerateArray())
        {
            if (!IsPair(context, entry, "two lengths [x, y]")) continue;
            var (x, y) = (LengthValue.Read(context, entry[0], Sizes.MountCoordinate), LengthValue.Read(context, entry[1], Sizes.MountCoordinate));
            if (x is not { } px || y is not { } py) continue;
            places.Add(new(px, py));
            elements.Add(entry);
        }
        CheckApart(context, at, [.. places], elements, size);
        return places.DrainToImmutable();
    }

    // Two bolts nearer than their own diameter would stand in one another.
    static void CheckApart(ReadingContext context, JsonValue owner, ImmutableArray<BoltPlace> places, List<JsonValue> elements, BoltSize? size)
    {
        var least = size?.Diameter.Meters ?? 1e-6;
        for (var second = 1; second < places.Length; second++)
            for (var first = 0; first < second; first++)
            {
                var apart = Math.Sqrt(Math.Pow((places[first].X - places[second].X).Meters, 2) + Math.Pow((places[first].Y - places[second].Y).Meters, 2));
                if (apart >= least) continue;
                context.Faults.Add(elements[second].Row == 0 ? owner : elements[second], apart == 0
                    ? $"bolt {second + 1} stands at the place of bolt {first + 1}: two bolts cannot be at one place"
                    : $"bolt {second + 1} stands {apart * 1e3:0.###} mm from bolt {first + 1}, less than their diameter of {least * 1e3:0.###} mm");
                break;
            }
    }

    static bool IsPair(ReadingContext context, JsonValue element, string right)
    {
        if (element.ValueKind is JsonValueKind.Array && element.GetArrayLength() == 2) return true;
        context.Faults.Add(element, $"read {Said.Entries(element)}: {right} are right");
        return false;
    }

    static TappedHole? Thread(ReadingContext context, JsonValue element)
    {
        if (element.ValueKind is JsonValueKind.Undefined || !LayoutFields.TappedHole.TryRead(context, element, out var members)) return null;
        TextValue.Read(context, members[TappedHoleField.Note], "a note");
        members.Requires(context, TappedHoleField.Engagement, Sizes.Engagement);
        members.Requires(context, TappedHoleField.Material, MountMaterialReader.Right);
        var engagement = LengthValue.Read(context, members[TappedHoleField.Engagement], Sizes.Engagement);
        var material = MountMaterialReader.Read(context, members[TappedHoleField.Material]);
        return engagement is { } length && material is not null ? new TappedHole(length, material) : null;
    }
}
