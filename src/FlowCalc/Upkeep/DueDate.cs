using FlowCalc.Layouts;

namespace FlowCalc.Upkeep;

/// <summary>When something of the upkeep falls due.</summary>
/// <param name="Rule">The rule.</param>
/// <param name="Counted">The date that it counts from; null where the document gives none.</param>
/// <param name="Due">The last day on which it is still good; null where there is no date to count from.</param>
/// <param name="DaysLeft">Days from the day that is asked for to the due day, 0 on that day itself, under 0 after it; null without one.</param>
/// <param name="IsStated">Whether the document states the rule.</param>
/// <param name="Source">Whose rule it is.</param>
public sealed record DueDate(ServiceRule Rule, ServiceDate? Counted, DateOnly? Due, int? DaysLeft, bool IsStated, string Source)
{
    /// <summary>The last day on which something is still good.</summary>
    /// <param name="from">The day that the interval counts from.</param>
    /// <param name="months">The interval, whole calendar months, 0 or more.</param>
    /// <returns>The same day so many months later; the last of the month where that month is too short for it, as from the 31st or from 29 February.</returns>
    public static DateOnly After(DateOnly from, int months) => from.AddMonths(months);
}
