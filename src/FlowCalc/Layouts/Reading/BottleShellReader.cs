using System.Text.Json;
using FlowCalc.Bottles;
using UnitsNet;

namespace FlowCalc.Layouts.Reading;

/// <summary>The members of a bottle's shape.</summary>
enum BottleShapeField
{
    Diameter,
    Length,
    Note,
}

/// <summary>The members of a bottle's wall.</summary>
enum BottleWallField
{
    Material,
    Thickness,
    Note,
}

/// <summary>Reads the shape and the shell of a bottle.</summary>
static class BottleShellReader
{
    const double MostDisagreement = 0.05;

    /// <summary>Inside diameter and length, held against the volume; null where missing or wrong.</summary>
    public static BottleShape? Shape(ReadingContext context, JsonValue element, double volume)
    {
        if (element.ValueKind is JsonValueKind.Undefined || !LayoutFields.BottleShape.TryRead(context, element, out var members)) return null;
        members.Requires(context, BottleShapeField.Diameter, Sizes.BottleDiameter);
        members.Requires(context, BottleShapeField.Length, Sizes.BottleLength);
        TextValue.Read(context, members[BottleShapeField.Note], "a note");
        var diameter = QuantityValue.Read(context, members[BottleShapeField.Diameter], Sizes.BottleDiameter);
        var length = QuantityValue.Read(context, members[BottleShapeField.Length], Sizes.BottleLength);
        if (!double.IsFinite(diameter + length)) return null;
        var cylinder = Math.PI / 4 * diameter * diameter * length;
        if (Math.Abs(cylinder - volume) > MostDisagreement * volume)
        {
            context.Faults.Add(element, $"read a cylinder of {cylinder * 1e3:0.####} L: it differs by over 5 % from the volume of {volume * 1e3:0.####} L; give the inside diameter and length of a cylinder of that volume");
            return null;
        }
        return new BottleShape(Length.FromMeters(diameter), Length.FromMeters(length));
    }

    /// <summary>Material and thickness of the shell; null where missing or wrong.</summary>
    public static BottleWall? Wall(ReadingContext context, JsonValue element)
    {
        if (element.ValueKind is JsonValueKind.Undefined || !LayoutFields.BottleWall.TryRead(context, element, out var members)) return null;
        members.Requires(context, BottleWallField.Material, "the shell's material, such as \"aluminium\" or \"steel\"");
        members.Requires(context, BottleWallField.Thickness, Sizes.ShellThickness);
        TextValue.Read(context, members[BottleWallField.Note], "a note");
        var material = TextValue.Name(context, members[BottleWallField.Material], "a material");
        var thickness = QuantityValue.Read(context, members[BottleWallField.Thickness], Sizes.ShellThickness);
        return material is null || !double.IsFinite(thickness) ? null : new BottleWall(material, Length.FromMeters(thickness));
    }
}
