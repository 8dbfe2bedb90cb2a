using FlowCalc.Layouts.Reading;
using FlowCalc.Quantities;
using FlowCalc.Studies.Tolerance;

namespace FlowCalc.Studies.Reading;

/// <summary>Reads the sizes of a spread of one kind of thing.</summary>
/// <param name="kind">The kind.</param>
/// <param name="ambient">Pressure of the surroundings, Pa.</param>
sealed class SpreadSizes(SpreadKind kind, double ambient)
{
    readonly QuantityKind quantity = new SpreadThing("", kind, [], 0).Quantity;

    /// <summary>Whether a part of the value means anything; a fault where not.</summary>
    public bool TakesParts(ReadingContext context, JsonValue element)
    {
        if (kind != SpreadKind.Temperature) return true;
        context.Faults.Add(element, $"read {Said.Value(element)}: a part of a temperature means nothing; a difference in K is right, such as \"5 K\"");
        return false;
    }

    /// <summary>A difference over 0, SI; NaN where it is none.</summary>
    public double Difference(ReadingContext context, JsonValue element)
    {
        if (!QuantityValue.TryRead(context, element, quantity, out var reading)) return double.NaN;
        if (kind == SpreadKind.Temperature && reading.Unit != "K")
            context.Faults.Add(element, $"read {QuantityValue.Shown(element)}: a difference of temperatures is in K, since {reading.Unit} counts from a point of its own");
        else if (kind == SpreadKind.ChargePressure && !reading.IsGauge)
            context.Faults.Add(element, $"read {QuantityValue.Shown(element)}: a difference of pressures counts from no vacuum; bar, psi or kPa is right");
        else if (!(reading.Si > 0))
            context.Faults.Add(element, $"read {QuantityValue.Shown(element)}: a spread is over 0; what does not vary is left out");
        else return reading.Si;
        return double.NaN;
    }

    /// <summary>An end, SI and of a pressure absolute; NaN where it is none.</summary>
    public double End(ReadingContext context, JsonValue element)
    {
        if (!QuantityValue.TryRead(context, element, quantity, out var reading)) return double.NaN;
        return kind == SpreadKind.ChargePressure && reading.IsGauge ? reading.Si + ambient : reading.Si;
    }
}
