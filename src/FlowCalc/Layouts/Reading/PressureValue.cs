using System.Text.Json;
using FlowCalc.Quantities;

namespace FlowCalc.Layouts.Reading;

/// <summary>Reads pressures and makes them absolute.</summary>
static class PressureValue
{
    /// <summary>An absolute pressure, Pa; NaN where it is missing or none.</summary>
    public static double Read(ReadingContext context, JsonValue element)
    {
        if (element.ValueKind is JsonValueKind.Undefined || !QuantityValue.TryRead(context, element, QuantityKind.Pressure, out var reading)) return double.NaN;
        var absolute = reading.IsGauge ? reading.Si + context.Ambient : reading.Si;
        if (Sizes.Pressure.Holds(absolute)) return absolute;
        QuantityValue.Outside(context, element, Sizes.Pressure);
        return double.NaN;
    }

    /// <summary>An absolute pressure over the ambient one, Pa; NaN where it is missing or not.</summary>
    public static double ReadOverAmbient(ReadingContext context, JsonValue element, string what)
    {
        var pressure = Read(context, element);
        if (!(pressure <= context.Ambient)) return pressure;
        context.Faults.Add(element, $"read {QuantityValue.Shown(element)}: {what} is over the ambient pressure of {context.Ambient / 1e5:0.#####} bara");
        return double.NaN;
    }

    /// <summary>The ambient pressure, Pa, whose unit must say absolute; NaN where it is missing or none.</summary>
    public static double ReadAmbient(ReadingContext context, JsonValue element)
    {
        if (element.ValueKind is JsonValueKind.Undefined || !QuantityValue.TryRead(context, element, QuantityKind.Pressure, out var reading)) return double.NaN;
        if (reading.IsGauge)
        {
            context.Faults.Add(element, $"read {QuantityValue.Shown(element)}: {reading.Unit} is gauge, which counts from the ambient pressure itself; use an absolute unit such as bara, kPa(a) or psia");
            return double.NaN;
        }
        if (Sizes.AmbientPressure.Holds(reading.Si)) return reading.Si;
        QuantityValue.Outside(context, element, Sizes.AmbientPressure);
        return double.NaN;
    }
}
