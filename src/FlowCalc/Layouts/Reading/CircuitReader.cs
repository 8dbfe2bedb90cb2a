using System.Text.Json;
using FlowCalc.Circuits;
using UnitsNet;

namespace FlowCalc.Layouts.Reading;

/// <summary>Reads the firing circuit.</summary>
static class CircuitReader
{
    /// <summary>The circuit; null where it is missing or none.</summary>
    public static Circuit? Read(ReadingContext context, JsonValue element)
    {
        if (element.ValueKind is JsonValueKind.Undefined || !LayoutFields.Circuit.TryRead(context, element, out var members)) return null;
        var (before, assumed) = (context.Faults.Count, context.Assumptions.Count);
        TextValue.Read(context, members[CircuitField.Note], "a note");
        var nodes = new CircuitNodes();
        members.Requires(context, CircuitField.Source, "the source of the current, an object with " + LayoutFields.CircuitSource.Listed);
        var source = CircuitSourceReader.Read(context, members[CircuitField.Source], nodes);
        members.Requires(context, CircuitField.Parts, "the parts by name, one of them an actuator");
        var parts = NamedEntries<CircuitPart>.Read(context, members[CircuitField.Parts], "parts", (reading, name, entry) => CircuitPartReader.Read(reading, name, entry, nodes));
        var chassis = members.Has(CircuitField.Chassis) ? nodes.Find(context, members[CircuitField.Chassis]) : null;
        var corrosion = Corrosion(context, members);
        if (!parts.IsBroken) CheckParts(context, members, parts);
        // Where a part could not be read its ends may be those that are missing.
        if (context.Faults.Count == before) nodes.CheckEnds(context, chassis);
        var assumptions = context.Assumptions.TakeSince(assumed);
        if (context.Faults.Count > before || source is null) return null;
        return new Circuit
        {
            Nodes = nodes.Names,
            Chassis = chassis,
            Source = source,
            Parts = [.. parts.Entries],
            Corrosion = ElectricResistance.FromOhms(corrosion),
            Assumptions = assumptions,
        };
    }

    static double Corrosion(ReadingContext context, in Members<CircuitField> members)
    {
        if (members.Has(CircuitField.Corrosion)) return QuantityValue.Read(context, members[CircuitField.Corrosion], Sizes.Resistance);
        context.Assumptions.Add("/circuit/corrosion", "1 ohm", "what a corroded contact has besides its own; common practice, no source");
        return 1;
    }

    static void CheckParts(ReadingContext context, in Members<CircuitField> members, NamedEntries<CircuitPart> parts)
    {
        var element = members[CircuitField.Parts];
        if (element.ValueKind is not JsonValueKind.Object) return;
        if (parts.Names.Count > Circuit.MostParts) context.Faults.Add(element, $"read {parts.Names.Count} parts: a circuit has at most {Circuit.MostParts}");
        var isWhole = parts.Placed.All(one => one.Entry is not null);
        if (isWhole && !parts.Entries.Any(part => part is Actuator)) context.Faults.Add(element, "read no actuator: a circuit has one or more, which it is there to fire");
        var pushes = parts.Entries.Count(part => part is Push);
        if (pushes > Circuit.MostPushes) context.Faults.Add(element, $"read {pushes} pushes: a circuit has at most {Circuit.MostPushes}");
        var lamps = parts.Entries.Count(part => part is Lamp);
        if (lamps > Circuit.MostPushes) context.Faults.Add(element, $"read {lamps} lamps: a circuit has at most {Circuit.MostPushes}");
    }
}
