using System.Globalization;
using FlowCalc.Findings;
using FlowCalc.Workbench.Drawings;
using FlowCalc.Workbench.Pictures;

namespace FlowCalc.Workbench.Tests.Drawings;

public sealed class DrawingValueTests
{
    [Theory]
    [InlineData(DrawingColour.Flow, "L/min")]
    [InlineData(DrawingColour.Pressure, "bar")]
    [InlineData(DrawingColour.Share, "%")]
    public void Colour_of_each_run_is_the_step_whose_range_in_the_legend_holds_its_value(DrawingColour colour, string unit)
    {
        var solved = DrawnLayouts.Solve(DrawnLayouts.Demo);
        var picture = DrawnLayouts.Draw(solved, colour: colour);
        var ranges = Ranges(picture, unit, mark => mark is Stroke { Ink: >= Ink.Step1 and <= Ink.Step7 } stroke ? stroke.Ink : null);
        Assert.Equal(7, ranges.Count);

        // The engine's own result in the legend's unit: the flow through the density, the gauge pressure, the part of the whole.
        var (flow, whole) = (solved.Flow, solved.Flow.Supply!);
        foreach (var thing in SeenPicture.Things(picture, "runs/"))
        {
            var run = flow.Runs[solved.Layout.Runs.Select(it => "runs/" + it.Id).ToList().IndexOf(thing.Path)];
            var part = run.MassFlow.KilogramsPerSecond / whole.MassFlow.KilogramsPerSecond;
            var value = colour switch
            {
                DrawingColour.Flow => part * whole.VolumeFlow.LitersPerMinute,
                DrawingColour.Pressure => (run.PressureOut - solved.Layout.AmbientPressure).Bars,
                _ => 100 * part,
            };
            var (low, high, half) = ranges[thing.Marks.OfType<Stroke>().Single(stroke => stroke.Ink is >= Ink.Step1 and <= Ink.Step7).Ink];
            Assert.InRange(value, low - half, high + half);
        }
    }

    [Fact]
    public void Colour_of_each_nozzle_is_the_step_whose_range_holds_its_deviation()
    {
        var solved = DrawnLayouts.Solve(DrawnLayouts.Demo);
        var picture = DrawnLayouts.Draw(solved, colour: DrawingColour.Share);
        var ranges = Ranges(picture, "%", mark => mark is Patch { Fill: >= Ink.Step1 and <= Ink.Step7 } patch ? patch.Fill : null);

        foreach (var nozzle in solved.Flow.Nozzles)
        {
            var thing = SeenPicture.Things(picture, "points/").Single(thing => thing.Path == "points/" + solved.Layout.Points[nozzle.Point].Id);
            var (low, high, half) = ranges[thing.Marks.OfType<Patch>().Single().Fill!.Value];
            Assert.InRange(100 * nozzle.Deviation!.Value, low - half, high + half);
        }
    }

    [Fact]
    public void Step_is_told_without_colour_too_by_dashes_that_fill_more_of_the_tube()
    {
        var filled = Enumerable.Range(0, ColourScale.Steps).Select(step => TubeMarks.Of([new(0, 0), new(100, 0)], 5, step, parts: false).OfType<Stroke>().Single(stroke => stroke.Ink == ColourScale.InkOf(step)).Dashes)
            .Select(dashes => dashes.IsEmpty ? 1 : dashes[0] / dashes.Sum()).ToList();

        Assert.Equal(1, filled[^1]);
        Assert.All(filled.Zip(filled.Skip(1)), pair => Assert.True(pair.Second - pair.First >= 0.09, $"{pair}"));
    }

    [Fact]
    public void One_value_everywhere_is_the_middle_step_with_one_row()
    {
        var scale = ColourScale.Of("Flow", [2.5e-5, 2.5e-5], new(60_000, "L/min"))!;

        Assert.Equal(3, scale.Step(2.5e-5));
        Assert.Equal(["1.500 L/min"], scale.Ranges);
    }

    [Theory]
    [InlineData(DrawingView.Tree)]
    [InlineData(DrawingView.Isometric)]
    public void Every_place_that_a_finding_concerns_has_the_mark_of_its_severity_and_its_words(DrawingView view)
    {
        var solved = DrawnLayouts.Solve(DrawnLayouts.Demo);
        var picture = DrawnLayouts.Draw(solved, view);
        var names = solved.Layout.Points.Select(point => "points/" + point.Id).Concat(solved.Layout.Runs.Select(run => "runs/" + run.Id)).ToList();

        var marked = 0;
        foreach (var path in names)
        {
            var id = path[(path.IndexOf('/', StringComparison.Ordinal) + 1)..];
            var there = solved.Findings.Where(finding => finding.Where.Contains(id)).ToList();
            var worst = there.Select(finding => finding.Severity).Append(Severity.Pass).Max();
            var label = picture.Marks.OfType<Thing>().Single(thing => thing.IsRest && thing.Path == path);
            Assert.Equal(worst, MarkOf(label));
            Assert.All(there, finding => Assert.Contains(finding.Message, label.Label, StringComparison.Ordinal));
            marked += worst == Severity.Pass ? 0 : 1;
        }
        Assert.True(marked >= 4, $"{marked}");
    }

    [Fact]
    public void Marks_of_severities_differ_in_shape()
    {
        var shapes = ((Severity[])[Severity.Fail, Severity.Warn, Severity.Note]).Select(severity => Badge.Of(severity, new(0, 0))[0] switch { Patch patch => $"{patch.Spots.Length} corners", Disc => "round", var other => other.ToString() });

        Assert.Equal(["4 corners", "3 corners", "round"], shapes);
    }

    [Fact]
    public void Layout_whose_flow_is_not_found_is_drawn_without_values()
    {
        var document = DrawnLayouts.Demo;
        // Charged a little over the surroundings while it was hot: at 5 °C nothing flows.
        var bottle = document["supply"]!["bottle"]!;
        (bottle["chargePressure"], bottle["chargeTemperature"], document["temperature"]) = ("0.1 bar", "60 °C", "5 °C");
        var solved = DrawnLayouts.Solve(document);
        Assert.False(solved.Flow.Report.Converged);

        var picture = DrawnLayouts.Draw(solved);

        Assert.Equal(13, SeenPicture.Things(picture, "runs/").Count());
        Assert.DoesNotContain(SeenPicture.Things(picture, "runs/").SelectMany(thing => thing.Marks.OfType<Stroke>()), stroke => stroke.Ink is >= Ink.Step1 and <= Ink.Step7);
        Assert.Contains(picture.Marks.OfType<Words>(), words => words.Text.EndsWith("no results", StringComparison.Ordinal));
    }

    static Severity MarkOf(Thing label) => label.Marks.Select(mark => mark switch
    {
        Patch { Fill: Ink.Fail } => Severity.Fail,
        Patch { Fill: Ink.Warn } => Severity.Warn,
        Disc { Fill: Ink.Note } => Severity.Note,
        _ => Severity.Pass,
    }).Max();

    // Each row of the legend: a sample, and the words behind it.
    static Dictionary<Ink, (double Low, double High, double Half)> Ranges(Picture picture, string unit, Func<Mark, Ink?> sample)
    {
        Dictionary<Ink, (double, double, double)> ranges = [];
        Ink? ink = null;
        foreach (var mark in picture.Marks)
        {
            if (mark is not Thing && sample(mark) is { } found) ink = found;
            if (mark is not Words words || ink is not { } known || !words.Text.EndsWith(" " + unit, StringComparison.Ordinal)) continue;
            string[] bounds = words.Text[..^(unit.Length + 1)].Split(" to ");
            var decimals = bounds[0].Contains('.', StringComparison.Ordinal) ? bounds[0].Length - bounds[0].IndexOf('.', StringComparison.Ordinal) - 1 : 0;
            ranges.TryAdd(known, (Number(bounds[0]), Number(bounds[1]), 0.5001 * Math.Pow(10, -decimals)));
            ink = null;
        }
        return ranges;
    }

    static double Number(string text) => double.Parse(text.Replace('\u2212', '-'), NumberStyles.Float, CultureInfo.InvariantCulture);
}
