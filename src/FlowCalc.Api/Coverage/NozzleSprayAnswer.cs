using System.Collections.Immutable;
using FlowCalc.Api.Answers;

namespace FlowCalc.Api.Coverage;

/// <summary>Where the spray of a nozzle goes.</summary>
/// <param name="Id">The nozzle.</param>
/// <param name="Zone">Its zone; null for none.</param>
/// <param name="Axis">Where it points, [x, y, z] of length 1; null where the document does not say.</param>
/// <param name="Angle">Full angle of its cone; null where the document does not say.</param>
/// <param name="Distance">Way along the axis to what it aims at, else to the first surface that the axis meets; null for neither.</param>
/// <param name="Flow">What comes out of it, the mean of each case while the first 95 % do; of a held supply its steady flow; null of a gas or an agent that boils.</param>
/// <param name="Footprints">The surfaces of which something is in its cone.</param>
public sealed record NozzleSprayAnswer(string Id, string? Zone, ImmutableArray<double>? Axis, Quantity? Angle, Quantity? Distance, SpanAnswer? Flow, ImmutableArray<FootprintAnswer> Footprints);
