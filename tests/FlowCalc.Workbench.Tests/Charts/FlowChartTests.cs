using FlowCalc.Workbench.Charts;
using FlowCalc.Workbench.Figures;
using FlowCalc.Workbench.Hosting;
using FlowCalc.Workbench.Pictures;
using FlowCalc.Workbench.Tests.Solving;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Logging.Abstractions;
using OxyPlot.Series;

namespace FlowCalc.Workbench.Tests.Charts;

public sealed class FlowChartTests
{
    [Fact]
    public void Every_nozzle_has_its_line_with_its_greatest_flow_and_its_name_at_the_end()
    {
        var (layout, one) = (Solved.Demo.Layout, Solved.Demo.Discharge!.Cases[0]);
        var shown = Solved.Demo.Shown();

        var model = FlowChart.Model(layout, one, shown, ChartSize.Page, FlowChart.Named(one));
        var picture = FlowChart.Of(layout, one, shown, ChartSize.Page);

        Assert.Equal(one.Nozzles.Select(nozzle => layout.Points[nozzle.Point].Id), model.Series.Select(series => series.Title));
        foreach (var (series, flows) in model.Series.Cast<LineSeries>().Zip(one.Series!.Nozzles))
        {
            Assert.Equal(flows.MassFlow.Max(flow => flow.KilogramsPerSecond), series.Points.Max(point => point.Y), tolerance: 1e-12);
            Assert.Contains(picture.Marks.OfType<Words>(), words => words.Text == series.Title);
        }
    }

    [Fact]
    public void Lines_are_told_apart_without_colour()
    {
        var patterns = Enumerable.Range(0, LineLook.Count).Select(at => string.Join(' ', LineLook.Dashes(at))).ToArray();

        Assert.Equal(patterns.Length, patterns.Distinct().Count());
        Assert.Equal(LineLook.Count, Enumerable.Range(0, LineLook.Count).Select(LineLook.Of).Distinct().Count());
    }

    [Fact]
    public async Task Chart_of_many_nozzles_names_the_worst_and_stays_small()
    {
        var (layout, one) = Solved.Many(500);

        var model = FlowChart.Model(layout, one, Solved.Demo.Shown(), ChartSize.Page, FlowChart.Named(one));
        var picture = FlowChart.Of(layout, one, Solved.Demo.Shown(), ChartSize.Page);
        var svg = await new StaticMarkup(new ServiceCollection().BuildServiceProvider(), NullLoggerFactory.Instance).SvgAsync(picture, TestContext.Current.CancellationToken);

        Legible.Check(picture);
        Assert.Equal(500, model.Series.Count);
        var words = picture.Marks.OfType<Words>().Select(word => word.Text).ToHashSet();
        var named = one.Nozzles.OrderByDescending(nozzle => Math.Abs(nozzle.Deviation!.Value)).Take(LineLook.Count).Select(nozzle => layout.Points[nozzle.Point].Id).ToArray();
        Assert.All(named, name => Assert.Contains(name, words));
        Assert.Equal(LineLook.Count, words.Count(word => word.StartsWith("nozzle-", StringComparison.Ordinal)));
        Assert.Contains("492 others, nearer to their share", words);
        Assert.Contains("8 of 500 nozzles are named", picture.Description, StringComparison.Ordinal);
        Assert.InRange(svg.Length, 0, 500_000);
    }

    [Theory]
    [InlineData(FlowCalc.Quantities.UnitSystem.Metric, "flow (kg/s)")]
    [InlineData(FlowCalc.Quantities.UnitSystem.Us, "flow (lb/s)")]
    public void Axes_have_the_units_that_were_asked_for(FlowCalc.Quantities.UnitSystem units, string title)
    {
        var one = Solved.Demo.Discharge!.Cases[0];
        var shown = new Shown(units, Solved.Demo.Layout.AmbientPressure);

        var picture = FlowChart.Of(Solved.Demo.Layout, one, shown, ChartSize.Page);

        Assert.Contains(picture.Marks.OfType<Words>(), words => words.Text == title);
        Assert.Contains(shown.Of(one.PeakMassFlow), picture.Description, StringComparison.Ordinal);
    }

    [Fact]
    public void Case_without_a_discharge_has_no_chart()
    {
        var one = Solved.Demo.Discharge!.Cases[0] with { Series = null };

        Assert.Throws<ArgumentException>(() => FlowChart.Of(Solved.Demo.Layout, one, Solved.Demo.Shown(), ChartSize.Page));
    }
}
