using FlowCalc.Tests.Upkeep;
using FlowCalc.Upkeep;

namespace FlowCalc.Tests.ClosedForms.Upkeep;

/// <summary>Whole calendar months by the calendar itself.</summary>
public class DueDayTests
{
    [Theory]
    [InlineData("2024-02-29", 24, "2026-02-28")]
    [InlineData("2024-02-29", 48, "2028-02-29")]
    [InlineData("2026-08-31", 6, "2027-02-28")]
    [InlineData("2026-01-31", 1, "2026-02-28")]
    [InlineData("2027-12-31", 2, "2028-02-29")]
    [InlineData("2025-11-25", 24, "2027-11-25")]
    [InlineData("2020-06-15", 120, "2030-06-15")]
    [InlineData("2021-12-31", 60, "2026-12-31")]
    [InlineData("2096-02-29", 48, "2100-02-28")]
    public void A_due_day_is_so_many_months_later_or_the_last_of_a_shorter_month(string from, int months, string due) =>
        Assert.Equal(UpkeepDocument.Date(due), DueDate.After(UpkeepDocument.Date(from), months));
}
