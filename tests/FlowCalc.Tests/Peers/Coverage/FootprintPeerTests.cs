using FlowCalc.Coverage;
using FlowCalc.Tests.ClosedForms.Coverage;

namespace FlowCalc.Tests.Peers.Coverage;

/// <summary>Areas against two ways that know nothing of conics or strips: rays traced along the edge of a cone, and points strewn over a surface (Halton's sequence).</summary>
public class FootprintPeerTests
{
    // A polygon of rays lies within the ellipse; with 20 000 of them its area is short by 2π²/(3n²), under 1e-7.
    [Theory]
    [InlineData(20, 0)]
    [InlineData(60, 35)]
    [InlineData(90, 30)]
    [InlineData(75, 50)]
    [InlineData(120, 29)]
    public void Area_of_an_ellipse_is_that_of_its_traced_edge(double fullAngle, double tilt)
    {
        var cone = Cones.Tilted(0.31, fullAngle, tilt);
        var section = ConeSection.Of(cone, Cones.Plane((0, 0), (1, 0), (0, 1)))!;

        Assert.Equal(1, TracedArea(cone, 20_000) / section.Ellipse!.Area, tolerance: 1e-6);
    }

    // Half a million points of a sequence that fills evenly: an edge through the face costs about 1e-3 of it at most.
    [Theory]
    [InlineData(60, 35)]
    [InlineData(90, 50)]
    [InlineData(120, 80)]
    [InlineData(40, 95)]
    public void Area_on_a_bent_face_is_the_part_of_points_in_the_cones(double fullAngle, double tilt)
    {
        (double X, double Y)[] corners = [(-0.2, -0.4), (0.9, -0.3), (0.7, 0.1), (0.3, 0.0), (0.5, 0.5), (-0.1, 0.4)];
        var plane = Cones.Plane(corners);
        SprayCone[] cones = [Cones.Tilted(0.25, fullAngle, tilt), Cones.Down(0.3, 0.1, 0.3, 25), Cones.Tilted(0.4, 50, 20)];

        var (single, once, twice) = SurfaceStrips.Measure(plane, [.. cones], TestContext.Current.CancellationToken);

        const int points = 500_000;
        var (counts, one, two) = (new int[cones.Length], 0, 0);
        for (var i = 1; i <= points; i++)
        {
            var (x, y) = (-0.2 + 1.1 * Halton(i, 2), -0.4 + 0.9 * Halton(i, 3));
            if (!IsIn(corners, x, y)) continue;
            var held = 0;
            for (var cone = 0; cone < cones.Length; cone++)
                if (cones[cone].Holds(new(x, y, 0)))
                {
                    counts[cone]++;
                    held++;
                }
            if (held > 0) one++;
            if (held > 1) two++;
        }
        const double box = 1.1 * 0.9, tolerance = 3e-4;
        for (var cone = 0; cone < cones.Length; cone++) Assert.Equal(box * counts[cone] / points, single[cone], tolerance);
        Assert.Equal(box * one / points, once, tolerance);
        Assert.Equal(box * two / points, twice, tolerance);
    }

    static double TracedArea(in SprayCone cone, int rays)
    {
        var side = new Direction(0, 1, 0);
        var up = cone.Axis.Cross(side);
        var (area, last) = (0.0, default((double X, double Y)));
        for (var i = 0; i <= rays; i++)
        {
            var (sine, cosine) = Math.SinCos(2 * Math.PI * i / rays);
            var spread = Math.Tan(cone.HalfAngle);
            var ray = new Direction(
                cone.Axis.X + spread * (cosine * side.X + sine * up.X), cone.Axis.Y + spread * (cosine * side.Y + sine * up.Y), cone.Axis.Z + spread * (cosine * side.Z + sine * up.Z));
            var way = -cone.Tip.Z / ray.Z;
            var here = (X: cone.Tip.X + way * ray.X, Y: cone.Tip.Y + way * ray.Y);
            if (i > 0) area += (last.X * here.Y - here.X * last.Y) / 2;
            last = here;
        }
        return Math.Abs(area);
    }

    static bool IsIn((double X, double Y)[] corners, double x, double y)
    {
        // By the angle that the corners turn round the point.
        var turn = 0.0;
        for (var i = 0; i < corners.Length; i++)
        {
            var (a, b) = (corners[i], corners[(i + 1) % corners.Length]);
            var (ax, ay, bx, by) = (a.X - x, a.Y - y, b.X - x, b.Y - y);
            turn += Math.Atan2(ax * by - ay * bx, ax * bx + ay * by);
        }
        return Math.Abs(turn) > Math.PI;
    }

    static double Halton(int index, int radix)
    {
        var (value, part) = (0.0, 1.0 / radix);
        for (; index > 0; index /= radix, part /= radix) value += index % radix * part;
        return value;
    }
}
