using System.Text;
using System.Text.Json;
using FlowCalc.Quantities;

namespace FlowCalc.Layouts.Reading;

/// <summary>The members of a quantity written as an object.</summary>
enum QuantityField
{
    Value,
    Unit,
}

/// <summary>Reads numbers with units: text, or an object of a value and a unit.</summary>
static class QuantityValue
{
    /// <summary>A size in its range, SI; NaN where it is missing or none. Pressures have their own way in: <see cref="PressureValue"/>.</summary>
    public static double Read(ReadingContext context, JsonValue element, SizeRange range)
    {
        if (element.ValueKind is JsonValueKind.Undefined || !TryRead(context, element, range.Kind, out var reading)) return double.NaN;
        if (range.Holds(reading.Si)) return reading.Si;
        Outside(context, element, range);
        return double.NaN;
    }

    /// <summary>A fault that says what was read and what the range is.</summary>
    public static void Outside(ReadingContext context, JsonValue element, SizeRange range) =>
        context.Faults.Add(element, $"read {Shown(element)}: {range.What} is {range.Words}");

    /// <summary>A quantity of a kind, whatever its size.</summary>
    public static bool TryRead(ReadingContext context, JsonValue element, QuantityKind kind, out Quantities.Reading reading)
    {
        switch (element.ValueKind)
        {
            case JsonValueKind.String:
                var raw = element.Unquoted;
                if (raw.Contains((byte)'\\')) raw = Encoding.UTF8.GetBytes(RawText.Decode(raw) ?? "");
                if (QuantityReader.TryRead(raw, kind, out reading, out var fault)) return true;
                context.Faults.Add(element, fault);
                return false;
            case JsonValueKind.Object:
                return TryReadParts(context, element, kind, out reading);
            case JsonValueKind.Number:
                context.Faults.Add(element, $"read {Said.Value(element)}: a bare number; {KindWords.Of(kind)} takes {UnitTable.FittingUnits(kind)}");
                break;
            default:
                context.Faults.Add(element, $"read {Said.Value(element)}: {KindWords.Of(kind)} is text such as \"12.5 {FirstUnit(kind)}\", or an object with value and unit; it takes {UnitTable.FittingUnits(kind)}");
                break;
        }
        reading = default;
        return false;
    }

    /// <summary>Whether a text or an object has a unit of a kind, so that the unit may decide what is meant.</summary>
    public static bool Fits(JsonValue element, QuantityKind kind)
    {
        if (element.ValueKind is JsonValueKind.String)
        {
            var raw = element.Unquoted;
            return raw.Contains((byte)'\\')
                ? RawText.Decode(raw) is { } text && QuantityReader.TryRead(text, kind, out _, out _)
                : QuantityReader.TryRead(raw, kind, out _, out _);
        }
        return element.ValueKind is JsonValueKind.Object
            && element.TryGetProperty("unit", out var unit) && unit.ValueKind is JsonValueKind.String
            && RawText.Decode(unit.Unquoted) is { } spelling
            && QuantityReader.TryRead("1 " + spelling, kind, out _, out _);
    }

    /// <summary>A quantity as the document has it, for a message.</summary>
    public static string Shown(JsonValue element)
    {
        if (element.ValueKind is not JsonValueKind.Object) return Said.Value(element);
        return element.TryGetProperty("value", out var value) && element.TryGetProperty("unit", out var unit)
            ? $"{Said.Value(value)} {Said.Value(unit).Trim('"')}"
            : Said.Value(element);
    }

    static bool TryReadParts(ReadingContext context, JsonValue element, QuantityKind kind, out Quantities.Reading reading)
    {
        reading = default;
        if (!LayoutFields.Quantity.TryRead(context, element, out var members)) return false;
        var hasValue = members.Requires(context, QuantityField.Value, "a bare number");
        var hasUnit = members.Has(QuantityField.Unit) || members.Requires(context, QuantityField.Unit, $"one of {UnitTable.FittingUnits(kind)}");
        if (!hasValue || !hasUnit) return false;

        var (value, unit) = (members[QuantityField.Value], members[QuantityField.Unit]);
        if (value.ValueKind is not JsonValueKind.Number) context.Faults.Add(value, $"read {Said.Value(value)}: the value is a bare number, the unit stands beside it");
        var text = TextValue.Read(context, unit, "a unit");
        if (value.ValueKind is not JsonValueKind.Number || text is null) return false;
        // A number too large for a double reads as infinity, which the reader of quantities refuses.
        if (!value.TryGetDouble(out var number)) number = double.PositiveInfinity;
        if (QuantityReader.TryRead(number, Encoding.UTF8.GetBytes(text), kind, out reading, out var fault)) return true;
        context.Faults.Add(element, fault);
        return false;
    }

    static string FirstUnit(QuantityKind kind) => UnitTable.Of(kind).First().Symbol;
}
