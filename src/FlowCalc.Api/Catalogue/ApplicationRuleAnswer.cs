namespace FlowCalc.Api.Catalogue;

/// <summary>A usual rule of upkeep.</summary>
/// <param name="Rule">Its name.</param>
/// <param name="Months">The interval, whole calendar months.</param>
/// <param name="Source">Whose rule it is.</param>
public sealed record ApplicationRuleAnswer(string Rule, int Months, string Source);
