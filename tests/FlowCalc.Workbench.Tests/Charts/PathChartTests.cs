using FlowCalc.Workbench.Charts;
using FlowCalc.Workbench.Pictures;
using FlowCalc.Workbench.Tests.Solving;

namespace FlowCalc.Workbench.Tests.Charts;

public sealed class PathChartTests
{
    public static TheoryData<string> Examples => Solved.Examples;

    [Theory, MemberData(nameof(Examples))]
    public void Legs_lead_from_the_supplys_pressure_to_the_nozzles(string example)
    {
        var (layout, flow) = (Solved.Of(example).Layout, Solved.Of(example).Flow);
        for (var nozzle = 0; nozzle < flow.Nozzles.Length; nozzle++)
        {
            var legs = PathLeg.Of(layout, flow, nozzle, Solved.Of(example).Shown());

            var pressure = flow.Supply!.ReservoirPressure.Pascals;
            foreach (var leg in legs)
            {
                Assert.Equal(pressure, leg.From.Pascals, tolerance: 1e-6 * pressure);
                pressure -= leg.Drop.Total.Pascals;
            }
            Assert.Equal(flow.Nozzles[nozzle].Pressure.Pascals, pressure, tolerance: 1e-6 * pressure);
            foreach (var kind in DropKind.All)
                Assert.Equal(kind.Of(flow.Nozzles[nozzle].Losses), legs.Sum(leg => kind.Of(leg.Drop)), tolerance: 1);
        }
    }

    [Fact]
    public void Kinds_are_told_apart_without_colour_where_they_stand_beside_each_other()
    {
        // The outlet is a row of its own, so that it may look like the tube.
        var kinds = DropKind.All.Skip(1).Select(kind => kind.Hatch).ToArray();

        Assert.Equal(kinds.Length, kinds.Distinct().Count());
    }

    [Fact]
    public void Long_way_is_told_in_parts_of_which_the_dearest_stand_alone()
    {
        var layout = Chain(120);
        var solved = Workbench.Solving.SolvedLayout.OfFlow(layout, FlowCalc.Quantities.UnitSystem.Metric, TestContext.Current.CancellationToken);

        var picture = PathChart.Of(solved.Layout, solved.Flow, 0, solved.Shown(), ChartSize.Paper.Width);

        Legible.Check(picture);
        Assert.InRange(picture.Height, 0, 800);
        var words = picture.Marks.OfType<Words>().Select(word => word.Text).ToArray();
        Assert.Contains(words, word => word.EndsWith("runs that lose less", StringComparison.Ordinal));
        Assert.Contains(words, word => word.StartsWith("long,", StringComparison.Ordinal));
    }

    static FlowCalc.Layouts.Layout Chain(int runs)
    {
        var points = Enumerable.Range(1, runs - 1).Select(at => $$"""{"id":"p{{at}}","kind":"reducer"}""");
        var pieces = Enumerable.Range(0, runs).Select(at =>
            $$"""{ {{(at == 60 ? "\"id\":\"long\"," : "")}} "from":"{{(at == 0 ? "s" : $"p{at}")}}","to":"{{(at == runs - 1 ? "n" : $"p{at + 1}")}}","bore":"8 mm","length":"{{(at == 60 ? 300 : 10)}} cm"}""");
        var document = $$"""
            {"format":1,"agent":"water","ambientPressure":"1.013 bara","temperature":"20 °C","supply":{"pressure":"12 bar"},"points":[{"id":"s","kind":"supply"},{{string.Join(',', points)}},{"id":"n","kind":"nozzle","kFactor":"2 L/min/bar^0.5"}],
            "runs":[{{string.Join(',', pieces)}}]}
            """;
        var reading = FlowCalc.Layouts.LayoutReader.Read(System.Text.Encoding.UTF8.GetBytes(document));
        Assert.Empty(reading.Faults);
        return reading.Layout!;
    }
}
