using UnitsNet;

namespace FlowCalc.Flows;

/// <summary>What leaves the supply.</summary>
/// <param name="ReservoirPressure">Absolute pressure that drives the flow: in the bottle, or held at the supply point.</param>
/// <param name="Pressure">Absolute total pressure at the supply point, after the bottle's outlet.</param>
/// <param name="MassFlow">Mass flow of all bottles together.</param>
/// <param name="VolumeFlow">The same as a volume.</param>
public sealed record SupplyFlow(Pressure ReservoirPressure, Pressure Pressure, MassFlow MassFlow, VolumeFlow VolumeFlow);
