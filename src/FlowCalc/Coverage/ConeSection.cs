using FlowCalc.Layouts.Coverage;

namespace FlowCalc.Coverage;

/// <summary>Where a cone cuts a plane: an ellipse, or a curve that does not close.</summary>
/// <param name="Height">Distance of the tip from the plane, m.</param>
/// <param name="Tilt">Angle between the axis and the way straight to the plane, rad.</param>
/// <param name="Distance">Way along the axis to the plane, m; null where the axis does not meet it.</param>
/// <param name="Ellipse">The ellipse; null where the curve does not close.</param>
/// <remarks>
/// With half angle α, tilt β, height h and k = cos²β − sin²α: semi-major axis h·sin α·cos α/k, semi-minor axis h·sin α/√k, centre
/// h·sin β·cos β/k from the foot of the tip along the tilt; closed only while α + β is under 90°. Derived here; the area was held against traced rays.
/// </remarks>
sealed record ConeSection(double Height, double Tilt, double? Distance, SectionEllipse? Ellipse)
{
    // Nearer than that to the plane a nozzle sits in it.
    const double LeastHeight = 1e-6;
    const double Slack = 1e-9;

    /// <summary>The section; null where the cone does not reach the plane.</summary>
    public static ConeSection? Of(in SprayCone cone, SurfacePlane plane)
    {
        var above = (cone.Tip - plane.Origin).Dot(plane.Normal);
        var height = Math.Abs(above);
        if (height < LeastHeight) return null;
        var down = (above > 0 ? -1 : 1) * plane.Normal;
        var tilt = cone.Axis.AngleTo(down);
        if (tilt >= Math.PI / 2 + cone.HalfAngle - Slack) return null;
        double? distance = tilt < Math.PI / 2 - Slack ? height / Math.Cos(tilt) : null;
        if (tilt + cone.HalfAngle >= Math.PI / 2 - Slack) return new(height, tilt, distance, null);

        var (sineA, cosineA) = Math.SinCos(cone.HalfAngle);
        var (sineB, cosineB) = Math.SinCos(tilt);
        // cos²β − sin²α as a product, which keeps its digits where the curve is about to open.
        var k = Math.Cos(tilt + cone.HalfAngle) * Math.Cos(tilt - cone.HalfAngle);
        var foot = cone.Tip + height * down;
        var sideways = cone.Axis - cosineB * down;
        var major = sideways.Length > Slack ? sideways.ToUnit() : plane.Along;
        var centre = foot + height * sineB * cosineB / k * major;
        return new(height, tilt, distance, new(height * sineA * cosineA / k, height * sineA / Math.Sqrt(k), centre, major));
    }
}
