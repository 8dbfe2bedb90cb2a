using UnitsNet;

namespace FlowCalc.Discharge;

/// <summary>A band of times.</summary>
/// <param name="Low">Shortest; null where that never happens.</param>
/// <param name="High">Longest; null where that never happens.</param>
public readonly record struct TimeBand(Duration? Low, Duration? High);
