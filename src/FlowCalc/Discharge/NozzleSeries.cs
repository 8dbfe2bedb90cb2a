using System.Collections.Immutable;
using UnitsNet;

namespace FlowCalc.Discharge;

/// <summary>A nozzle through time.</summary>
/// <param name="Point">Index of the nozzle in <see cref="Layouts.Layout.Points"/>.</param>
/// <param name="MassFlow">Flow of agent.</param>
/// <param name="Pressure">Absolute total pressure at it.</param>
public sealed record NozzleSeries(int Point, ImmutableArray<MassFlow> MassFlow, ImmutableArray<Pressure> Pressure);
