using FlowCalc.Circuits;
using UnitsNet;

namespace FlowCalc.Layouts.Reading;

/// <summary>Reads lamps and resistors.</summary>
static class LampReader
{
    const double UsualTolerance = 0.05, UsualLight = 0.002;

    /// <summary>A lamp.</summary>
    public static Lamp Read(ReadingContext context, in Members<CircuitPartField> members, in CircuitPartDraft draft)
    {
        var resistance = CircuitPartDraft.Required(context, members);
        var forward = QuantityValue.Read(context, members[CircuitPartField.ForwardVoltage], Sizes.ForwardVoltage);
        var tolerance = NumberValue.Read(context, members[CircuitPartField.Tolerance], Sizes.Tolerance);
        if (!members.Has(CircuitPartField.Tolerance)) context.Assumptions.Add(draft.Pointer + "/tolerance", "0.05", "a usual resistor; common practice, no source");
        var light = QuantityValue.Read(context, members[CircuitPartField.LightsAt], Sizes.Current);
        if (!members.Has(CircuitPartField.LightsAt)) context.Assumptions.Add(draft.Pointer + "/lightsAt", "2 mA", "a light-emitting diode that is seen in a dark place; common practice, no source");
        return new Lamp(draft.Name, draft.From, draft.To, resistance)
        {
            ForwardVoltage = double.IsFinite(forward) ? ElectricPotential.FromVolts(forward) : null,
            Tolerance = double.IsFinite(tolerance) ? tolerance : UsualTolerance,
            LightsAt = ElectricCurrent.FromAmperes(double.IsFinite(light) ? light : UsualLight),
        };
    }

    /// <summary>A resistor.</summary>
    public static Resistor Resistor(ReadingContext context, in Members<CircuitPartField> members, in CircuitPartDraft draft) =>
        new(draft.Name, draft.From, draft.To, CircuitPartDraft.Required(context, members));
}
