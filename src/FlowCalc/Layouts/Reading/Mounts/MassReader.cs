using System.Collections.Immutable;
using System.Text.Json;
using FlowCalc.Layouts.Mounts;
using UnitsNet;

namespace FlowCalc.Layouts.Reading.Mounts;

/// <summary>The members of a mass besides the bottle.</summary>
enum AddedMassField
{
    Name,
    Mass,
    At,
    Note,
}

/// <summary>The members of a load case.</summary>
enum MountLoadField
{
    Name,
    Acceleration,
    Direction,
    Note,
}

/// <summary>Reads what loads a mount: masses besides the bottle, and load cases.</summary>
static class MassReader
{
    /// <summary>Most masses, and most load cases, of one mount.</summary>
    public const int MostEntries = 50;

    /// <summary>The masses.</summary>
    public static ImmutableArray<AddedMass> Masses(ReadingContext context, JsonValue element)
    {
        if (element.ValueKind is JsonValueKind.Undefined || !IsList(context, element, MostEntries, "masses", LayoutFields.AddedMass.Listed)) return [];
        var masses = ImmutableArray.CreateBuilder<AddedMass>();
        HashSet<string> names = new(StringComparer.Ordinal);
        foreach (var entry in element.EnumerateArray())
        {
            if (!LayoutFields.AddedMass.TryRead(context, entry, out var members)) continue;
            TextValue.Read(context, members[AddedMassField.Note], "a note");
            members.Requires(context, AddedMassField.Name, "a name, such as \"bracket\"");
            members.Requires(context, AddedMassField.Mass, Sizes.MountedMass);
            members.Requires(context, AddedMassField.At, "its centre of mass, [x, y, z] in the mount's axes");
            var name = Named(context, members[AddedMassField.Name], names);
            var mass = QuantityValue.Read(context, members[AddedMassField.Mass], Sizes.MountedMass);
            var at = SpaceValue.Place(context, members[AddedMassField.At]);
            if (name is not null && double.IsFinite(mass) && at is { } place) masses.Add(new AddedMass(name, Mass.FromKilograms(mass), place));
        }
        return masses.DrainToImmutable();
    }

    /// <summary>The load cases.</summary>
    public static ImmutableArray<MountLoad> Loads(ReadingContext context, JsonValue element)
    {
        if (element.ValueKind is JsonValueKind.Undefined || !IsList(context, element, MostEntries, "loads", LayoutFields.MountLoad.Listed)) return [];
        if (element.GetArrayLength() == 0) context.Faults.Add(element, "read no entry: give one load case or more, or leave loads out for those of the application");
        var loads = ImmutableArray.CreateBuilder<MountLoad>();
        HashSet<string> names = new(StringComparer.Ordinal);
        foreach (var entry in element.EnumerateArray())
        {
            if (!LayoutFields.MountLoad.TryRead(context, entry, out var members)) continue;
            TextValue.Read(context, members[MountLoadField.Note], "a note");
            members.Requires(context, MountLoadField.Name, "a name, such as \"crash forward\"");
            members.Requires(context, MountLoadField.Acceleration, Sizes.LoadFactor);
            var name = Named(context, members[MountLoadField.Name], names);
            var acceleration = NumberValue.Read(context, members[MountLoadField.Acceleration], Sizes.LoadFactor);
            var direction = SpaceValue.Direction(context, members[MountLoadField.Direction], Sizes.DirectionPart, mayBeZero: false);
            if (name is not null && double.IsFinite(acceleration)) loads.Add(new MountLoad(name, acceleration, direction));
        }
        return loads.DrainToImmutable();
    }

    /// <summary>Whether a value is an array of objects of at most so many; a fault where it is not.</summary>
    public static bool IsList(ReadingContext context, JsonValue element, int most, string what, string members)
    {
        if (element.ValueKind is JsonValueKind.Array && element.GetArrayLength() <= most) return true;
        context.Faults.Add(element, $"read {Said.Entries(element)}: {what} are an array of at most {most} objects with {members}");
        return false;
    }

    static string? Named(ReadingContext context, JsonValue element, HashSet<string> names)
    {
        var name = TextValue.Name(context, element, "a name");
        if (name is not null && !names.Add(name)) context.Faults.Add(element, $"read {Said.Name(name)}: another entry has that name already");
        return name;
    }
}
