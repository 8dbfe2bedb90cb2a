using System.Text.Json;
using FlowCalc.Bottles;
using FlowCalc.Layouts.Mounts;
using UnitsNet;

namespace FlowCalc.Layouts.Reading.Mounts;

/// <summary>Reads how the bottle is held.</summary>
static class MountReader
{
    /// <summary>The mount; null where it is missing or has faults.</summary>
    /// <param name="context">The reading.</param>
    /// <param name="element">The mount.</param>
    /// <param name="supply">The supply as far as it was read.</param>
    public static Mount? Read(ReadingContext context, JsonValue element, SupplyDraft supply)
    {
        if (element.ValueKind is JsonValueKind.Undefined || !LayoutFields.Mount.TryRead(context, element, out var members)) return null;
        var before = context.Faults.Count;
        TextValue.Read(context, members[MountField.Note], "a note");
        var bottle = (supply.Supply as BottleSupply)?.Bottle;
        if (supply.Supply is HeldSupply) context.Faults.Add(element, "read a mount without a bottle: the supply is held at a pressure; leave the mount out, or give the supply's bottle");

        var (normal, x) = Axes(context, members, bottle);
        members.Requires(context, MountField.Bolts, "the bolts into the structure: an object with " + LayoutFields.MountBolts.Listed);
        var bolts = MountBoltsReader.Read(context, members[MountField.Bolts]);
        var (middle, centre) = (Held(context, members[MountField.BottleAt]), Held(context, members[MountField.CentreOfMass]));
        if (members.Has(MountField.BottleAt) == members.Has(MountField.CentreOfMass))
            context.Faults.Add(element, members.Has(MountField.BottleAt)
                ? "read both bottleAt and centreOfMass: a mount has one of them"
                : "read neither bottleAt nor centreOfMass: a mount has the middle of its bottle, [x, y, z] in its own axes, or the centre of mass of the full bottle");
        var full = QuantityValue.Read(context, members[MountField.FullMass], Sizes.MountedMass);
        if (bottle is { EmptyMass: null } && !members.Has(MountField.FullMass))
            context.Faults.Add(element, LayoutFields.Mount.Name(MountField.FullMass), "missing: the mass of the full bottle with its valve, or emptyMass in supply/bottle, to which the fill is added");
        CheckMass(context, members, bottle, full);
        var straps = StrapReader.Straps(context, members[MountField.Straps], bottle);
        var stops = StrapReader.Stops(context, members[MountField.EndStops]);
        if (members.Has(MountField.Straps) && normal is { } across && bottle is not null) CheckLie(context, members[MountField.Straps], across, bottle);
        var friction = NumberValue.Read(context, members[MountField.Friction], Sizes.Friction);
        var cradle = QuantityValue.Read(context, members[MountField.Cradle], Sizes.Cradle);
        var mount = new
        {
            Masses = MassReader.Masses(context, members[MountField.Masses]),
            Panel = MountPlateReader.Panel(context, members[MountField.Panel], bolts),
            Foot = MountPlateReader.Foot(context, members[MountField.Foot]),
            Spacers = LengthValue.Read(context, members[MountField.Spacers], Sizes.Spacer),
            Adapter = MountPlateReader.Adapter(context, members[MountField.Adapter]),
            Inside = members.Has(MountField.InsideStructure) ? TextValue.Flag(context, members[MountField.InsideStructure], "insideStructure") : (bool?)null,
            Loads = MassReader.Loads(context, members[MountField.Loads]),
        };
        if (context.Faults.Count > before || normal is null || x is null || bolts is null) return null;
        return new Mount
        {
            Normal = normal.Value,
            X = x.Value,
            BottleAt = middle,
            CentreOfMass = centre,
            FullMass = double.IsFinite(full) ? Mass.FromKilograms(full) : null,
            Masses = mount.Masses,
            Bolts = bolts,
            Panel = mount.Panel,
            Foot = mount.Foot,
            Spacers = mount.Spacers,
            Adapter = mount.Adapter,
            Straps = straps,
            Friction = double.IsFinite(friction) ? friction : null,
            Cradle = double.IsFinite(cradle) ? Angle.FromRadians(cradle) : null,
            EndStops = stops,
            IsInsideStructure = mount.Inside,
            Loads = mount.Loads,
        };
    }

    // Nearer to the normal than this a direction has too little in the face to tell which way it goes.
    const double LeastLean = 1e-3;

    static (Direction? Normal, Direction? X) Axes(ReadingContext context, in Members<MountField> members, Bottle? bottle)
    {
        members.Requires(context, MountField.Normal, "three bare numbers: the direction from the structure to the bottle in the layout's axes, such as [0, 0, 1] on a floor");
        var normal = SpaceValue.Direction(context, members[MountField.Normal], Sizes.DirectionPart, mayBeZero: false);
        if (members.Has(MountField.X))
        {
            var stated = SpaceValue.Direction(context, members[MountField.X], Sizes.DirectionPart, mayBeZero: false);
            if (normal is { } n && stated is { } s && Lean(n, s) < LeastLean) context.Faults.Add(members[MountField.X], "read a direction along normal: x lies in the face of the mount, square to it");
            return (normal, stated);
        }
        if (normal is not { } across) return (null, null);
        var axis = bottle is null ? new Direction(0, 0, 1) : new Direction(bottle.Axis[0], bottle.Axis[1], bottle.Axis[2]);
        if (bottle is null && !context.Faults.IsEmpty) return (normal, null);
        Direction[] choices = [axis, new(1, 0, 0), new(0, 0, 1)];
        var x = choices.First(choice => Lean(across, choice) >= LeastLean);
        context.Assumptions.Add("/mount/x", x == axis ? "along the bottle's axis" : "along the layout's " + (x.X == 1 ? "x" : "z"), "the axes of the mount are not given whole");
        return (normal, x);
    }

    static double Lean(Direction a, Direction b) => a.Cross(b).Length / (a.Length * b.Length);

    static Place? Held(ReadingContext context, JsonValue element)
    {
        var place = SpaceValue.Place(context, element);
        if (place is not { } found || found.Z.Meters >= 0) return place;
        context.Faults.Add(element[2], $"read {QuantityValue.Shown(element[2])}: z counts from the face of the structure towards the bottle, 0 or more");
        return null;
    }

    static void CheckMass(ReadingContext context, in Members<MountField> members, Bottle? bottle, double full)
    {
        if (bottle is null || !double.IsFinite(full)) return;
        var least = bottle.Fill.Kilograms + (bottle.EmptyMass?.Kilograms ?? 0);
        if (full < least * (1 - 1e-9))
            context.Faults.Add(members[MountField.FullMass], $"read {QuantityValue.Shown(members[MountField.FullMass])}: the full bottle is no lighter than its fill{(bottle.EmptyMass is null ? "" : " and its empty mass together")}, {least:0.####} kg here");
    }

    // A strap whose legs go straight to the bracket holds a bottle that lies along it, not one that stands on it.
    static void CheckLie(ReadingContext context, JsonValue straps, Direction normal, Bottle bottle)
    {
        const double most = 5;
        var axis = new Direction(bottle.Axis[0], bottle.Axis[1], bottle.Axis[2]);
        var off = Math.Abs(90 - axis.AngleTo(normal) * 180 / Math.PI);
        if (off > most + 1e-9)
            context.Faults.Add(straps, $"read straps of a bottle whose axis leaves the mount's face by {off:0.#}°: a strap's legs hold a bottle that lies along the face, within {most:0}°; correct normal or the bottle's axis, or leave the straps out");
    }
}
