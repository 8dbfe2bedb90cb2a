using FlowCalc.Api.Answers;

namespace FlowCalc.Api.Flow;

/// <summary>What leaves the supply.</summary>
/// <param name="Pressure">Gauge total pressure at the supply point, after the bottle's outlet.</param>
/// <param name="MassFlow">Mass flow of all bottles together.</param>
/// <param name="VolumeFlow">The same as a volume.</param>
public sealed record SupplyAnswer(Quantity Pressure, Quantity MassFlow, Quantity VolumeFlow);
