using FlowCalc.Api.Answers;

namespace FlowCalc.Api.Discharge;

/// <summary>A band of times.</summary>
/// <param name="Low">Shortest; null where that never happens.</param>
/// <param name="High">Longest; null where that never happens.</param>
public sealed record TimeBandAnswer(Quantity? Low, Quantity? High);
