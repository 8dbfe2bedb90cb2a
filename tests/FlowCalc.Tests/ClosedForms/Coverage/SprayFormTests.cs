using FlowCalc.Coverage;

namespace FlowCalc.Tests.ClosedForms.Coverage;

/// <summary>Cones on a plane: geometry worked apart by hand; the tilted area was also counted there from 200 000 traced rays.</summary>
public class SprayFormTests
{
    [Fact]
    public void A_60_degree_cone_straight_at_a_face_makes_a_circle()
    {
        var section = Cones.Section(distance: 0.35, fullAngle: 60, tilt: 0)!;

        Assert.Equal(0.40414519, 2 * section.Ellipse!.SemiMajor, tolerance: 1e-7);
        Assert.Equal(0.40414519, 2 * section.Ellipse.SemiMinor, tolerance: 1e-7);
        Assert.Equal(0.1282817, section.Ellipse.Area, tolerance: 1e-7);
        Assert.Equal(15.590688, 2.0 / section.Ellipse.Area, tolerance: 1e-5);
    }

    [Fact]
    public void The_same_cone_tilted_by_35_degrees_makes_an_ellipse_further_out()
    {
        var section = Cones.Section(distance: 0.35, fullAngle: 60, tilt: 35)!;
        var centre = section.Ellipse!.Centre.X;

        Assert.Equal(0.28670322, section.Height, tolerance: 1e-7);
        Assert.Equal(0.29487687, section.Ellipse.SemiMajor, tolerance: 1e-7);
        Assert.Equal(0.22093083, section.Ellipse.SemiMinor, tolerance: 1e-7);
        Assert.Equal(0.31996016, centre, tolerance: 1e-7);
        Assert.Equal(0.025083281, centre - section.Ellipse.SemiMajor, tolerance: 1e-7);
        Assert.Equal(0.61483703, centre + section.Ellipse.SemiMajor, tolerance: 1e-7);
        Assert.Equal(0.20466657, section.Ellipse.Area, tolerance: 1e-7);
        Assert.Equal(0.35, section.Distance!.Value, tolerance: 1e-9);
    }

    [Fact]
    public void An_edge_past_the_horizon_does_not_close()
    {
        Assert.Null(Cones.Section(distance: 0.35, fullAngle: 90, tilt: 50)!.Ellipse);
        Assert.NotNull(Cones.Section(distance: 0.35, fullAngle: 90, tilt: 44)!.Ellipse);
    }

    [Fact]
    public void A_cone_that_looks_away_does_not_reach_the_plane()
    {
        Assert.Null(Cones.Section(height: 0.3, fullAngle: 60, tilt: 121));
        Assert.Null(Cones.Section(height: 0.3, fullAngle: 60, tilt: 119)!.Distance);
    }

    // A circle of radius 1 about a corner of a square of side 2: a quarter of it is on the square; about the middle of an edge: a half.
    [Fact]
    public void A_cone_over_a_corner_or_an_edge_covers_a_quarter_or_a_half()
    {
        var square = Cones.Plane((0, 0), (2, 0), (2, 2), (0, 2));

        var (single, once, twice) = SurfaceStrips.Measure(square, [Cones.Down(0, 0, 1, 45), Cones.Down(1, 0, 1, 45)], TestContext.Current.CancellationToken);

        Assert.Equal(Math.PI / 4, single[0], tolerance: 1e-9);
        Assert.Equal(Math.PI / 2, single[1], tolerance: 1e-9);
        // Two unit circles a radius apart share 2π/3 − √3/2, of which half is on the square.
        var shared = (2 * Math.PI / 3 - Math.Sqrt(3) / 2) / 2;
        Assert.Equal(shared, twice, tolerance: 4e-5);
        Assert.Equal(Math.PI / 2 + Math.PI / 4 - shared, once, tolerance: 4e-5);
    }

    [Fact]
    public void A_cone_that_holds_a_whole_face_covers_it_to_the_last_digit()
    {
        var bent = Cones.Plane((0, 0), (0.4, 0), (0.4, 0.1), (0.1, 0.1), (0.1, 0.4), (0, 0.4));

        var (single, once, _) = SurfaceStrips.Measure(bent, [Cones.Down(0.1, 0.1, 1, 45)], TestContext.Current.CancellationToken);

        Assert.Equal(0.07, single[0], tolerance: 1e-12);
        Assert.Equal(0.07, once, tolerance: 1e-12);
    }
}
