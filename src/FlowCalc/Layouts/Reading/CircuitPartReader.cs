using System.Text.Json;
using FlowCalc.Circuits;

namespace FlowCalc.Layouts.Reading;

/// <summary>Reads the parts of a circuit.</summary>
static class CircuitPartReader
{
    public static readonly Vocabulary Kinds = new("wire", "connector", "switch", "push", "fuse", "actuator", "lamp", "resistor");

    static readonly CircuitPartField[] Fields = Enum.GetValues<CircuitPartField>();

    static readonly CircuitPartField[] OfAll = [CircuitPartField.Kind, CircuitPartField.Between, CircuitPartField.Resistance, CircuitPartField.Note];

    // What each kind has besides, in the order of the kinds.
    static readonly CircuitPartField[][] OfKind =
    [
        WireReader.OfMake,
        [],
        [CircuitPartField.ClosedIn],
        [CircuitPartField.Purpose],
        [CircuitPartField.Rating, CircuitPartField.Characteristic],
        [CircuitPartField.Type, CircuitPartField.AllFire, CircuitPartField.NoFire, CircuitPartField.Pulse, CircuitPartField.AllFireEnergy, CircuitPartField.RatedVoltage],
        [CircuitPartField.Tolerance, CircuitPartField.ForwardVoltage, CircuitPartField.LightsAt],
        [],
    ];

    /// <summary>An entry of the parts; null where something is wrong.</summary>
    public static CircuitPart? Read(ReadingContext context, string name, JsonValue element, CircuitNodes nodes)
    {
        if (!LayoutFields.CircuitPart.TryRead(context, element, out var members)) return null;
        var before = context.Faults.Count;
        TextValue.Read(context, members[CircuitPartField.Note], "a note");
        members.Requires(context, CircuitPartField.Kind, "one of " + Kinds.Listed);
        var kind = TextValue.Choice(context, members[CircuitPartField.Kind], Kinds);
        var (from, to) = Ends(context, members, nodes);
        if (kind >= 0) RefuseOthers(context, members, kind);
        var draft = new CircuitPartDraft(name, from, to, "/circuit/parts/" + JsonPointer.Escape(name));
        CircuitPart? part = kind switch
        {
            0 => WireReader.Read(context, members, draft),
            1 or 2 or 3 => ContactReader.Read(context, members, draft, kind),
            4 => ContactReader.Fuse(context, members, draft),
            5 => ActuatorReader.Read(context, members, draft),
            6 => LampReader.Read(context, members, draft),
            7 => LampReader.Resistor(context, members, draft),
            _ => null,
        };
        return context.Faults.Count > before ? null : part;
    }

    static (int From, int To) Ends(ReadingContext context, in Members<CircuitPartField> members, CircuitNodes nodes)
    {
        const string right = "the names of the two nodes at its ends, such as [\"plus\", \"a\"]";
        if (!members.Requires(context, CircuitPartField.Between, right)) return (-1, -1);
        var element = members[CircuitPartField.Between];
        if (element.ValueKind is not JsonValueKind.Array || element.GetArrayLength() != 2)
        {
            context.Faults.Add(element, $"read {Said.Entries(element)}: {right}");
            return (-1, -1);
        }
        var (from, to) = (nodes.End(context, element[0]), nodes.End(context, element[1]));
        if (from >= 0 && from == to) context.Faults.Add(element, $"read {Said.Value(element[0])} twice: a part is between two nodes, and one that joins a node to itself does nothing");
        return (from, to);
    }

    static void RefuseOthers(ReadingContext context, in Members<CircuitPartField> members, int kind)
    {
        foreach (var field in Fields)
            if (members.Has(field) && !OfAll.Contains(field) && !OfKind[kind].Contains(field))
                members.Refuses(context, field, $"{Article(kind)} has none; only {Article(Array.FindIndex(OfKind, fields => fields.Contains(field)))} has");
    }

    static string Article(int kind) => $"{(Kinds.Words[kind] == "actuator" ? "an" : "a")} {Kinds.Words[kind]}";
}
