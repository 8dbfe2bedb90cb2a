using System.Text.Json;
using FlowCalc.Stock;
using UnitsNet;

namespace FlowCalc.Layouts.Reading.Mounts;

/// <summary>The members of a material of one's own.</summary>
enum MountMaterialField
{
    Kind,
    TensileStrength,
    YieldStrength,
    Note,
}

/// <summary>Reads what a part of a mount is made of.</summary>
static class MountMaterialReader
{
    public static readonly Vocabulary Kinds = new([.. Enum.GetNames<MountMaterialKind>().Select(name => name.ToLowerInvariant())]);
    public static readonly Vocabulary Names = new([.. MountMaterial.All.Select(material => material.Id!)]);

    /// <summary>What a material is, for a message.</summary>
    public static readonly string Right = $"a material: one of {Names.Listed}; or an object with {LayoutFields.MountMaterial.Listed}";

    /// <summary>The material; null where it is missing or has faults.</summary>
    public static MountMaterial? Read(ReadingContext context, JsonValue element)
    {
        switch (element.ValueKind)
        {
            case JsonValueKind.Undefined:
                return null;
            case JsonValueKind.String:
                var index = TextValue.Choice(context, element, Names);
                return index < 0 ? null : MountMaterial.All[index];
            case JsonValueKind.Object:
                return Own(context, element);
            default:
                context.Faults.Add(element, $"read {Said.Value(element)}: {Right} is right");
                return null;
        }
    }

    static MountMaterial? Own(ReadingContext context, JsonValue element)
    {
        if (!LayoutFields.MountMaterial.TryRead(context, element, out var members)) return null;
        TextValue.Read(context, members[MountMaterialField.Note], "a note");
        members.Requires(context, MountMaterialField.Kind, $"what it is: one of {Kinds.Listed}");
        members.Requires(context, MountMaterialField.TensileStrength, Sizes.Strength);
        members.Requires(context, MountMaterialField.YieldStrength, Sizes.Strength);
        var kind = TextValue.Choice(context, members[MountMaterialField.Kind], Kinds);
        var tensile = QuantityValue.Read(context, members[MountMaterialField.TensileStrength], Sizes.Strength);
        var yield = QuantityValue.Read(context, members[MountMaterialField.YieldStrength], Sizes.Strength);
        if (yield > tensile) context.Faults.Add(members[MountMaterialField.YieldStrength], $"read {QuantityValue.Shown(members[MountMaterialField.YieldStrength])}: over the tensile strength of {tensile / 1e6:0.####} MPa; a material yields before it breaks");
        return kind < 0 || !double.IsFinite(tensile + yield) || yield > tensile ? null : new MountMaterial(null, (MountMaterialKind)kind, Pressure.FromPascals(tensile), Pressure.FromPascals(yield), []);
    }
}
