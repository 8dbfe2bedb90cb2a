namespace FlowCalc.Studies.Comparing;

/// <summary>A layout's place among those compared.</summary>
/// <param name="Result">Its place among the results, from 0.</param>
/// <param name="By">What put it behind the one before it; <see cref="StandingReason.Order"/> for the first.</param>
/// <param name="Reason">The same in a sentence with the numbers.</param>
public sealed record RankedVariant(int Result, StandingReason By, string Reason);
