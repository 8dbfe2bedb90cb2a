using System.Collections.Immutable;
using System.Text.Json;
using FlowCalc.Circuits;
using UnitsNet;

namespace FlowCalc.Layouts.Reading;

/// <summary>Reads connectors, switches, pushes and fuses.</summary>
static class ContactReader
{
    public static readonly Vocabulary States = new("off", "test", "armed");
    public static readonly Vocabulary Purposes = new("fire", "test");
    public static readonly Vocabulary Characteristics = new("blade");

    const string Usual = "a sound contact; common practice, no source";

    const double Contact = 0.01, SwitchContact = 0.05, FuseVolts = 0.1;

    /// <summary>A connector, a switch or a push; null where something is wrong.</summary>
    public static CircuitPart? Read(ReadingContext context, in Members<CircuitPartField> members, in CircuitPartDraft draft, int kind)
    {
        var resistance = draft.Resistance(context, members, kind == 1 ? Contact : SwitchContact, Usual);
        if (kind == 1) return new Connector(draft.Name, draft.From, draft.To, resistance);
        if (kind == 2) return new Switch(draft.Name, draft.From, draft.To, resistance, ClosedIn(context, members));
        members.Requires(context, CircuitPartField.Purpose, "what it is pressed for, one of " + Purposes.Listed);
        return new Push(draft.Name, draft.From, draft.To, resistance, TextValue.Choice(context, members[CircuitPartField.Purpose], Purposes) == 0);
    }

    /// <summary>A fuse; null where something is wrong.</summary>
    public static Fuse? Fuse(ReadingContext context, in Members<CircuitPartField> members, in CircuitPartDraft draft)
    {
        members.Requires(context, CircuitPartField.Rating, Sizes.Current);
        var rating = QuantityValue.Read(context, members[CircuitPartField.Rating], Sizes.Current);
        var characteristic = TextValue.Choice(context, members[CircuitPartField.Characteristic], Characteristics);
        if (!double.IsFinite(rating)) return null;
        var resistance = draft.Resistance(context, members, Math.Clamp(FuseVolts / rating, Sizes.Resistance.Least, Sizes.Resistance.Most), "0.1 V at the rated current; common practice, no source");
        return new Fuse(draft.Name, draft.From, draft.To, resistance, ElectricCurrent.FromAmperes(rating), characteristic == 0);
    }

    static ImmutableArray<CircuitState> ClosedIn(ReadingContext context, in Members<CircuitPartField> members)
    {
        const string right = "the states in which it is closed, one to three of off, test and armed, each once";
        if (!members.Requires(context, CircuitPartField.ClosedIn, right)) return [];
        var element = members[CircuitPartField.ClosedIn];
        if (element.ValueKind is not JsonValueKind.Array || element.GetArrayLength() is < 1 or > 3)
        {
            context.Faults.Add(element, $"read {Said.Entries(element)}: {right}");
            return [];
        }
        var states = ImmutableArray.CreateBuilder<CircuitState>(3);
        foreach (var entry in element.EnumerateArray())
        {
            var state = (CircuitState)TextValue.Choice(context, entry, States);
            if (states.Contains(state)) context.Faults.Add(entry, $"repeated: {right}");
            else states.Add(state);
        }
        return [.. states.Order()];
    }
}
