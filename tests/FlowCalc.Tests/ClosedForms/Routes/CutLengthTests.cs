using FlowCalc.Findings.CutLists;
using FlowCalc.Routes;
using FlowCalc.Stock;
using FlowCalc.Tests.Routes;
using UnitsNet;

namespace FlowCalc.Tests.ClosedForms.Routes;

/// <summary>
/// Cut lengths worked out beside the code from plane geometry, by another program: setback R·tan(a/2), arc R·a, gain two setbacks less the arc, cut = legs − gains + ends.
/// </summary>
public class CutLengthTests
{
    const double Micrometre = 1e-6;

    /// <summary>8 mm tube, one right angle, the points at the faces of their fittings, 20 mm deep each.</summary>
    [Fact]
    public void One_bend_between_faces_is_cut_with_both_insertions()
    {
        var piece = RouteDocument.Piece(RouteDocument.Through([[0, 0, 0], [0.4, 0, 0], [0.4, 1.1, 0.2]], 0.028, ", \"insertion\": \"20 mm\""));

        Assert.Equal(1.5460163, piece.Exact.Meters, tolerance: Micrometre);
        Assert.Equal(1.547, piece.Cut!.Value.Meters, tolerance: 1e-12);
        var bend = Assert.Single(piece.Bends);
        Assert.Equal(0.392, bend.At.Meters, tolerance: Micrometre);
        Assert.Equal(90, bend.Angle.Degrees, tolerance: 1e-9);
        Assert.Equal(0.028, bend.Setback.Meters, tolerance: Micrometre);
        Assert.Equal(0.043982297, bend.Arc.Meters, tolerance: Micrometre);
        Assert.Equal(0.012017703, bend.Gain.Meters, tolerance: Micrometre);
        Assert.Null(bend.Rotation);
        Assert.Equal(1.5060163, (piece.Exact - piece.Start.Allowance - piece.End.Allowance).Meters, tolerance: Micrometre);
        Assert.Equal(20, piece.Start.Insertion!.Value.Millimeters, tolerance: 1e-9);
    }

    /// <summary>10 mm tube, three bends in space, the points at the centres of their fittings, 11 mm from centre to stop.</summary>
    [Fact]
    public void Three_bends_in_space_between_centres_have_their_marks_and_turns()
    {
        var piece = RouteDocument.Piece(RouteDocument.Through(
            [[0, 0, 0], [0.3, 0, 0], [0.5, 0.2, 0], [0.5, 0.2, 0.45], [0.9, 0.2, 0.45]], 0.04, ", \"centreToStop\": \"11 mm\""));

        Assert.Equal(1.3747853, piece.Exact.Meters, tolerance: Micrometre);
        Assert.Equal(1.375, piece.Cut!.Value.Meters, tolerance: 1e-12);
        Assert.Equal([45.0, 90, 90], piece.Bends.Select(bend => Math.Round(bend.Angle.Degrees, 9)));
        double[] at = [0.27243146, 0.53012155, 0.96295341], straights = [0.28343146 - 0.011, 0.22627417, 0.37, 0.36 - 0.011];
        for (var bend = 0; bend < 3; bend++) Assert.Equal(at[bend], piece.Bends[bend].At.Meters, tolerance: Micrometre);
        for (var straight = 0; straight < 4; straight++) Assert.Equal(straights[straight], piece.Straights[straight].Meters, tolerance: Micrometre);
        Assert.Equal(90, piece.Bends[1].Rotation!.Value.Degrees, tolerance: 1e-9);
        Assert.Equal(135, piece.Bends[2].Rotation!.Value.Degrees, tolerance: 1e-9);
        Assert.Equal(0.036057452, piece.Bends.Sum(bend => bend.Gain.Meters), tolerance: Micrometre);
    }

    /// <summary>50 mm between two right angles of 35 mm radius leave 20 mm too little.</summary>
    [Fact]
    public void Bends_too_close_leave_a_straight_below_nothing()
    {
        var piece = RouteDocument.Piece(RouteDocument.Through([[0, 0, 0], [0.05, 0, 0], [0.05, 0.05, 0], [0.3, 0.05, 0]], 0.035));

        Assert.Equal(-0.02, piece.Straights[1].Meters, tolerance: Micrometre);
    }

    [Theory]
    [InlineData(30, 0.012299609)]
    [InlineData(45, 0.043028961)]
    [InlineData(60, 0.10750299)]
    [InlineData(90, 0.42920367)]
    [InlineData(120, 1.3697065)]
    public void Gain_is_so_many_radii(double degrees, double radii) =>
        Assert.Equal(radii, new BendMark(Length.Zero, Angle.FromDegrees(degrees), Length.FromMeters(1), null).Gain.Meters, tolerance: 1e-7);

    /// <summary>1.5 m of aluminium over 80 K at 23.6e-6 per kelvin (handbook value, from memory).</summary>
    [Fact]
    public void Aluminium_tube_grows_as_its_coefficient_says() =>
        Assert.Equal(2.832e-3, Ways.Growth(TubeMaterial.Of("aluminium")!, 1.5, 80), tolerance: 1e-9);

    /// <summary>First clips 100 mm from both ends of 1.70 m, 381 mm apart, 0.8 of it beside the tee: six.</summary>
    [Fact]
    public void Clips_of_a_straight_run_from_a_tee_are_six()
    {
        var gap = ClipGap.Between(new ClipAnchor(0.1, IsBesideCarried: true), new ClipAnchor(1.6, IsBesideCarried: false), 0.381);

        Assert.Equal(6, 2 + gap.Inner);
        Assert.True(gap.To(1) <= 0.8 * 0.381);
        Assert.True(1.5 - gap.To(4) <= 0.381);
        Assert.Equal(1.5 / 4.8, gap.Unit, tolerance: 1e-12);
    }
}
