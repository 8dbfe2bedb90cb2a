using CsCheck;
using FlowCalc.Tests.Layouts;
using FlowCalc.Workbench.Drawings;
using FlowCalc.Workbench.Pictures;

namespace FlowCalc.Workbench.Tests.Drawings;

public sealed class DrawingOverlapTests
{
    /// <summary>Points of the sheet; boxes that touch may do so by a rounded digit.</summary>
    const double Touch = 0.01;

    /// <summary>Points of the sheet from a symbol in which tubes that meet there may lie on each other.</summary>
    const double Joint = 9;

    [Theory]
    [MemberData(nameof(DrawnLayouts.Examples), MemberType = typeof(DrawnLayouts))]
    public void Nothing_lies_on_anything_in_the_examples(string example)
    {
        var solved = DrawnLayouts.Solve(DrawnLayouts.Document(example));

        foreach (var view in DrawnLayouts.Views(solved.Layout))
            foreach (var colour in Enum.GetValues<DrawingColour>())
            {
                var seen = new SeenPicture(DrawnLayouts.Draw(solved, view, colour));

                Assert.Empty(seen.OverlappingTexts(Touch));
                Assert.Empty(seen.LabelsOnSymbols(Touch));
                Assert.Empty(seen.OverlappingSymbols(Touch));
                Assert.Empty(seen.LabelsOnTubes());
            }
    }

    [Fact]
    public void Nothing_lies_on_anything_in_any_tree()
    {
        GeneratedLayout.Of(100).Sample(generated =>
        {
            var seen = new SeenPicture(DrawnLayouts.Draw(generated.Read(), DrawingView.Tree));

            Assert.Empty(seen.OverlappingTexts(Touch));
            Assert.Empty(seen.LabelsOnSymbols(Touch));
            Assert.Empty(seen.OverlappingSymbols(Touch));
            Assert.Empty(seen.LabelsOnTubes());
            Assert.Empty(seen.CrossingTubes(Joint));
        }, iter: 60, threads: 1);
    }

    [Fact]
    public void No_name_lies_on_another_or_on_a_symbol_in_any_isometric_view()
    {
        GeneratedLayout.Of(100).Where(generated => generated.IsPlaced).Sample(generated => AssertReadable(DrawnLayouts.Draw(generated.Read(), DrawingView.Isometric)), iter: 40, threads: 1);
    }

    [Theory]
    [InlineData(DrawingView.Tree)]
    [InlineData(DrawingView.Isometric)]
    public void Chain_of_500_points_is_drawn_and_no_name_lies_on_another(DrawingView view) => AssertReadable(DrawnLayouts.Draw(DrawnLayouts.Chain(500, isPlaced: true), view));

    // A line that goes round and comes back to where it began, and a place that falls on another along the line of sight.
    [Fact]
    public void Points_that_fall_on_each_other_keep_a_name_and_a_symbol_each()
    {
        var layout = DrawnLayouts.Read("""
            { "format": 1, "agent": "water", "supply": { "pressure": "12 bar" },
              "points": [ { "id": "S", "kind": "supply", "at": ["0 m", "0 m", "0 m"] }, { "id": "J", "kind": "junction", "at": ["1 m", "0 m", "0 m"] },
                { "id": "A", "kind": "nozzle", "kFactor": "1 L/min/bar^0.5", "at": ["2 m", "1 m", "0 m"] }, { "id": "B", "kind": "nozzle", "kFactor": "1 L/min/bar^0.5", "at": ["2 m", "1 m", "0 m"] },
                { "id": "C", "kind": "nozzle", "kFactor": "1 L/min/bar^0.5", "at": ["2 m", "1 m", "0 m"] } ],
              "runs": [ { "from": "S", "to": "J", "bore": "6 mm" }, { "from": "J", "to": "A", "bore": "4 mm" },
                { "from": "J", "to": "B", "bore": "4 mm", "via": [["1 m", "1 m", "0 m"]], "bendRadius": "20 mm" }, { "from": "J", "to": "C", "bore": "4 mm", "via": [["2 m", "0 m", "0 m"]], "bendRadius": "20 mm" } ] }
            """);

        var picture = DrawnLayouts.Draw(layout, DrawingView.Isometric);

        AssertReadable(picture);
        var boxes = SeenPicture.Things(picture, "points/").ToDictionary(thing => thing.Path, thing => SymbolMarks.BoxOf(thing.Marks));
        double[] widths = [boxes["points/A"].Width, boxes["points/B"].Width, boxes["points/C"].Width];
        Assert.Equal(3, widths.Select(width => Math.Round(width)).Distinct().Count());
    }

    static void AssertReadable(Picture picture)
    {
        var seen = new SeenPicture(picture);
        Assert.Empty(seen.OverlappingTexts(Touch));
        Assert.Empty(seen.LabelsOnSymbols(Touch));
        Assert.All(seen.Texts, text => Assert.True(text.Box is { Left: >= 0, Top: >= 0 } && text.Box.Right <= picture.Width && text.Box.Bottom <= picture.Height, $"{text.Text} is off the sheet: {text.Box}"));
    }
}
