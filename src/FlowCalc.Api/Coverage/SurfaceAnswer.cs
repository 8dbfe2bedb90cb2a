using System.Collections.Immutable;
using FlowCalc.Api.Answers;

namespace FlowCalc.Api.Coverage;

/// <summary>How much of a surface the cones cover.</summary>
/// <param name="Id">The surface.</param>
/// <param name="Zone">Its zone; null for none.</param>
/// <param name="Area">Its area.</param>
/// <param name="Covered">What of it is in at least one cone.</param>
/// <param name="CoveredPart">The same as a part of it, 0 to 1.</param>
/// <param name="CoveredTwice">What of it is in at least two cones.</param>
/// <param name="Nozzles">The nozzles whose cones reach it.</param>
/// <param name="Density">Mean over the whole surface of what lands on it; null where a footprint is open or a flow is not told.</param>
public sealed record SurfaceAnswer(string Id, string? Zone, Quantity Area, Quantity Covered, double CoveredPart, Quantity CoveredTwice, ImmutableArray<string> Nozzles, SpanAnswer? Density);
