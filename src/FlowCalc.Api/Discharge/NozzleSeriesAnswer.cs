using System.Collections.Immutable;

namespace FlowCalc.Api.Discharge;

/// <summary>A nozzle through time.</summary>
/// <param name="Id">Id of the nozzle's point.</param>
/// <param name="MassFlow">Flow of agent.</param>
/// <param name="Pressure">Total pressure at it.</param>
public sealed record NozzleSeriesAnswer(string Id, ImmutableArray<double> MassFlow, ImmutableArray<double> Pressure);
