using System.Collections.Immutable;

namespace FlowCalc.Api.Discharge;

/// <summary>A discharge through time, thinned. A jump stands as two equal instants. Pressures are gauge.</summary>
/// <param name="Time">Instants, rising.</param>
/// <param name="BottlePressure">Pressure in the bottle.</param>
/// <param name="LiquidInBottle">Agent in all bottles.</param>
/// <param name="Nozzles">One entry a nozzle, in the document's order.</param>
/// <param name="Units">The units of the numbers.</param>
public sealed record SeriesAnswer(
    ImmutableArray<double> Time, ImmutableArray<double> BottlePressure, ImmutableArray<double> LiquidInBottle, ImmutableArray<NozzleSeriesAnswer> Nozzles, SeriesUnits Units);
