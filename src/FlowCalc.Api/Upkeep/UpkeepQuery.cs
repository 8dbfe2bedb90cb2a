using System.Globalization;
using FlowCalc.Api.Faults;
using FlowCalc.Api.Requests;
using FlowCalc.Quantities;
using UnitsNet;

namespace FlowCalc.Api.Upkeep;

/// <summary>What the query of the call asks for.</summary>
/// <param name="Today">The day.</param>
/// <param name="Temperature">Temperature at which the gauge is to be told; null for none.</param>
/// <param name="IsCalendar">Whether the answer is to be a calendar.</param>
internal sealed record UpkeepQuery(DateOnly Today, Temperature? Temperature, bool IsCalendar)
{
    /// <summary>Names of the query.</summary>
    public const string TodayName = "today", TemperatureName = "temperature", FormatName = "format";

    const double Coldest = 173.15, Hottest = 573.15;

    /// <summary>The words of the format; the first is taken where it is left out.</summary>
    public static readonly string[] Formats = ["json", "ics"];

    /// <summary>Reads a query.</summary>
    /// <param name="request">The request.</param>
    /// <param name="fault">What does not fit, all of it; null where all does.</param>
    /// <returns>The query; null where there is a fault.</returns>
    public static UpkeepQuery? Read(HttpRequest request, out Problem? fault)
    {
        fault = null;
        var today = Day(request, isRequired: true, ref fault);
        var temperature = Degrees(request, ref fault);
        var format = QueryChoice.Read(request, FormatName, Formats, ref fault);
        return fault is null && today is { } day ? new(day, temperature, format == 1) : null;
    }

    /// <summary>Reads the day.</summary>
    /// <param name="request">The request.</param>
    /// <param name="isRequired">Whether leaving it out is a fault.</param>
    /// <param name="fault">What does not fit is put to it.</param>
    /// <returns>The day; null where it is left out, or does not fit.</returns>
    public static DateOnly? Day(HttpRequest request, bool isRequired, ref Problem? fault)
    {
        const string right = "today is the day for which the dates are judged, such as 2026-11-25 (ISO 8601, 1900-01-01 to 2999-12-31); the machine's own clock is never asked.";
        if (!request.Query.TryGetValue(TodayName, out var values))
        {
            if (isRequired) fault = Problems.Together(fault, Problems.Query(TodayName, "It is missing: " + right));
        }
        else if (values.Count != 1) fault = Problems.Together(fault, Problems.Query(TodayName, "It stands more than once; once is enough."));
        else if (DateOnly.TryParseExact(values[0], "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var day) && day.Year is >= 1900 and <= 2999) return day;
        else fault = Problems.Together(fault, Problems.Query(TodayName, $"\"{Problems.Shortened(values[0] ?? "")}\" does not fit; {right}"));
        return null;
    }

    /// <summary>Reads the temperature at which the gauge is to be told.</summary>
    /// <param name="request">The request.</param>
    /// <param name="fault">What does not fit is put to it.</param>
    /// <returns>The temperature; null where it is left out, or does not fit.</returns>
    public static Temperature? Degrees(HttpRequest request, ref Problem? fault)
    {
        if (!request.Query.TryGetValue(TemperatureName, out var values)) return null;
        if (values.Count != 1) fault = Problems.Together(fault, Problems.Query(TemperatureName, "It stands more than once; once is enough."));
        else if (!QuantityReader.TryRead(values[0] ?? "", QuantityKind.Temperature, out var reading, out var why)) fault = Problems.Together(fault, Problems.Query(TemperatureName, why));
        else if (reading.Si is < Coldest or > Hottest) fault = Problems.Together(fault, Problems.Query(TemperatureName, $"\"{Problems.Shortened(values[0] ?? "")}\" does not fit; a temperature is -100 to 300 °C."));
        else return UnitsNet.Temperature.FromKelvins(reading.Si);
        return null;
    }
}
