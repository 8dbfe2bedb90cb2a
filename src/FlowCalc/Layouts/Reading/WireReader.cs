using FlowCalc.Circuits;
using UnitsNet;

namespace FlowCalc.Layouts.Reading;

/// <summary>Reads wires.</summary>
static class WireReader
{
    public static readonly Vocabulary Cables = new("flexible", "tinned", "road-vehicle");

    const double Warm = 293.15;

    /// <summary>What a wire has instead of its resistance.</summary>
    public static readonly CircuitPartField[] OfMake =
        [CircuitPartField.Length, CircuitPartField.CrossSection, CircuitPartField.Awg, CircuitPartField.Cable, CircuitPartField.Temperature, CircuitPartField.TemperatureCoefficient];

    /// <summary>A wire by its resistance, or by its length and size; null where something is wrong.</summary>
    public static Wire? Read(ReadingContext context, in Members<CircuitPartField> members, in CircuitPartDraft draft)
    {
        const string right = "a wire has its resistance, or length with crossSection or awg";
        if (members.Has(CircuitPartField.Resistance))
        {
            foreach (var field in OfMake) members.Refuses(context, field, right + ", not both");
            return new Wire(draft.Name, draft.From, draft.To, CircuitPartDraft.Required(context, members));
        }
        members.Requires(context, CircuitPartField.Length, $"{right}; {Sizes.WireLength.What}, one way, is {Sizes.WireLength.Words}");
        var length = QuantityValue.Read(context, members[CircuitPartField.Length], Sizes.WireLength);
        var (area, gauge) = Size(context, members, right);
        var cable = Cable(context, members, draft, area);
        var temperature = Temperature(context, members, draft);
        var coefficient = Coefficient(context, members, draft);
        if (!double.IsFinite(length + temperature + coefficient) || (area is null && gauge is null)) return null;
        var make = new WireMake(Length.FromMeters(length), area is { } known ? Area.FromSquareMeters(known) : null, gauge, cable, UnitsNet.Temperature.FromKelvins(temperature), coefficient);
        if (!make.IsListed) context.Assumptions.Add(draft.Pointer + "/crossSection", "1.7241e-8 ohm·m over the cross-section", "annealed copper, IEC 60028 (from memory); no table of that cable has this size");
        var ohms = make.Resistance.Ohms;
        if (Sizes.Resistance.Holds(ohms)) return new Wire(draft.Name, draft.From, draft.To, make.Resistance) { Make = make };
        context.Faults.Add(members.Owner, $"its length and size make {ohms:G3} ohm: {Sizes.Resistance.What} is {Sizes.Resistance.Words}");
        return null;
    }

    static (double? Area, int? Gauge) Size(ReadingContext context, in Members<CircuitPartField> members, string right)
    {
        if (members.Has(CircuitPartField.Awg))
        {
            members.Refuses(context, CircuitPartField.CrossSection, right + ", one of these two");
            var element = members[CircuitPartField.Awg];
            var gauge = NumberValue.Read(context, element, Sizes.Gauge);
            if (!double.IsFinite(gauge)) return default;
            if (double.IsInteger(gauge)) return (null, (int)gauge);
            context.Faults.Add(element, $"read {Said.Value(element)}: {Sizes.Gauge.What} is {Sizes.Gauge.Words}");
            return default;
        }
        members.Requires(context, CircuitPartField.CrossSection, right);
        var area = QuantityValue.Read(context, members[CircuitPartField.CrossSection], Sizes.WireArea);
        return (double.IsFinite(area) ? area : null, null);
    }

    static CableKind Cable(ReadingContext context, in Members<CircuitPartField> members, in CircuitPartDraft draft, double? area)
    {
        if (members.Has(CircuitPartField.Awg)) members.Refuses(context, CircuitPartField.Cable, "a gauge is of solid wire; cable says what a crossSection is of");
        else if (members.Has(CircuitPartField.Cable)) return (CableKind)Math.Max(0, TextValue.Choice(context, members[CircuitPartField.Cable], Cables));
        else if (area is not null) context.Assumptions.Add(draft.Pointer + "/cable", "flexible", "plain copper of IEC 60228 class 5, whose resistance is not under that of road vehicles' cable");
        return CableKind.Flexible;
    }

    static double Temperature(ReadingContext context, in Members<CircuitPartField> members, in CircuitPartDraft draft)
    {
        if (members.Has(CircuitPartField.Temperature)) return QuantityValue.Read(context, members[CircuitPartField.Temperature], Sizes.WireTemperature);
        context.Assumptions.Add(draft.Pointer + "/temperature", "20 °C", "the temperature of the tables; a wire in a hot engine bay has a quarter more resistance at 85 °C");
        return Warm;
    }

    // Copper's is no assumption worth a line: nothing else is in use.
    static double Coefficient(ReadingContext context, in Members<CircuitPartField> members, in CircuitPartDraft draft) =>
        members.Has(CircuitPartField.TemperatureCoefficient) ? NumberValue.Read(context, members[CircuitPartField.TemperatureCoefficient], Sizes.TemperatureCoefficient) : WireMake.Copper;
}
