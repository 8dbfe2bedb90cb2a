using System.Globalization;

namespace FlowCalc.Layouts;

/// <summary>A date on a bottle's label or in its book: a day, or a month of which the day is not known.</summary>
/// <param name="Day">The day; the first of the month where the day is not known, which is on the safe side.</param>
/// <param name="HasDay">Whether the day is known.</param>
public readonly record struct ServiceDate(DateOnly Day, bool HasDay)
{
    /// <summary>Whether it is before another; a month is not before a day within it, nor the other way round.</summary>
    /// <param name="other">The other date.</param>
    /// <returns>True where it certainly is.</returns>
    public bool IsBefore(ServiceDate other) => HasDay && other.HasDay ? Day < other.Day : (Day.Year, Day.Month).CompareTo((other.Day.Year, other.Day.Month)) < 0;

    /// <summary>The date as the document has it, ISO 8601.</summary>
    /// <returns>Such as <c>2026-11-25</c> or <c>2026-11</c>.</returns>
    public override string ToString() => Day.ToString(HasDay ? "yyyy-MM-dd" : "yyyy-MM", CultureInfo.InvariantCulture);
}
