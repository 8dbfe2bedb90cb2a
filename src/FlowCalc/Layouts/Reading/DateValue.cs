using System.Globalization;
using System.Text.Json;

namespace FlowCalc.Layouts.Reading;

/// <summary>Reads dates: ISO 8601, a day or a month.</summary>
static class DateValue
{
    public const int FirstYear = 1900, LastYear = 2999;

    const string Right = "a date is a day such as \"2026-11-25\" or a month such as \"2026-11\" (ISO 8601), from 1900 to 2999";

    /// <summary>A date; null where it is missing or none. One after the day that is asked for is a fault.</summary>
    public static ServiceDate? Read(ReadingContext context, JsonValue element)
    {
        if (element.ValueKind is JsonValueKind.Undefined) return null;
        if (element.ValueKind is not JsonValueKind.String || RawText.Decode(element.Unquoted) is not { } text || Parse(text) is not { } date)
        {
            context.Faults.Add(element, $"read {Said.Value(element)}: {Right}");
            return null;
        }
        if (context.Options.Today is not { } today || date.Day <= today) return date;
        context.Faults.Add(element, $"read {Said.Value(element)}: it lies after the day that is asked for, {today:yyyy-MM-dd}");
        return null;
    }

    /// <summary>The date of a text; null where it is none.</summary>
    public static ServiceDate? Parse(string text)
    {
        var hasDay = DateOnly.TryParseExact(text, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var day);
        if (!hasDay && !DateOnly.TryParseExact(text, "yyyy-MM", CultureInfo.InvariantCulture, DateTimeStyles.None, out day)) return null;
        return day.Year is >= FirstYear and <= LastYear ? new ServiceDate(day, hasDay) : null;
    }
}
