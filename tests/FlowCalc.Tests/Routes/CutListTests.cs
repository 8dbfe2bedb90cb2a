using FlowCalc.Tests.Layouts;

namespace FlowCalc.Tests.Routes;

public class CutListTests
{
    static readonly double[][] Straight = [[0, 0, 0], [1, 0, 0]];

    static string With(string fitting) => RouteDocument.Through(Straight, 0.03, ", \"insertion\": \"10 mm\"", $", \"fittings\": [{fitting}]");

    [Fact]
    public void A_joint_with_neither_length_takes_no_allowance_and_is_not_known()
    {
        var piece = RouteDocument.Piece(RouteDocument.Through(Straight, 0.03));

        Assert.Equal(1, piece.Exact.Meters, tolerance: 1e-12);
        Assert.False(piece.Start.IsKnown);
        Assert.Null(piece.Start.Insertion);
    }

    [Fact]
    public void A_stated_default_goes_into_joints_that_say_nothing_and_into_no_others()
    {
        var piece = RouteDocument.Piece(RouteDocument.Through(Straight, 0.03, run: ", \"endJoint\": { \"centreToStop\": \"8 mm\" }", rest: ", \"cutting\": { \"insertion\": \"12 mm\" }"));

        Assert.Equal(1.004, piece.Exact.Meters, tolerance: 1e-12);
        Assert.Equal((false, true), (piece.Start.IsKnown, piece.End.IsKnown));
        Assert.Null(piece.End.Insertion);
    }

    [Fact]
    public void A_joint_of_the_run_stands_before_that_of_the_point()
    {
        var piece = RouteDocument.Piece(RouteDocument.Through(Straight, 0.03, ", \"insertion\": \"10 mm\"", ", \"startJoint\": { \"insertion\": \"15 mm\", \"centreToStop\": \"20 mm\" }"));

        Assert.Equal(1 - 0.020 + 0.010, piece.Exact.Meters, tolerance: 1e-12);
        Assert.Equal(15, piece.Start.Insertion!.Value.Millimeters, tolerance: 1e-9);
    }

    [Theory]
    [InlineData("""{ "fitting": { "kind": "union", "insertion": "20 mm", "centreToStop": "2 mm" }, "at": "0.4 m" }""", 0.408, 0.608, true)]
    [InlineData("""{ "fitting": { "kind": "bulkhead-union", "bore": "5 mm", "length": "40 mm", "insertion": "20 mm" }, "at": "0.4 m" }""", 0.39, 0.59, true)]
    [InlineData("""{ "fitting": { "kind": "union", "insertion": "20 mm" }, "at": "0.4 m" }""", 0.41, 0.61, false)]
    public void A_fitting_with_a_place_cuts_the_tube_in_two(string fitting, double first, double second, bool isKnown)
    {
        var pieces = RouteDocument.Cut(With(fitting)).Runs[0].Pieces;

        Assert.Equal([1, 2], pieces.Select(piece => piece.Number));
        Assert.Equal(first, pieces[0].Exact.Meters, tolerance: 1e-12);
        Assert.Equal(second, pieces[1].Exact.Meters, tolerance: 1e-12);
        Assert.Equal(20, pieces[0].End.Insertion!.Value.Millimeters, tolerance: 1e-9);
        Assert.Equal(isKnown, pieces[1].Start.IsKnown);
    }

    [Theory]
    [InlineData("\"union\"", 1)]
    [InlineData("""{ "fitting": "union", "at": "0.4 m", "count": 3 }""", 3)]
    public void A_fitting_without_a_place_of_its_own_is_counted_and_cuts_nothing(string fitting, long count)
    {
        var list = RouteDocument.Cut(With(fitting));

        Assert.Single(list.Runs[0].Pieces);
        Assert.Equal(count, list.Runs[0].UnplacedFittings);
        Assert.Equal(count, Assert.Single(list.Items, item => item.Kind == "union").Count);
    }

    [Fact]
    public void A_bend_goes_to_the_piece_that_holds_it_and_the_first_of_a_piece_has_no_rotation()
    {
        var pieces = RouteDocument.Cut(RouteDocument.Through(
            [[0, 0, 0], [0.5, 0, 0], [0.5, 0.5, 0], [0.5, 0.5, 0.5]], 0.03, run: """, "fittings": [{ "fitting": { "kind": "union", "centreToStop": "0 mm" }, "at": "0.7 m" }]""")).Runs[0].Pieces;

        Assert.Equal([1, 1], pieces.Select(piece => piece.Bends.Length));
        Assert.Null(pieces[1].Bends[0].Rotation);
        Assert.Equal(0.47, pieces[0].Bends[0].At.Meters, tolerance: 1e-9);
        Assert.Equal(0.44 + 0.03 * Math.PI / 2 + 0.47 - 0.7, pieces[1].Bends[0].At.Meters, tolerance: 1e-9);
        Assert.Equal(3 * 0.5 - 4 * 0.03 + Math.PI * 0.03, pieces[0].Exact.Meters + pieces[1].Exact.Meters, tolerance: 1e-9);
    }

    [Fact]
    public void A_run_given_by_its_length_gets_its_length_and_no_marks()
    {
        var cut = RouteDocument.Cut(RouteDocument.Long("1.2 m", ", \"insertion\": \"10 mm\"", """, "bends": [{ "angle": "90 °", "radius": "30 mm", "count": 3 }]""")).Runs[0];

        var piece = Assert.Single(cut.Pieces);
        Assert.Equal(1.22, piece.Exact.Meters, tolerance: 1e-12);
        Assert.Empty(piece.Bends);
        Assert.Equal(3, cut.UnplacedBends);
        Assert.Equal(6, cut.Clips.Unplaced);
    }

    [Theory]
    [InlineData("0.3 m", 300)]
    [InlineData("0.3000001 m", 301)]
    [InlineData("0.2999999 m", 300)]
    public void A_cut_is_the_next_whole_millimetre(string length, double millimetres) =>
        Assert.Equal(millimetres, RouteDocument.Piece(RouteDocument.Long(length)).Cut!.Value.Millimeters, tolerance: 1e-9);

    [Fact]
    public void What_is_sawn_has_what_squaring_takes_from_both_ends() =>
        Assert.Equal(306, RouteDocument.Piece(RouteDocument.Long("0.3 m", rest: """, "cutting": { "squaring": "3 mm" }""")).Sawn!.Value.Millimeters, tolerance: 1e-9);

    [Fact]
    public void A_run_of_no_length_has_no_piece() => Assert.Empty(RouteDocument.Cut(RouteDocument.Long("0 m", ", \"insertion\": \"10 mm\"")).Runs[0].Pieces);

    [Fact]
    public void A_piece_that_its_fittings_leave_no_length_is_told_and_not_cut()
    {
        var list = RouteDocument.Cut(RouteDocument.Long("0.03 m", ", \"centreToStop\": \"20 mm\""));

        var piece = Assert.Single(list.Runs[0].Pieces);
        Assert.Equal(-0.01, piece.Exact.Meters, tolerance: 1e-12);
        Assert.Null(piece.Cut);
        Assert.Empty(list.Tubes[0].Pieces);
    }

    [Fact]
    public void Pieces_are_packed_with_a_kerf_each_and_offcuts_are_listed()
    {
        var plan = RouteDocument.Cut(RouteDocument.Long("0.4 m", rest: """, "cutting": { "stock": [{ "lengths": ["1 m"] }], "kerf": "2 mm", "squaring": "1 mm" }""")).Tubes[0].Stock!;

        var bar = Assert.Single(plan.Bars);
        Assert.Equal(1000 - 402 - 2, bar.Offcut.Millimeters, tolerance: 1e-6);
        Assert.True(plan.IsLeast);
        Assert.Equal(0, plan.SpareBars);
    }

    [Fact]
    public void A_piece_as_long_as_its_stock_needs_no_last_cut()
    {
        var plan = RouteDocument.Cut(RouteDocument.Long("0.998 m", rest: """, "cutting": { "stock": [{ "coil": "1 m" }] }""")).Tubes[0].Stock!;

        Assert.True(plan.IsCoil);
        Assert.Equal(0, Assert.Single(plan.Bars).Offcut.Meters, tolerance: 1e-12);
        Assert.Equal(1, plan.SpareBars);
    }

    [Fact]
    public void A_piece_longer_than_its_stock_is_told_and_the_stock_of_its_own_tube_stands_first()
    {
        var plan = RouteDocument.Cut(RouteDocument.Long("1.2 m", rest: """, "cutting": { "stock": [{ "lengths": ["6 m"] }, { "tube": "feed", "lengths": ["1 m"] }] }""")).Tubes[0].Stock!;

        Assert.Empty(plan.Bars);
        Assert.Equal([0], plan.TooLong);
    }

    [Fact]
    public void Mass_and_volume_are_those_of_the_tube()
    {
        var order = RouteDocument.Cut(RouteDocument.Long("2 m")).Tubes[0];

        Assert.Equal(Math.PI / 4 * (64 - 36) * 1e-6 * 2 * 2700, order.Mass!.Value.Kilograms, tolerance: 1e-9);
        Assert.Equal(Math.PI / 4 * 36e-6 * 2, order.Filled.CubicMeters, tolerance: 1e-12);
        Assert.Equal((2.002 + 0.002) * 1.1, order.Order.Meters, tolerance: 1e-9);
    }

    [Fact]
    public void Specimen_is_ordered_whole()
    {
        var items = RouteDocument.Cut(Specimen.Json).Items;

        Assert.Equal(
            ["supply trunk", "tee run trunk, run trunk, branch 6 mm bore", "reducer trunk to thin", "nozzle fan", "junction 6 mm bore", "nozzle jet", "cap thin", "bulkhead-union panel on trunk"],
            items.Where(item => item.Kind is not ("clip" or "sleeve")).Select(item => $"{item.Kind} {item.Name}"));
    }

    [Fact]
    public void A_sleeve_covers_50_mm_more_each_side_as_far_as_the_run_goes()
    {
        var list = RouteDocument.Cut(RouteDocument.Long("1 m", run: """, "hotPlaces": [{ "from": "0.02 m", "to": "0.3 m", "sleeved": true }, { "from": "0.5 m", "to": "0.6 m" }]"""));

        var sleeve = Assert.Single(list.Runs[0].Sleeves);
        Assert.Equal((0, 0.35), (sleeve.From.Meters, Math.Round(sleeve.To.Meters, 9)));
        Assert.Equal(9, sleeve.InsideDiameter.Millimeters, tolerance: 1e-9);
        Assert.Equal(350, Assert.Single(list.Items, item => item.Kind == "sleeve").Length!.Value.Millimeters, tolerance: 1e-6);
    }

    [Fact]
    public void A_hole_for_a_bulkhead_union_is_half_a_millimetre_wider_than_its_thread() =>
        Assert.Equal(16.5, Assert.Single(RouteDocument.Cut(With("""{ "fitting": { "kind": "bulkhead-union", "thread": "16 mm" }, "at": "0.4 m" }""")).Items, item => item.Kind == "bulkhead-union")
            .Size!.Value.Millimeters, tolerance: 1e-9);
}
