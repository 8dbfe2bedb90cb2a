using UnitsNet;

namespace FlowCalc.Coverage;

/// <summary>What fresh air does in a zone, well mixed.</summary>
/// <param name="ChangesPerMinute">Changes of air in a minute.</param>
/// <param name="HalfLife">Time in which a concentration halves; null without air.</param>
/// <param name="Flowing">Concentration while the agent flows that the air makes of it, steady, with the mean of the case that gives least; null without air, of a liquid, and where there is no discharge.</param>
/// <param name="Holds">Time for which the least concentration stays over the design concentration; null without air or concentration, 0 where it never is.</param>
public sealed record ZoneAir(double ChangesPerMinute, Duration? HalfLife, double? Flowing, Duration? Holds);
