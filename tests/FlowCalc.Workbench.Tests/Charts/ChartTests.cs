using System.Xml.Linq;
using FlowCalc.Studies.Reading;
using FlowCalc.Studies.Tolerance;
using FlowCalc.Workbench.Charts;
using FlowCalc.Workbench.Hosting;
using FlowCalc.Workbench.Pictures;
using FlowCalc.Workbench.Solving;
using FlowCalc.Workbench.Tests.Solving;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Logging.Abstractions;

namespace FlowCalc.Workbench.Tests.Charts;

public sealed class ChartTests
{
    // Names as somebody may send them: markup, a name as long as they come, control letters, half a pair of surrogates, letters from right to left.
    static readonly string[] Hostile = ["<script>alert(1)</script>", new('W', 5000), "a\u0001b\nc", "x\ud83dy", "\u05d0\u05d1\u202e<b>", "]]>&amp;\"'"];

    public static TheoryData<string> Examples => Solved.Examples;

    [Theory, MemberData(nameof(Examples))]
    public async Task Charts_of_every_example_are_well_formed_and_say_what_they_show(string example)
    {
        foreach (var picture in All(Solved.Of(example)))
        {
            var svg = XElement.Parse(await SvgAsync(picture));

            Assert.Equal("svg", svg.Name.LocalName);
            Assert.False(string.IsNullOrWhiteSpace(picture.Title));
            Assert.Contains(picture.Description, char.IsDigit);
            Assert.Equal(picture.Title, svg.Elements().Single(element => element.Name.LocalName == "title").Value);
        }
    }

    [Theory, MemberData(nameof(Examples))]
    public void Nothing_is_written_over_something_else_or_beside_the_sheet(string example)
    {
        foreach (var picture in All(Solved.Of(example))) Legible.Check(picture);
    }

    [Fact]
    public async Task Hostile_names_are_shown_as_text_in_their_place()
    {
        foreach (var picture in All(Solved.Renamed(at => Hostile[at % Hostile.Length] + at)))
        {
            Legible.Check(picture);

            var svg = await SvgAsync(picture);
            Assert.DoesNotContain("<script", svg, StringComparison.Ordinal);
            Assert.DoesNotContain("<b>", svg, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void Inks_go_through_the_plotting_library_unchanged_and_no_other_colour_does()
    {
        foreach (var ink in Enum.GetValues<Ink>()) Assert.Equal(ink, ChartInk.Of(ChartInk.Of(ink)));
        Assert.Null(ChartInk.Of(OxyPlot.OxyColors.Transparent));
        Assert.Throws<InvalidOperationException>(() => ChartInk.Of(OxyPlot.OxyColors.Black));
    }

    [Fact]
    public void Sensitivities_stand_in_order_with_their_numbers()
    {
        var document = System.Text.Encoding.UTF8.GetString(FlowCalc.Examples.ExampleCatalogue.Find("raid-pickup")!.Value.Span);
        var question = ToleranceReader.Read(System.Text.Encoding.UTF8.GetBytes($$"""{"layout":{{document}},"samples":400}"""), new(), new(1000, 1000, 1_000_000), TestContext.Current.CancellationToken).Request!;
        var study = ToleranceStudy.Run(question, TaskScheduler.Default, null, TestContext.Current.CancellationToken);

        foreach (var sensitivity in study.Sensitivities)
        {
            var picture = SensitivityChart.Of(study, sensitivity, Solved.Demo.Shown(), 680);

            Legible.Check(picture);
            Assert.Equal(sensitivity.Statement, picture.Description);
            var bars = picture.Marks.OfType<Patch>().Where(patch => patch.Fill == Ink.Kind6).Select(patch => patch.Spots.Max(spot => spot.X) - patch.Spots.Min(spot => spot.X)).ToArray();
            Assert.NotEmpty(bars);
            Assert.Equal(bars.OrderDescending(), bars);
            var words = picture.Marks.OfType<Words>().Select(word => word.Text).ToHashSet();
            Assert.All(sensitivity.Inputs.Take(bars.Length), input => Assert.Contains(Workbench.Figures.Shown.Percent(input.Index.Value), words));
        }
    }

    static IEnumerable<Picture> All(SolvedLayout solved)
    {
        var shown = solved.Shown();
        for (var nozzle = 0; nozzle < solved.Flow.Nozzles.Length; nozzle++) yield return PathChart.Of(solved.Layout, solved.Flow, nozzle, shown, ChartSize.Paper.Width);
        foreach (var size in (ChartSize[])[ChartSize.Page, ChartSize.Paper])
            foreach (var one in (solved.Discharge?.Cases ?? []).Where(one => one.Series is not null))
            {
                yield return FlowChart.Of(solved.Layout, one, shown, size);
                yield return BottleChart.Of(one, shown, size);
            }
    }

    static Task<string> SvgAsync(Picture picture) => new StaticMarkup(new ServiceCollection().BuildServiceProvider(), NullLoggerFactory.Instance).SvgAsync(picture);
}
