using FlowCalc.Api.Answers;

namespace FlowCalc.Api.Coverage;

/// <summary>What fresh air does in a zone, well mixed.</summary>
/// <param name="ChangesPerMinute">Changes of air in a minute.</param>
/// <param name="HalfLife">Time in which a concentration halves; null without air.</param>
/// <param name="Flowing">Concentration while the agent flows, steady, as a part of the volume; null without air, of a liquid and without a discharge.</param>
/// <param name="Holds">Time for which the least concentration stays over the design concentration; 0 where it never is; null without air or concentration.</param>
public sealed record ZoneAirAnswer(double ChangesPerMinute, Quantity? HalfLife, double? Flowing, Quantity? Holds);
