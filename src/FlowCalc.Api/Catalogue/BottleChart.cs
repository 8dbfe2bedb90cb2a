using System.Collections.Immutable;
using FlowCalc.Api.Answers;

namespace FlowCalc.Api.Catalogue;

/// <summary>The pressure of a bottle over its temperature. Pressures are gauge at 1.01325 bara.</summary>
/// <param name="Fill">Mass of agent per volume of bottle.</param>
/// <param name="ChargePressure">Gauge pressure to which it was charged; null where the fill alone says it.</param>
/// <param name="ChargeTemperature">Temperature at which it was charged.</param>
/// <param name="UsualFill">Fill density that standards usually allow; null for a gas.</param>
/// <param name="Rows">Every full 5 K of what is answered, and the ends.</param>
public sealed record BottleChart(Quantity Fill, Quantity? ChargePressure, Quantity ChargeTemperature, Quantity? UsualFill, ImmutableArray<ChartRow> Rows);
