using System.Text.Json;
using UnitsNet;

namespace FlowCalc.Layouts.Reading;

/// <summary>Reads age and upkeep of the bottle.</summary>
static class ServiceReader
{
    public static readonly Vocabulary Bases = new("manufactured", "lastService", "lastTest");

    /// <summary>The service; null where it is missing or none.</summary>
    public static ServiceBook? Read(ReadingContext context, JsonValue element, in SupplyDraft supply)
    {
        if (element.ValueKind is JsonValueKind.Undefined || !LayoutFields.Service.TryRead(context, element, out var members)) return null;
        TextValue.Read(context, members[ServiceField.Note], "a note");
        var made = DateValue.Read(context, members[ServiceField.Manufactured]);
        return new ServiceBook
        {
            Manufactured = made,
            LastService = After(context, members[ServiceField.LastService], made),
            LastTest = After(context, members[ServiceField.LastTest], made),
            Rules = [.. NamedEntries<ServiceRule>.Read(context, members[ServiceField.Rules], "rules", Rule).Entries],
            Weighing = Weighing(context, members[ServiceField.Weighing], supply),
            Gauge = Gauge(context, members[ServiceField.Gauge], supply),
        };
    }

    static ServiceDate? After(ReadingContext context, JsonValue element, ServiceDate? made)
    {
        var date = DateValue.Read(context, element);
        if (date is { } known && made is { } first && known.IsBefore(first)) context.Faults.Add(element, $"read {Said.Value(element)}: before the bottle was made, {first}");
        return date;
    }

    static ServiceRule? Rule(ReadingContext context, string name, JsonValue element)
    {
        const string right = "a rule counts from basis, one of manufactured, lastService and lastTest, or from a date of its own, from";
        if (!LayoutFields.ServiceRule.TryRead(context, element, out var members)) return null;
        var before = context.Faults.Count;
        TextValue.Read(context, members[ServiceRuleField.Note], "a note");
        members.Requires(context, ServiceRuleField.Months, Sizes.Months);
        var months = NumberValue.Read(context, members[ServiceRuleField.Months], Sizes.Months);
        if (double.IsFinite(months) && !double.IsInteger(months)) context.Faults.Add(members[ServiceRuleField.Months], $"read {Said.Value(members[ServiceRuleField.Months])}: {Sizes.Months.What} is {Sizes.Months.Words}");
        var basis = TextValue.Choice(context, members[ServiceRuleField.Basis], Bases);
        var from = DateValue.Read(context, members[ServiceRuleField.From]);
        if (members.Has(ServiceRuleField.From)) members.Refuses(context, ServiceRuleField.Basis, right);
        else members.Requires(context, ServiceRuleField.Basis, right);
        return context.Faults.Count > before ? null : new ServiceRule(name, from is null ? (DateBasis)basis : DateBasis.Own, from, (int)months);
    }

    static Weighing? Weighing(ReadingContext context, JsonValue element, in SupplyDraft supply)
    {
        if (element.ValueKind is JsonValueKind.Undefined || !LayoutFields.Weighing.TryRead(context, element, out var members)) return null;
        var before = context.Faults.Count;
        TextValue.Read(context, members[WeighingField.Note], "a note");
        var bottle = (supply.Supply as BottleSupply)?.Bottle;
        if (supply.Supply is HeldSupply) context.Faults.Add(element, "read a weighing: the supply is no bottle that could be weighed");
        members.Requires(context, WeighingField.Gross, Sizes.GrossMass);
        var gross = QuantityValue.Read(context, members[WeighingField.Gross], Sizes.GrossMass);
        var stamped = QuantityValue.Read(context, members[WeighingField.Stamped], Sizes.GrossMass);
        var step = QuantityValue.Read(context, members[WeighingField.Step], Sizes.ScaleStep);
        var on = DateValue.Read(context, members[WeighingField.On]);
        if (!members.Has(WeighingField.Stamped) && bottle is { EmptyMass: null })
            context.Faults.Add(members.Owner, "stamped", "missing: the gross mass that is stamped on the bottle, as its emptyMass is not given either");
        if (bottle is not null && stamped < bottle.Fill.Kilograms)
            context.Faults.Add(members[WeighingField.Stamped], $"read {QuantityValue.Shown(members[WeighingField.Stamped])}: less than the fill alone, {bottle.Fill.Kilograms:0.####} kg");
        return context.Faults.Count > before ? null : new Weighing(OrNull(stamped), Mass.FromKilograms(gross), OrNull(step), on);
    }

    static GaugeReading? Gauge(ReadingContext context, JsonValue element, in SupplyDraft supply)
    {
        if (element.ValueKind is JsonValueKind.Undefined || !LayoutFields.Gauge.TryRead(context, element, out var members)) return null;
        var before = context.Faults.Count;
        TextValue.Read(context, members[GaugeField.Note], "a note");
        if (supply.Supply is HeldSupply) context.Faults.Add(element, "read a gauge: the supply is no bottle, and holds its pressure");
        var reading = PressureValue.Read(context, members[GaugeField.Reading]);
        var temperature = QuantityValue.Read(context, members[GaugeField.Temperature], Sizes.Temperature);
        if (members.Has(GaugeField.Reading)) members.Requires(context, GaugeField.Temperature, "the temperature of the bottle when its gauge was read");
        else members.Refuses(context, GaugeField.Temperature, "nothing was read at that temperature: give reading too");
        if (!members.Has(GaugeField.Reading) && !members.Has(GaugeField.Green)) context.Faults.Add(element, "read neither reading nor green: a gauge has one of them or both");
        var on = DateValue.Read(context, members[GaugeField.On]);
        var green = Green(context, members[GaugeField.Green]);
        if (context.Faults.Count > before) return null;
        return new GaugeReading(
            double.IsFinite(reading) ? Pressure.FromPascals(reading) : null, double.IsFinite(temperature) ? Temperature.FromKelvins(temperature) : null, on, green);
    }

    static PressureRange? Green(ReadingContext context, JsonValue element)
    {
        if (element.ValueKind is JsonValueKind.Undefined) return null;
        const string right = "two pressures between which the dial is green, the lower first, such as [\"12 bar\", \"17 bar\"]";
        if (element.ValueKind is not JsonValueKind.Array || element.GetArrayLength() != 2)
        {
            context.Faults.Add(element, $"read {Said.Entries(element)}: {right}");
            return null;
        }
        var (low, high) = (PressureValue.Read(context, element[0]), PressureValue.Read(context, element[1]));
        if (low >= high) context.Faults.Add(element, $"read {QuantityValue.Shown(element[0])} and {QuantityValue.Shown(element[1])}: {right}");
        return double.IsFinite(low + high) ? new PressureRange(Pressure.FromPascals(low), Pressure.FromPascals(high)) : null;
    }

    static Mass? OrNull(double kilograms) => double.IsFinite(kilograms) ? Mass.FromKilograms(kilograms) : null;
}
