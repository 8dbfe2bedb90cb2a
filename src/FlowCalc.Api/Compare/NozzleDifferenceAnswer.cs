using FlowCalc.Api.Answers;

namespace FlowCalc.Api.Compare;

/// <summary>A layout's nozzle less the base's.</summary>
/// <param name="Pressure">Difference of the pressures.</param>
/// <param name="MassFlow">Flow over the base's flow, less 1; null where the base's is nothing.</param>
/// <param name="Share">Difference of the shares.</param>
/// <param name="LeastMass">Least mass over the base's, less 1; null without a discharge on either side, or where the base's is nothing.</param>
/// <param name="LatestArrival">Difference of the latest arrivals; null where either has none.</param>
/// <param name="LatestTime95">Difference of the latest 95 % times; null where either has none.</param>
public sealed record NozzleDifferenceAnswer(Quantity Pressure, double? MassFlow, double Share, double? LeastMass, Quantity? LatestArrival, Quantity? LatestTime95);
