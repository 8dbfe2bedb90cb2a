using FlowCalc.Routes;

namespace FlowCalc.Tests.Routes;

public class ClipPlaceTests
{
    const double Table = 0.3824846;

    static RunClips Clips(string json) => RouteDocument.Cut(json).Runs[0].Clips;

    static double[] At(RunClips clips) => [.. clips.At.Select(place => Math.Round(place.Meters, 6))];

    [Fact]
    public void Straight_run_has_clips_near_both_ends_and_equal_spans_between()
    {
        var clips = Clips(RouteDocument.Through([[0, 0, 0], [1.2, 0, 0]], 0.03));

        Assert.Equal([0.1, 0.433333, 0.766667, 1.1], At(clips));
        Assert.Equal(Table, clips.Spacing.Meters, tolerance: 1e-6);
        Assert.False(clips.AreStated);
    }

    [Fact]
    public void Clips_stand_either_side_of_a_bend_and_none_in_a_straight_that_is_too_short()
    {
        var arc = 0.03 * Math.PI / 2;

        var clips = Clips(RouteDocument.Through([[0, 0, 0], [0.25, 0, 0], [0.25, 0.07, 0], [0.5, 0.07, 0]], 0.03));

        var behind = 0.22 + arc + 0.01 + arc;
        Assert.Equal([0.1, 0.12, Math.Round(behind + 0.1, 6), Math.Round(behind + 0.12, 6)], At(clips));
    }

    [Fact]
    public void Short_straight_has_one_clip_in_its_middle() => Assert.Equal([0.08], At(Clips(RouteDocument.Through([[0, 0, 0], [0.16, 0, 0]], 0.03))));

    [Fact]
    public void Spans_beside_a_union_are_a_fifth_shorter_and_those_beside_a_panel_are_not()
    {
        string Document(string kind) => RouteDocument.Through([[0, 0, 0], [1.4, 0, 0]], 0.03, run: $$""", "fittings": [{ "fitting": "{{kind}}", "at": "0.57 m" }]""");

        var (union, panel) = (Clips(Document("union")), Clips(Document("bulkhead-union")));

        // 0.37 m from the first clip to that before the fitting: within 0.382, not within 0.306.
        Assert.Equal([0.1, 0.47, 0.67], At(panel)[..3]);
        Assert.Equal(4, At(union).TakeWhile(place => place <= 0.67).Count());
    }

    [Fact]
    public void No_span_is_longer_than_the_spacing_whatever_the_way()
    {
        foreach (var length in (double[])[0.3, 0.5, 0.77, 1.9, 3.3, 12])
        {
            var at = At(Clips(RouteDocument.Through([[0, 0, 0], [length, 0, 0], [length, 0.4, 0.3], [length, 0.4, 2]], 0.03)));

            Assert.All(at.Zip(at.Skip(1)), pair => Assert.InRange(pair.Second - pair.First, 0, Table + 1e-6));
        }
    }

    [Fact]
    public void A_stated_spacing_is_kept() =>
        Assert.Equal([0.1, 0.35, 0.6, 0.85, 1.1], At(Clips(RouteDocument.Through([[0, 0, 0], [1.2, 0, 0]], 0.03, rest: """, "cutting": { "clipSpacing": "250 mm" }"""))));

    [Fact]
    public void Stated_places_are_the_clips_and_their_gaps_are_measured()
    {
        var clips = Clips(RouteDocument.Through([[0, 0, 0], [1.2, 0, 0]], 0.03, run: """, "clips": ["0.05 m", "0.6 m", "1.0 m"]"""));

        Assert.Equal([0.05, 0.6, 1.0], At(clips));
        Assert.True(clips.AreStated);
        Assert.Equal(0.55, clips.WidestGap.Meters, tolerance: 1e-9);
        Assert.Equal(Table, clips.GapLimit.Meters, tolerance: 1e-6);
        Assert.Equal(0.2, clips.FarthestJoint.Meters, tolerance: 1e-9);
    }

    [Fact]
    public void Very_many_clips_are_counted_and_not_listed()
    {
        var list = RouteDocument.Cut(RouteDocument.Long("10000 m"));

        Assert.Empty(list.Runs[0].Clips.At);
        Assert.InRange(list.Runs[0].Clips.Count, 26_000, 26_300);
        Assert.Contains(list.Assumptions, assumption => assumption.Value.Contains("counted", StringComparison.Ordinal));
    }
}
