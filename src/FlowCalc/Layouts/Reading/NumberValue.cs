using System.Text.Json;

namespace FlowCalc.Layouts.Reading;

/// <summary>Reads pure numbers.</summary>
static class NumberValue
{
    /// <summary>A number in its range; NaN where it is missing or none.</summary>
    public static double Read(ReadingContext context, JsonValue element, NumberRange range)
    {
        if (element.ValueKind is JsonValueKind.Undefined) return double.NaN;
        if (element.ValueKind is JsonValueKind.Number && element.TryGetDouble(out var value) && range.Holds(value)) return value;
        context.Faults.Add(element, element.ValueKind is JsonValueKind.Number
            ? $"read {Said.Value(element)}: {range.What} is {range.Words}"
            : $"read {Said.Value(element)}: {range.What} is a bare number, {range.Words}");
        return double.NaN;
    }

    /// <summary>A whole number of things; <paramref name="absent"/> where it is missing or none.</summary>
    public static int Count(ReadingContext context, JsonValue element, int absent = 1)
    {
        if (element.ValueKind is JsonValueKind.Undefined) return absent;
        if (element.ValueKind is JsonValueKind.Number && element.TryGetDouble(out var value) && Sizes.Count.Holds(value) && double.IsInteger(value)) return (int)value;
        context.Faults.Add(element, $"read {Said.Value(element)}: {Sizes.Count.What} is {Sizes.Count.Words}");
        return absent;
    }
}
