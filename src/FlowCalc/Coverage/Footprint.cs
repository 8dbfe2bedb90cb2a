using FlowCalc.Layouts;
using UnitsNet;

namespace FlowCalc.Coverage;

/// <summary>Where the cone of a nozzle cuts the plane of a surface.</summary>
/// <param name="Surface">Index of the surface.</param>
/// <param name="Height">Distance of the nozzle from the plane.</param>
/// <param name="Tilt">Angle between its axis and the way straight to the plane.</param>
/// <param name="Distance">Way along the axis to the plane; null where the axis does not meet it.</param>
/// <param name="SemiMajor">Semi-major axis of the ellipse; null where the edge does not close, half angle and tilt being 90° or more.</param>
/// <param name="SemiMinor">Semi-minor axis; null as well.</param>
/// <param name="Centre">Centre of the ellipse; null as well.</param>
/// <param name="Area">Area of the whole ellipse; null as well.</param>
/// <param name="OnSurface">Area of the surface that is in the cone.</param>
public sealed record Footprint(int Surface, Length Height, Angle Tilt, Length? Distance, Length? SemiMajor, Length? SemiMinor, Place? Centre, Area? Area, Area OnSurface)
{
    /// <summary>Whether the edge does not close.</summary>
    public bool IsOpen => Area is null;

    /// <summary>Mean density of a flow over the whole ellipse, m³/s/m²; null where it does not close.</summary>
    /// <param name="flow">The flow.</param>
    public double? Density(VolumeFlow flow) => Area is { } area ? flow.CubicMetersPerSecond / area.SquareMeters : null;
}
