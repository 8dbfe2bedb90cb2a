using System.Collections.Immutable;
using UnitsNet;

namespace FlowCalc.Discharge;

/// <summary>A discharge through time, thinned.</summary>
/// <param name="Time">Instants, rising; a jump stands as two equal instants.</param>
/// <param name="BottlePressure">Absolute pressure in the bottle.</param>
/// <param name="LiquidInBottle">Agent in all bottles.</param>
/// <param name="Nozzles">One entry a nozzle, in the order of the case's nozzles.</param>
public sealed record DischargeSeries(
    ImmutableArray<Duration> Time, ImmutableArray<Pressure> BottlePressure, ImmutableArray<Mass> LiquidInBottle, ImmutableArray<NozzleSeries> Nozzles);
