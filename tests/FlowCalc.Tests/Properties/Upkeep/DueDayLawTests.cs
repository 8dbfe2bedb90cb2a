using CsCheck;
using FlowCalc.Upkeep;

namespace FlowCalc.Tests.Properties.Upkeep;

/// <summary>What holds of every due day.</summary>
public class DueDayLawTests
{
    static readonly Gen<DateOnly> Day = Gen.Int[DateOnly.Parse("1900-01-01", System.Globalization.CultureInfo.InvariantCulture).DayNumber, DateOnly.Parse("2899-12-31", System.Globalization.CultureInfo.InvariantCulture).DayNumber].Select(DateOnly.FromDayNumber);

    [Fact]
    public void It_is_in_the_month_that_the_count_of_months_says() =>
        Gen.Select(Day, Gen.Int[1, 1200]).Sample((from, months) =>
        {
            var due = DueDate.After(from, months);
            return due.Year * 12 + due.Month == from.Year * 12 + from.Month + months;
        }, iter: 20_000);

    [Fact]
    public void It_has_the_same_day_of_the_month_or_the_last_one() =>
        Gen.Select(Day, Gen.Int[1, 1200]).Sample((from, months) =>
        {
            var due = DueDate.After(from, months);
            return due.Day == Math.Min(from.Day, DateTime.DaysInMonth(due.Year, due.Month));
        }, iter: 20_000);

    [Fact]
    public void A_later_day_is_never_due_earlier() =>
        Gen.Select(Day, Gen.Int[0, 400], Gen.Int[1, 1200]).Sample((from, later, months) => DueDate.After(from.AddDays(later), months) >= DueDate.After(from, months), iter: 20_000);

    [Fact]
    public void Twelve_months_are_a_year_but_for_the_leap_day() =>
        Day.Sample(from => DueDate.After(from, 12) == (from is { Month: 2, Day: 29 } ? new DateOnly(from.Year + 1, 2, 28) : new DateOnly(from.Year + 1, from.Month, from.Day)), iter: 20_000);
}
