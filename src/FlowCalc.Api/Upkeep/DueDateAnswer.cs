namespace FlowCalc.Api.Upkeep;

/// <summary>When something falls due.</summary>
/// <param name="Rule">Name of the rule.</param>
/// <param name="Counted">The date that it counts from, a day or a month; null where the document gives none.</param>
/// <param name="Months">The interval, whole calendar months.</param>
/// <param name="Due">The last day on which it is still good; null where there is no date to count from.</param>
/// <param name="DaysLeft">Days from the day that is asked for to that one, under 0 after it; null where there is none.</param>
/// <param name="Stated">Whether the document states the rule; else it is a usual one.</param>
/// <param name="Source">Whose rule it is.</param>
public sealed record DueDateAnswer(string Rule, string? Counted, int Months, string? Due, int? DaysLeft, bool Stated, string Source);
