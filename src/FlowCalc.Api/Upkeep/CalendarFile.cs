using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using FlowCalc.Findings;
using FlowCalc.Layouts;
using FlowCalc.Upkeep;
using Ical.Net.CalendarComponents;
using Ical.Net.DataTypes;
using Ical.Net.Serialization;

namespace FlowCalc.Api.Upkeep;

/// <summary>Writes the dates of upkeep as a calendar, RFC 5545: an event of a whole day for each due day.</summary>
internal static class CalendarFile
{
    /// <summary>Media type of a calendar.</summary>
    public const string ContentType = "text/calendar; charset=utf-8";

    const string Product = "-//FlowCalc//Upkeep//EN";

    /// <summary>The calendar in UTF-8. The same layout on the same day gives the same bytes: its stamp is that day, and an event's id follows from title, rule and due day.</summary>
    /// <param name="layout">The layout.</param>
    /// <param name="result">Its upkeep.</param>
    public static byte[] Write(Layout layout, UpkeepResult result)
    {
        var calendar = new Ical.Net.Calendar { ProductId = Product };
        foreach (var date in result.Dates)
            if (date.Due is { } due) calendar.Events.Add(Event(layout, result, date, due));
        return Encoding.UTF8.GetBytes(new CalendarSerializer().SerializeToString(calendar) ?? throw new InvalidOperationException("A calendar came out as nothing."));
    }

    static CalendarEvent Event(Layout layout, UpkeepResult result, DueDate date, DateOnly due)
    {
        var title = layout.Title is { Length: > 0 } name ? $"{date.Rule.Name} due: {name}" : $"{date.Rule.Name} due";
        var counted = string.Create(CultureInfo.InvariantCulture, $"{date.Rule.Months} months after {date.Counted}. The due day itself is still good.");
        return new CalendarEvent
        {
            Uid = $"{Id(layout, date, due)}@flowcalc",
            DtStamp = new CalDateTime(result.Today.Year, result.Today.Month, result.Today.Day, 0, 0, 0, CalDateTime.UtcTzId),
            Start = new CalDateTime(due.Year, due.Month, due.Day),
            Summary = title,
            Description = $"{counted}\n{date.Source}.\n{Cautions.Law}",
            Transparency = Ical.Net.TransparencyType.Transparent,
        };
    }

    static string Id(Layout layout, DueDate date, DateOnly due) =>
        Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes($"{layout.Title}\n{date.Rule.Name}\n{UpkeepAnswers.Day(due)}")).AsSpan(0, 16));
}
