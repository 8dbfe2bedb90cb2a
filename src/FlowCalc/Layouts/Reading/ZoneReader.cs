namespace FlowCalc.Layouts.Reading;

/// <summary>The members of a zone.</summary>
enum ZoneField
{
    Share,
    Occupied,
    Note,
}

/// <summary>Reads zones.</summary>
static class ZoneReader
{
    /// <summary>An entry of the document's zones; null where something is wrong.</summary>
    public static Zone? Own(ReadingContext context, string name, JsonValue element)
    {
        if (!LayoutFields.Zone.TryRead(context, element, out var members)) return null;
        var before = context.Faults.Count;
        var share = NumberValue.Read(context, members[ZoneField.Share], Sizes.Share);
        var occupied = TextValue.Flag(context, members[ZoneField.Occupied], "occupied");
        var note = TextValue.Read(context, members[ZoneField.Note], "a note");
        return context.Faults.Count > before ? null : new Zone(name, double.IsFinite(share) ? share : null, occupied, note);
    }
}
