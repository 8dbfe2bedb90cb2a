using FlowCalc.Findings;
using FlowCalc.Quantities;
using FlowCalc.Routes;
using FlowCalc.Tests.Routes;

namespace FlowCalc.Tests.Findings;

public class CutListFindingsTests
{
    static readonly double[][] Bent = [[0, 0, 0], [0.2, 0, 0], [0.2, 0.4, 0]];

    const string Sound = ", \"insertion\": \"10 mm\"", Stocked = """, "cutting": { "kerf": "2 mm", "squaring": "1 mm", "spare": 0.1, "stock": [{ "lengths": ["2 m"] }] }""";

    static CutListJudgement Judge(string json)
    {
        var layout = RouteDocument.Read(json);
        return CutListFindings.Judge(layout, CutList.Of(layout, TestContext.Current.CancellationToken), UnitSystem.Metric, TestContext.Current.CancellationToken);
    }

    static Finding Found(string json, string code) => Assert.Single(Judge(json).Findings, finding => finding.Code == code);

    static void FindsNot(string json, string code) => Assert.DoesNotContain(Judge(json).Findings, finding => finding.Code == code);

    static string Long(string run, string length = "1 m") => RouteDocument.Long(length, Sound, run, Stocked);

    [Fact]
    public void A_sound_run_has_its_density_assumed_and_nothing_else()
    {
        var judgement = Judge(RouteDocument.Through(Bent, 0.04, Sound, rest: Stocked));

        Assert.Equal(Severity.Note, judgement.Verdict);
        Assert.Equal(FindingCodes.AssumptionMade, Assert.Single(judgement.Findings).Code);
        Assert.Contains("density", Assert.Single(judgement.Assumptions).Value, StringComparison.Ordinal);
    }

    [Fact]
    public void Unknown_insertions_are_one_note_with_what_was_taken()
    {
        var none = Found(RouteDocument.Through(Bent, 0.04), FindingCodes.InsertionUnknown);
        var some = Found(RouteDocument.Through(Bent, 0.04, rest: """, "cutting": { "insertion": "12 mm" }"""), FindingCodes.InsertionUnknown);

        Assert.Equal(Severity.Note, none.Severity);
        Assert.Equal(["S", "N"], none.Where);
        Assert.Equal(2, none.Measured!.Value.Si);
        Assert.Contains("no insertion is taken", none.Message, StringComparison.Ordinal);
        Assert.Contains("12 mm is taken", some.Message, StringComparison.Ordinal);
        FindsNot(RouteDocument.Through(Bent, 0.04, Sound), FindingCodes.InsertionUnknown);
    }

    [Theory]
    [InlineData(0.05, Severity.Pass)]    // 10 mm of straight tube, over 8 mm outside
    [InlineData(0.046, Severity.Warn)]   // 6 mm
    [InlineData(0.036, Severity.Fail)]   // 4 mm within the fitting's face
    public void A_bend_leaves_straight_tube_for_the_nut(double leg, Severity severity)
    {
        var json = RouteDocument.Through([[0, 0, 0], [leg, 0, 0], [leg, 0.4, 0]], 0.04, Sound);

        if (severity == Severity.Pass) FindsNot(json, FindingCodes.JointStraightShort);
        else Assert.Equal(severity, Found(json, FindingCodes.JointStraightShort).Severity);
    }

    [Fact]
    public void Bends_overlap_below_nothing_and_warn_within_the_benders_grip()
    {
        double[][] near = [[0, 0, 0], [0.2, 0, 0], [0.2, 0.1, 0], [0.4, 0.1, 0]], tooNear = [[0, 0, 0], [0.2, 0, 0], [0.2, 0.05, 0], [0.4, 0.05, 0]];

        Assert.Equal(-0.03, Found(RouteDocument.Through(tooNear, 0.04, Sound), FindingCodes.BendsOverlap).Measured!.Value.Si, tolerance: 1e-9);
        FindsNot(RouteDocument.Through(near, 0.04, Sound), FindingCodes.BendsOverlap);
        var grip = Found(RouteDocument.Through(near, 0.04, Sound, rest: """, "cutting": { "benderGrip": "25 mm" }"""), FindingCodes.BendsOverlap);
        Assert.Equal(Severity.Warn, grip.Severity);
        Assert.Equal(0.025, grip.Limit!.Value.Si, tolerance: 1e-9);
        Assert.Contains("bender", grip.Source, StringComparison.Ordinal);
    }

    [Fact]
    public void A_bend_tighter_than_the_tube_allows_fails() =>
        Assert.Equal(Severity.Fail, Found(RouteDocument.Through(Bent, 0.02, Sound), FindingCodes.BendTooTight).Severity);

    [Fact]
    public void Bends_and_fittings_without_places_are_told()
    {
        Assert.Contains("3 bends are counted", Found(Long(""", "bends": [{ "angle": "90 °", "radius": "40 mm", "count": 3 }]"""), FindingCodes.BendPlacesUnknown).Message, StringComparison.Ordinal);
        Assert.Contains("1 fitting has no place of its own", Found(Long(""", "fittings": ["union"]"""), FindingCodes.FittingWithoutPlace).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_piece_longer_than_the_stock_fails_and_a_tube_without_stock_is_noted()
    {
        var tooLong = Found(Long("", "2.1 m"), FindingCodes.StockTooShort);

        Assert.Equal((Severity.Fail, 2.122, 2.0), (tooLong.Severity, Math.Round(tooLong.Measured!.Value.Si, 9), tooLong.Limit!.Value.Si));
        FindsNot(Long(""), FindingCodes.StockTooShort);
        Assert.Equal(["feed"], Found(RouteDocument.Long("1 m", Sound), FindingCodes.StockUnknown).Where);
    }

    [Fact]
    public void Fittings_that_leave_no_tube_fail() =>
        Assert.Equal(-0.01, Found(RouteDocument.Long("0.03 m", ", \"centreToStop\": \"20 mm\""), FindingCodes.PieceWithoutLength).Measured!.Value.Si, tolerance: 1e-9);

    [Fact]
    public void Stated_clips_too_far_apart_warn_and_those_far_from_a_fitting_are_noted()
    {
        var json = Long(""", "clips": ["0.05 m", "0.6 m", "0.85 m"]""");

        Assert.Equal(0.55, Found(json, FindingCodes.ClipTooFar).Measured!.Value.Si, tolerance: 1e-9);
        Assert.Equal(0.15, Found(json, FindingCodes.FittingUnsupported).Measured!.Value.Si, tolerance: 1e-9);
        FindsNot(Long(""", "clips": ["0.05 m", "0.35 m", "0.65 m", "0.95 m"]"""), FindingCodes.ClipTooFar);
        Assert.Equal(0.5, Found(RouteDocument.Long("1 m", Sound, rest: """, "cutting": { "clipSpacing": "0.5 m" }"""), FindingCodes.ClipTooFar).Measured!.Value.Si, tolerance: 1e-9);
        FindsNot(Long(""), FindingCodes.FittingUnsupported);
    }

    [Fact]
    public void A_straight_between_fittings_over_300_mm_warns_and_says_how_it_grows()
    {
        var finding = Found(RouteDocument.Through([[0, 0, 0], [1.5, 0, 0]], 0.04, Sound), FindingCodes.StraightBetweenRigidEnds);

        Assert.Equal(Severity.Warn, finding.Severity);
        Assert.Contains("2.83 mm longer", finding.Message, StringComparison.Ordinal);
        FindsNot(RouteDocument.Through([[0, 0, 0], [0.3, 0, 0]], 0.04, Sound), FindingCodes.StraightBetweenRigidEnds);
        FindsNot(RouteDocument.Through(Bent, 0.04, Sound), FindingCodes.StraightBetweenRigidEnds);
    }

    [Theory]
    [InlineData(-0.2, true)]
    [InlineData(-0.05, false)]
    [InlineData(0.2, false)]
    public void A_run_that_sags_below_both_its_ends_is_noted(double height, bool isFound)
    {
        var json = RouteDocument.Through([[0, 0, 0], [0.3, 0, height], [0.6, 0, 0.1]], 0.04, Sound);

        if (isFound) Assert.Equal(0.2, Found(json, FindingCodes.LowPoint).Measured!.Value.Si, tolerance: 1e-9);
        else FindsNot(json, FindingCodes.LowPoint);
    }

    [Fact]
    public void A_hot_place_warns_unless_it_is_sleeved()
    {
        Assert.Contains("softens above 150 °C", Found(Long(""", "hotPlaces": [{ "from": "0.2 m", "to": "0.4 m", "temperature": "200 °C" }]"""), FindingCodes.HotTube).Message, StringComparison.Ordinal);
        Assert.Equal(0.2, Found(Long(""", "hotPlaces": [{ "from": "0.2 m", "to": "0.4 m", "temperature": "120 °C" }]"""), FindingCodes.MissingSleeve).Measured!.Value.Si, tolerance: 1e-9);
        var sleeved = Long(""", "hotPlaces": [{ "from": "0.2 m", "to": "0.4 m", "temperature": "200 °C", "sleeved": true }]""");
        FindsNot(sleeved, FindingCodes.HotTube);
        FindsNot(sleeved, FindingCodes.MissingSleeve);
    }

    [Theory]
    [InlineData("8 mm", false)]
    [InlineData("9 mm", true)]
    public void A_panel_thicker_than_its_bulkhead_union_takes_fails(string panel, bool isFound)
    {
        var json = Long($$""", "fittings": [{ "fitting": { "kind": "bulkhead-union", "panel": "{{panel}}", "panelGrip": "8 mm" }, "at": "0.4 m" }]""");

        if (isFound) Assert.Equal(Severity.Fail, Found(json, FindingCodes.BulkheadGrip).Severity);
        else FindsNot(json, FindingCodes.BulkheadGrip);
    }

    [Fact]
    public void A_limit_of_the_document_moves_a_finding()
    {
        var json = RouteDocument.Through([[0, 0, 0], [0.5, 0, 0]], 0.04, Sound, rest: """, "limits": { "straight-between-rigid-ends": { "warn": "0.6 m" } }""");

        FindsNot(json, FindingCodes.StraightBetweenRigidEnds);
        Assert.Equal(0.6, Assert.Single(Judge(json).Limits, limit => limit.Code == FindingCodes.StraightBetweenRigidEnds).Warn!.Value.Si);
    }

    [Fact]
    public void A_list_of_another_layout_is_refused()
    {
        var (one, other) = (RouteDocument.Read(RouteDocument.Long("1 m")), RouteDocument.Read(Layouts.Specimen.Json));

        Assert.Throws<ArgumentException>(() => CutListFindings.Judge(one, CutList.Of(other, TestContext.Current.CancellationToken), UnitSystem.Metric, TestContext.Current.CancellationToken));
    }
}
