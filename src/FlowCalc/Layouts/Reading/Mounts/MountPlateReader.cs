using System.Text.Json;
using FlowCalc.Layouts.Mounts;
using FlowCalc.Stock;

namespace FlowCalc.Layouts.Reading.Mounts;

/// <summary>The members of a panel.</summary>
enum MountPanelField
{
    Thickness,
    Material,
    Span,
    Spreader,
    Note,
}

/// <summary>The members of a spreader.</summary>
enum SpreaderField
{
    Width,
    Thickness,
    Note,
}

/// <summary>The members of a foot.</summary>
enum MountFootField
{
    Thickness,
    Material,
    Width,
    ToBend,
    ToEdge,
    Note,
}

/// <summary>The members of an adapter.</summary>
enum MountAdapterField
{
    Thickness,
    Material,
    Bolts,
    Note,
}

/// <summary>Reads the plates between bottle and structure.</summary>
static class MountPlateReader
{
    /// <summary>The panel; null where it is missing or has faults.</summary>
    public static MountPanel? Panel(ReadingContext context, JsonValue element, MountBolts? bolts)
    {
        if (element.ValueKind is JsonValueKind.Undefined || !LayoutFields.MountPanel.TryRead(context, element, out var members)) return null;
        TextValue.Read(context, members[MountPanelField.Note], "a note");
        members.Requires(context, MountPanelField.Thickness, Sizes.Plate);
        members.Requires(context, MountPanelField.Material, MountMaterialReader.Right);
        var thickness = LengthValue.Read(context, members[MountPanelField.Thickness], Sizes.Plate);
        var material = MountMaterialReader.Read(context, members[MountPanelField.Material]);
        var spreader = Spreader(context, members[MountPanelField.Spreader], bolts?.Size);
        var span = LengthValue.Read(context, members[MountPanelField.Span], Sizes.PanelSpan);
        if (bolts?.Thread is not null) members.Refuses(context, MountPanelField.Spreader, "the bolts go into a thread, which has no far side to spread the pull on; give nuts, that is no thread, or no spreader");
        if (span is { } free && bolts is not null && free <= (spreader?.Width ?? bolts.Washer ?? bolts.Size.Head))
            context.Faults.Add(members[MountPanelField.Span], $"read {QuantityValue.Shown(members[MountPanelField.Span])}: what bears on the sheet is as wide as that; the span is the diameter of the largest circle round a bolt that nothing stiffens");
        return thickness is { } thick && material is not null ? new MountPanel(thick, material, span, spreader) : null;
    }

    /// <summary>The foot; null where it is missing or has faults.</summary>
    public static MountFoot? Foot(ReadingContext context, JsonValue element)
    {
        if (element.ValueKind is JsonValueKind.Undefined || !LayoutFields.MountFoot.TryRead(context, element, out var members)) return null;
        TextValue.Read(context, members[MountFootField.Note], "a note");
        members.Requires(context, MountFootField.Thickness, Sizes.Plate);
        members.Requires(context, MountFootField.Material, MountMaterialReader.Right);
        members.Requires(context, MountFootField.Width, Sizes.StripWidth);
        members.Requires(context, MountFootField.ToBend, Sizes.StripArm);
        members.Requires(context, MountFootField.ToEdge, Sizes.StripArm);
        var thickness = LengthValue.Read(context, members[MountFootField.Thickness], Sizes.Plate);
        var material = MountMaterialReader.Read(context, members[MountFootField.Material]);
        var width = LengthValue.Read(context, members[MountFootField.Width], Sizes.StripWidth);
        var toBend = LengthValue.Read(context, members[MountFootField.ToBend], Sizes.StripArm);
        var toEdge = LengthValue.Read(context, members[MountFootField.ToEdge], Sizes.StripArm);
        return thickness is { } t && material is not null && width is { } w && toBend is { } m && toEdge is { } e ? new MountFoot(t, material, w, m, e) : null;
    }

    /// <summary>The adapter; null where it is missing or has faults.</summary>
    public static MountAdapter? Adapter(ReadingContext context, JsonValue element)
    {
        if (element.ValueKind is JsonValueKind.Undefined || !LayoutFields.MountAdapter.TryRead(context, element, out var members)) return null;
        TextValue.Read(context, members[MountAdapterField.Note], "a note");
        members.Requires(context, MountAdapterField.Thickness, Sizes.Plate);
        members.Requires(context, MountAdapterField.Material, MountMaterialReader.Right);
        members.Requires(context, MountAdapterField.Bolts, "the bolts that hold the bracket on it: an object with " + LayoutFields.MountBolts.Listed);
        var thickness = LengthValue.Read(context, members[MountAdapterField.Thickness], Sizes.Plate);
        var material = MountMaterialReader.Read(context, members[MountAdapterField.Material]);
        var bolts = MountBoltsReader.Read(context, members[MountAdapterField.Bolts]);
        return thickness is { } thick && material is not null && bolts is not null ? new MountAdapter(thick, material, bolts) : null;
    }

    static Spreader? Spreader(ReadingContext context, JsonValue element, BoltSize? size)
    {
        if (element.ValueKind is JsonValueKind.Undefined || !LayoutFields.Spreader.TryRead(context, element, out var members)) return null;
        TextValue.Read(context, members[SpreaderField.Note], "a note");
        members.Requires(context, SpreaderField.Width, Sizes.Washer);
        members.Requires(context, SpreaderField.Thickness, Sizes.Plate);
        var width = LengthValue.Read(context, members[SpreaderField.Width], Sizes.Washer);
        var thickness = LengthValue.Read(context, members[SpreaderField.Thickness], Sizes.Plate);
        if (size is not null && width is { } wide && wide <= size.Hole)
            context.Faults.Add(members[SpreaderField.Width], $"read {QuantityValue.Shown(members[SpreaderField.Width])}: a spreader of {size.Id} is wider than its hole of {size.Hole.Millimeters:0.#} mm");
        return width is { } w && thickness is { } t ? new Spreader(w, t) : null;
    }
}
