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

/// <summary>A nozzle through time.</summary>
/// <param name="Id">Id of the nozzle's point.</param>
/// <param name="MassFlow">Flow of agent.</param>
/// <param name="Pressure">Total pressure at it.</param>
public sealed record NozzleSeriesAnswer(string Id, ImmutableArray<double> MassFlow, ImmutableArray<double> Pressure);

/// <summary>Units of a series.</summary>
/// <param name="Time">Of times.</param>
/// <param name="Pressure">Of pressures.</param>
/// <param name="Mass">Of masses.</param>
/// <param name="MassFlow">Of flows.</param>
public sealed record SeriesUnits(string Time, string Pressure, string Mass, string MassFlow);
