using UnitsNet;
using UnitSystem = FlowCalc.Quantities.UnitSystem;

namespace FlowCalc.Checks;

/// <summary>What a check is asked beside the layout.</summary>
/// <param name="Units">The system of units that messages are written in.</param>
/// <param name="Today">The day for which dates are judged; null for none, and then they are not.</param>
/// <param name="GaugeTemperature">Temperature at which the gauge is to be told; null for none.</param>
public sealed record CheckAsk(UnitSystem Units, DateOnly? Today = null, Temperature? GaugeTemperature = null);
