using System.Text.Json;
using FlowCalc.Quantities;

namespace FlowCalc.Layouts.Reading;

/// <summary>Reads one reading of a test: a quantity, or an object with a quantity and its uncertainty.</summary>
static class MeasuredValue
{
    /// <summary>Uncertainty of what is collected and of a flow, of a pressure over the surroundings and of a time, as parts of the reading, where the document states none.</summary>
    public const double OfFlow = 0.04, OfPressure = 0.025, OfTime = 0.05;

    /// <summary>The reading and its uncertainty, which may be missing; null where it is neither a quantity nor a reading.</summary>
    public static (JsonValue Reading, JsonValue Uncertainty)? Split(ReadingContext context, JsonValue element)
    {
        if (element.ValueKind is not JsonValueKind.Object || element.TryGetProperty("value", out _)) return (element, default);
        if (!LayoutFields.MeasuredReading.TryRead(context, element, out var members)) return null;
        TextValue.Read(context, members[MeasuredReadingField.Note], "a note");
        if (!members.Requires(context, MeasuredReadingField.Reading, "what was read, a quantity with its unit")) return null;
        return (members[MeasuredReadingField.Reading], members[MeasuredReadingField.Uncertainty]);
    }

    /// <summary>Half the width of the interval of 95 %, in the unit of the reading; NaN where it is wrong.</summary>
    /// <param name="context">The reading.</param>
    /// <param name="element">A part of the reading as a bare number, or a quantity of its kind; missing for the usual part.</param>
    /// <param name="range">The range of what was read.</param>
    /// <param name="size">What a part is of, SI.</param>
    /// <param name="usual">The usual part.</param>
    /// <param name="pointer">Where an assumption points; null to list none.</param>
    public static double Width(ReadingContext context, JsonValue element, SizeRange range, double size, double usual, string? pointer)
    {
        if (element.ValueKind is JsonValueKind.Undefined)
        {
            if (pointer is not null) context.Assumptions.Add(pointer, string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{usual * 100:0.##} % of the reading, 95 of 100 cases"), "common practice, no source");
            return usual * Math.Abs(size);
        }
        if (element.ValueKind is JsonValueKind.Number) return NumberValue.Read(context, element, Sizes.Uncertainty) * Math.Abs(size);
        if (!QuantityValue.TryRead(context, element, range.Kind, out var reading)) return double.NaN;
        if (reading.Si > 0 && reading.Si <= range.Most) return reading.Si;
        context.Faults.Add(element, $"read {QuantityValue.Shown(element)}: an uncertainty is over 0, a part of the reading as a bare number or {KindWords.Of(range.Kind)} with its unit");
        return double.NaN;
    }
}
