using FlowCalc.Api.Answers;

namespace FlowCalc.Api.Compare;

/// <summary>The worst that a nozzle gets over the cases of a discharge.</summary>
/// <param name="LeastMass">Least mass out of it.</param>
/// <param name="WorstDeviation">Deviation of its share by mass where that is furthest off; null where nothing is wanted.</param>
/// <param name="LatestArrival">When agent came to it at the latest; null where in some case it never did.</param>
/// <param name="LatestTime95">When 95 % of its own mass was out at the latest; null where in some case it gave nothing.</param>
public sealed record NozzleExtremesAnswer(Quantity LeastMass, double? WorstDeviation, Quantity? LatestArrival, Quantity? LatestTime95);
