using System.Text.Json.Nodes;
using CsCheck;
using FlowCalc.Tests.Layouts;
using FlowCalc.Workbench.Drawings;
using FlowCalc.Workbench.Pictures;
using Spot = FlowCalc.Workbench.Pictures.Spot;

namespace FlowCalc.Workbench.Tests.Drawings;

public sealed class DrawingGeometryTests
{
    [Fact]
    public void Order_of_the_document_does_not_change_the_drawing()
    {
        Gen.Select(GeneratedLayout.Of(60), Gen.Int[0, 1_000_000]).Sample((generated, seed) =>
        {
            var document = JsonNode.Parse(generated.Json)!;
            var (first, shuffled) = (DrawnLayouts.Read(document), DrawnLayouts.Read(Shuffled(document, seed)));

            foreach (var view in DrawnLayouts.Views(first))
                Assert.Equal(Svg(DrawnLayouts.Draw(first, view)), Svg(DrawnLayouts.Draw(shuffled, view)));
        }, iter: 25, threads: 1);
    }

    [Fact]
    public void Run_leg_of_a_tee_goes_straight_on_in_a_tree_and_its_branch_aside()
    {
        var picture = DrawnLayouts.Draw(DrawnLayouts.Read(DrawnLayouts.Demo), DrawingView.Tree);
        var tubes = new SeenPicture(picture).Tubes.ToDictionary(tube => tube.Path, tube => tube.Tube.Spots);

        foreach (var straight in (string[])["R5", "R9", "R10", "R13"]) Assert.Equal(tubes[$"runs/{straight}"][0].Y, tubes[$"runs/{straight}"][^1].Y, 6);
        foreach (var (feed, run) in (ReadOnlySpan<(string, string)>)[("R1", "R5"), ("R5", "R9"), ("R9", "R10")]) Assert.Equal(tubes[$"runs/{feed}"][^1], tubes[$"runs/{run}"][0]);
        foreach (var aside in (string[])["R2", "R6", "R11", "R12"]) Assert.True(Math.Abs(tubes[$"runs/{aside}"][0].Y - tubes[$"runs/{aside}"][^1].Y) > 20, aside);
        // A bullhead: one leg up and one down.
        Assert.True((tubes["runs/R3"][^1].Y - tubes["runs/R2"][^1].Y) * (tubes["runs/R4"][^1].Y - tubes["runs/R2"][^1].Y) < 0);
    }

    // x, y and z at 120° to each other and shortened alike: a run along an axis is as long on the sheet whichever axis it is.
    [Fact]
    public void Isometric_view_keeps_lengths_along_the_axes_and_draws_z_upright()
    {
        var layout = DrawnLayouts.Read("""
            { "format": 1, "agent": "water", "supply": { "pressure": "12 bar" },
              "points": [ { "id": "S", "kind": "supply", "at": ["0 m", "0 m", "0 m"] }, { "id": "J", "kind": "junction", "at": ["0 m", "0 m", "1 m"] },
                { "id": "X", "kind": "nozzle", "kFactor": "1 L/min/bar^0.5", "at": ["1 m", "0 m", "1 m"] }, { "id": "Y", "kind": "nozzle", "kFactor": "1 L/min/bar^0.5", "at": ["0 m", "1 m", "1 m"] } ],
              "runs": [ { "id": "z", "from": "S", "to": "J", "bore": "6 mm" }, { "id": "x", "from": "J", "to": "X", "bore": "4 mm" }, { "id": "y", "from": "J", "to": "Y", "bore": "4 mm" } ] }
            """);
        var tubes = new SeenPicture(DrawnLayouts.Draw(layout, DrawingView.Isometric)).Tubes.ToDictionary(tube => tube.Path, tube => (Start: tube.Tube.Spots[0], End: tube.Tube.Spots[^1]));

        var (x, y, z) = (Direction("x"), Direction("y"), Direction("z"));
        Assert.Equal(0, z.X, 6);
        Assert.True(z.Y < 0);
        Assert.Equal(WayLine.Distance(default, z), WayLine.Distance(default, x), 6);
        Assert.Equal(WayLine.Distance(default, z), WayLine.Distance(default, y), 6);
        foreach (var (one, other) in (ReadOnlySpan<(Spot, Spot)>)[(x, y), (y, z)])
        {
            var cosine = (one.X * other.X + one.Y * other.Y) / (WayLine.Distance(default, one) * WayLine.Distance(default, other));
            Assert.Equal(0.5, Math.Abs(cosine), 6);
        }

        Spot Direction(string run) => new(tubes[$"runs/{run}"].End.X - tubes[$"runs/{run}"].Start.X, tubes[$"runs/{run}"].End.Y - tubes[$"runs/{run}"].Start.Y);
    }

    [Fact]
    public void Wider_bore_is_a_wider_tube()
    {
        var layout = DrawnLayouts.Read(DrawnLayouts.Demo);
        foreach (var view in DrawnLayouts.Views(layout))
        {
            var widths = new SeenPicture(DrawnLayouts.Draw(layout, view)).Tubes.ToDictionary(tube => tube.Path, tube => tube.Tube.Width);

            var byBore = layout.Runs.Select(run => (Bore: run.Tube.Bore.Millimeters, Width: widths[$"runs/{run.Id}"])).Distinct().OrderBy(run => run.Bore).ToList();
            Assert.Equal([3, 6, 8], byBore.Select(run => Math.Round(run.Bore, 6)));
            Assert.True(byBore[0].Width + 1 < byBore[1].Width && byBore[1].Width + 0.5 < byBore[2].Width);
        }
    }

    [Fact]
    public void Isometric_view_of_a_layout_without_places_is_refused_and_not_guessed() =>
        Assert.Throws<ArgumentException>(() => DrawnLayouts.Draw(DrawnLayouts.Read(DrawnLayouts.Document("cabinet-inert-gas")), DrawingView.Isometric));

    [Fact]
    public void Fittings_and_corners_are_drawn_where_they_are()
    {
        var picture = DrawnLayouts.Draw(DrawnLayouts.Read(DrawnLayouts.Demo), DrawingView.Isometric);
        var run = SeenPicture.Things(picture, "runs/R9").Single();
        var tube = run.Marks.OfType<Stroke>().First(stroke => stroke.Ink == Ink.Muted);
        var panel = Box.Of(run.Marks.OfType<Stroke>().Where(stroke => stroke.Ink == Ink.Line).SelectMany(stroke => stroke.Spots)).Middle;

        // 1.24 m of R9's 1.4 m: 0.7 m along x, 0.4 m up, 0.3 m along x, less what two arcs of 28 mm save.
        Assert.InRange(WayLine.Distance(tube.Spots[0], panel), 100, 1000);
        Assert.True(Math.Min(WayLine.Distance(panel, tube.Spots[^1]), WayLine.Distance(panel, tube.Spots[0])) is > 10 and < 60);
    }

    static JsonNode Shuffled(JsonNode document, int seed)
    {
        var copy = document.DeepClone();
        var random = new Random(seed);
        foreach (var list in (string[])["points", "runs"])
        {
            JsonNode[] items = [.. copy[list]!.AsArray().Select(item => item!.DeepClone())];
            random.Shuffle(items);
            copy[list] = new JsonArray(items);
        }
        return copy;
    }

    static string Svg(Picture picture) => DrawnLayouts.SvgAsync(picture).GetAwaiter().GetResult();
}
