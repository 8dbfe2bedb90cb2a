using FlowCalc.Coverage;
using FlowCalc.Layouts;
using FlowCalc.Layouts.Coverage;
using UnitsNet;

namespace FlowCalc.Tests.ClosedForms.Coverage;

/// <summary>Cones over the plane z = 0.</summary>
static class Cones
{
    const double Degree = Math.PI / 180;

    /// <summary>A polygon in the plane z = 0, m.</summary>
    public static SurfacePlane Plane(params (double X, double Y)[] corners) => new([.. corners.Select(corner => Place(corner.X, corner.Y, 0))]);

    /// <summary>A place, m.</summary>
    public static Place Place(double x, double y, double z) => new(Length.FromMeters(x), Length.FromMeters(y), Length.FromMeters(z));

    /// <summary>A cone straight down.</summary>
    public static SprayCone Down(double x, double y, double height, double halfAngle) => new(new(x, y, height), new(0, 0, -1), halfAngle * Degree);

    /// <summary>A cone tilted from straight down towards x.</summary>
    public static SprayCone Tilted(double height, double fullAngle, double tilt) => new(new(0, 0, height), new(Math.Sin(tilt * Degree), 0, -Math.Cos(tilt * Degree)), fullAngle / 2 * Degree);

    /// <summary>The section of a cone with the plane.</summary>
    /// <param name="fullAngle">Full angle, degrees.</param>
    /// <param name="tilt">Tilt, degrees.</param>
    /// <param name="distance">Way along the axis to the plane, m.</param>
    /// <param name="height">Height over the plane, m, where the axis does not meet it.</param>
    public static ConeSection? Section(double fullAngle, double tilt, double? distance = null, double? height = null) =>
        ConeSection.Of(Tilted(height ?? distance!.Value * Math.Cos(tilt * Degree), fullAngle, tilt), Plane((0, 0), (1, 0), (0, 1)));
}
