using System.Text.Json;
using FlowCalc.Circuits;
using UnitsNet;

namespace FlowCalc.Layouts.Reading;

/// <summary>Reads the source of a circuit.</summary>
static class CircuitSourceReader
{
    public static readonly Vocabulary Kinds = new("battery", "power-pack", "capacitor");

    /// <summary>The source; null where it is missing or none.</summary>
    public static CircuitSource? Read(ReadingContext context, JsonValue element, CircuitNodes nodes)
    {
        if (element.ValueKind is JsonValueKind.Undefined || !LayoutFields.CircuitSource.TryRead(context, element, out var members)) return null;
        var before = context.Faults.Count;
        TextValue.Read(context, members[CircuitSourceField.Note], "a note");
        members.Requires(context, CircuitSourceField.Kind, "one of " + Kinds.Listed);
        var kind = TextValue.Choice(context, members[CircuitSourceField.Kind], Kinds);
        var (minus, plus) = (End(context, members, CircuitSourceField.Minus, nodes), End(context, members, CircuitSourceField.Plus, nodes));
        if (minus >= 0 && minus == plus) context.Faults.Add(members[CircuitSourceField.Plus], $"read {Said.Value(members[CircuitSourceField.Plus])}: the node of both ends, which shorts the source");
        var isOwn = TextValue.Flag(context, members[CircuitSourceField.Own], "own");
        var voltages = Voltages(context, members);
        var resistances = Resistances(context, members);
        var capacitance = Capacitance(context, members, kind);
        if (context.Faults.Count > before) return null;
        return new CircuitSource
        {
            Kind = (SourceKind)kind,
            Minus = minus,
            Plus = plus,
            LowestVoltage = ElectricPotential.FromVolts(voltages.Lowest),
            HighestVoltage = ElectricPotential.FromVolts(voltages.Highest),
            FreshResistance = ElectricResistance.FromOhms(resistances.Fresh),
            ColdResistance = ElectricResistance.FromOhms(resistances.Cold),
            Capacitance = capacitance,
            IsOwn = members.Has(CircuitSourceField.Own) ? isOwn : null,
        };
    }

    static int End(ReadingContext context, in Members<CircuitSourceField> members, CircuitSourceField field, CircuitNodes nodes) =>
        members.Requires(context, field, "the node of that end of the source, a name") ? nodes.End(context, members[field]) : -1;

    static (double Lowest, double Highest) Voltages(ReadingContext context, in Members<CircuitSourceField> members)
    {
        members.Requires(context, CircuitSourceField.Voltage, Sizes.Voltage);
        var voltage = QuantityValue.Read(context, members[CircuitSourceField.Voltage], Sizes.Voltage);
        var lowest = Or(context, members, CircuitSourceField.ColdVoltage, voltage, Sizes.Voltage, "/circuit/source/coldVoltage", "the voltage: give what is left in the cold near the end of its life");
        var highest = Or(context, members, CircuitSourceField.HighestVoltage, voltage, Sizes.Voltage, "/circuit/source/highestVoltage", "the voltage: give that of a fresh battery, or of one on its charger");
        if (lowest > voltage) context.Faults.Add(members[CircuitSourceField.ColdVoltage], $"read {QuantityValue.Shown(members[CircuitSourceField.ColdVoltage])}: in the cold it is at most the voltage, {QuantityValue.Shown(members[CircuitSourceField.Voltage])}");
        if (highest < voltage) context.Faults.Add(members[CircuitSourceField.HighestVoltage], $"read {QuantityValue.Shown(members[CircuitSourceField.HighestVoltage])}: the highest is at least the voltage, {QuantityValue.Shown(members[CircuitSourceField.Voltage])}");
        return (lowest, highest);
    }

    static (double Fresh, double Cold) Resistances(ReadingContext context, in Members<CircuitSourceField> members)
    {
        members.Requires(context, CircuitSourceField.InternalResistance, Sizes.Resistance);
        var fresh = QuantityValue.Read(context, members[CircuitSourceField.InternalResistance], Sizes.Resistance);
        var cold = Or(context, members, CircuitSourceField.ColdResistance, fresh, Sizes.Resistance, "/circuit/source/coldResistance", "the internal resistance: a battery has more in the cold");
        if (cold < fresh) context.Faults.Add(members[CircuitSourceField.ColdResistance], $"read {QuantityValue.Shown(members[CircuitSourceField.ColdResistance])}: in the cold it is at least the internal resistance, {QuantityValue.Shown(members[CircuitSourceField.InternalResistance])}");
        return (fresh, cold);
    }

    static double Or(ReadingContext context, in Members<CircuitSourceField> members, CircuitSourceField field, double usual, SizeRange range, string pointer, string source)
    {
        if (members.Has(field)) return QuantityValue.Read(context, members[field], range);
        var value = Quantities.QuantityWriter.Write(usual, range.Kind, Quantities.UnitSystem.Si);
        context.Assumptions.Add(pointer, string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{value.Value} {value.Unit}"), source);
        return usual;
    }

    static ElectricCapacitance? Capacitance(ReadingContext context, in Members<CircuitSourceField> members, int kind)
    {
        if (kind == (int)SourceKind.Capacitor) members.Requires(context, CircuitSourceField.Capacitance, Sizes.Capacitance);
        else if (kind >= 0) members.Refuses(context, CircuitSourceField.Capacitance, "only a capacitor has one");
        var farads = QuantityValue.Read(context, members[CircuitSourceField.Capacitance], Sizes.Capacitance);
        return double.IsFinite(farads) ? ElectricCapacitance.FromFarads(farads) : null;
    }
}
