using System.Collections.Immutable;
using FlowCalc.Api.Answers;

namespace FlowCalc.Api.Coverage;

/// <summary>Where the cone of a nozzle cuts the plane of a surface.</summary>
/// <param name="Surface">The surface.</param>
/// <param name="Height">Distance of the nozzle from the plane.</param>
/// <param name="Tilt">Angle between its axis and the way straight to the plane.</param>
/// <param name="Distance">Way along the axis to the plane; null where the axis does not meet it.</param>
/// <param name="Open">Whether the edge runs out to no end: half angle and tilt are 90° or more together.</param>
/// <param name="SemiMajor">Semi-major axis of the ellipse; null where it is open.</param>
/// <param name="SemiMinor">Semi-minor axis; null where it is open.</param>
/// <param name="Centre">Centre of the ellipse, [x, y, z]; null where it is open.</param>
/// <param name="Area">Area of the whole ellipse; null where it is open.</param>
/// <param name="OnSurface">Area of the surface that is in the cone.</param>
/// <param name="Density">Mean density of the flow over the whole ellipse; null where it is open or the flow is not told.</param>
public sealed record FootprintAnswer(
    string Surface, Quantity Height, Quantity Tilt, Quantity? Distance, bool Open, Quantity? SemiMajor, Quantity? SemiMinor, ImmutableArray<Quantity>? Centre, Quantity? Area, Quantity OnSurface,
    SpanAnswer? Density);
