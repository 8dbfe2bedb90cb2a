namespace FlowCalc.Studies.Comparing;

/// <summary>One number by which layouts are ranked: the lower the better.</summary>
/// <param name="By">What it is.</param>
/// <param name="Value">The number.</param>
/// <param name="Same">Width of a step within which two count as equal; 0 where only equals do.</param>
readonly record struct StandingMeasure(StandingReason By, double Value, double Same)
{
    /// <summary>The number in whole steps; a least difference instead could let a ranking of three go in a circle.</summary>
    public double Steps => Same > 0 ? Math.Round(Value / Same) : Value;
}
