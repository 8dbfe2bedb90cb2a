namespace FlowCalc.Tests.Layouts;

/// <summary>What the document says of the bench: cutting, joints, clips, hot places and panels.</summary>
public class CuttingFaultTests
{
    const string Whole = """
        { "note": "bench", "stock": [{ "tube": "trunk", "lengths": ["2 m", "3 m"] }, { "tube": "CU-6x1", "coil": "25 m" }, { "lengths": ["6 m"] }], "kerf": "1.5 mm",
          "squaring": "0 mm", "spare": 0.2, "benderGrip": "20 mm", "clipSpacing": "300 mm", "insertion": "15 mm" }
        """;

    [Theory]
    [InlineData("/cutting", "[]", "/cutting", "is an object with")]
    [InlineData("/cutting", """{ "kerf": "-1 mm" }""", "/cutting/kerf", "0 to 100 mm")]
    [InlineData("/cutting", """{ "squaring": 1 }""", "/cutting/squaring", "a bare number")]
    [InlineData("/cutting", """{ "spare": 1.1 }""", "/cutting/spare", "0 to 1")]
    [InlineData("/cutting", """{ "benderGrip": "11 m" }""", "/cutting/benderGrip", "0 to 10 m")]
    [InlineData("/cutting", """{ "clipSpacing": "1 mm" }""", "/cutting/clipSpacing", "10 mm to 100 m")]
    [InlineData("/cutting", """{ "saw": "1 mm" }""", "/cutting/saw", "unknown field 'saw'")]
    [InlineData("/cutting", """{ "stock": {} }""", "/cutting/stock", "an array of objects")]
    [InlineData("/cutting", """{ "stock": [{}] }""", "/cutting/stock/0/lengths", "missing")]
    [InlineData("/cutting", """{ "stock": [{ "lengths": [] }] }""", "/cutting/stock/0/lengths", "1 to 20")]
    [InlineData("/cutting", """{ "stock": [{ "lengths": ["0 m"] }] }""", "/cutting/stock/0/lengths/0", "1 mm to 10 km")]
    [InlineData("/cutting", """{ "stock": [{ "lengths": ["1 m"], "coil": "2 m" }] }""", "/cutting/stock/0/lengths", "lengths, those of its bars, or coil")]
    [InlineData("/cutting", """{ "stock": [{ "tube": "trunck", "coil": "2 m" }] }""", "/cutting/stock/0/tube", "no tube of the document")]
    [InlineData("/cutting", """{ "stock": [{ "coil": "2 m" }, { "coil": "3 m" }] }""", "/cutting/stock/1", "a second stock without tube")]
    [InlineData("/cutting", """{ "stock": [{ "tube": "thin", "coil": "2 m" }, { "tube": "thin", "coil": "3 m" }] }""", "/cutting/stock/1", "has a stock already")]
    [InlineData("/points/0/insertion", "\"11 m\"", "/points/0/insertion", "0 to 10 m")]
    [InlineData("/points/1/centreToStop", "\"-1 mm\"", "/points/1/centreToStop", "0 to 10 m")]
    [InlineData("/runs/0/startJoint", "\"20 mm\"", "/runs/0/startJoint", "is an object with")]
    [InlineData("/runs/0/endJoint", """{ "insertion": "x mm" }""", "/runs/0/endJoint/insertion", "")]
    [InlineData("/runs/0/clips", "\"0.1 m\"", "/runs/0/clips", "an array of places")]
    [InlineData("/runs/0/clips", "[\"0.4 m\", \"0.1 m\"]", "/runs/0/clips", "stand in their order")]
    [InlineData("/runs/0/clips", "[\"1.1 m\"]", "/runs/0/clips", "0 to 1 m here")]
    [InlineData("/runs/0/hotPlaces", "{}", "/runs/0/hotPlaces", "an array of objects")]
    [InlineData("/runs/0/hotPlaces", """[{ "from": "0.1 m" }]""", "/runs/0/hotPlaces/0/to", "missing")]
    [InlineData("/runs/0/hotPlaces", """[{ "from": "0.3 m", "to": "0.2 m" }]""", "/runs/0/hotPlaces/0", "ends after it begins")]
    [InlineData("/runs/0/hotPlaces", """[{ "from": "0.3 m", "to": "1.2 m" }]""", "/runs/0/hotPlaces/0/to", "0 to 1 m here")]
    [InlineData("/runs/0/hotPlaces", """[{ "from": "0.1 m", "to": "0.2 m", "sleeved": "yes" }]""", "/runs/0/hotPlaces/0/sleeved", "true or false")]
    [InlineData("/fittings/panel/panelGrip", "\"0 mm\"", "/fittings/panel/panelGrip", "over 0 to 1 m")]
    [InlineData("/fittings/panel", """{ "kind": "union", "thread": "16 mm" }""", "/fittings/panel/thread", "only a bulkhead-union")]
    public void A_wrong_figure_of_the_bench_is_one_fault(string edit, string? value, string pointer, string words) =>
        Specimen.HasOneFault(Specimen.With((edit, value)), pointer, words);

    [Fact]
    public void Every_figure_of_the_bench_is_read_and_fits_the_schema()
    {
        var json = Specimen.With(
            ("/cutting", Whole), ("/points/0/insertion", "\"10 mm\""), ("/runs/0/startJoint", """{ "insertion": "9 mm", "centreToStop": "12 mm", "note": "union" }"""),
            ("/runs/0/clips", "[\"0.1 m\", \"0.1 m\", \"1 m\"]"), ("/runs/0/hotPlaces", """[{ "from": "0.1 m", "to": "0.2 m", "temperature": "180 °C", "sleeved": true, "note": "pipe" }]"""),
            ("/fittings/panel/panelGrip", "\"8 mm\""), ("/fittings/panel/panel", "\"3 mm\""), ("/fittings/panel/thread", "\"16 mm\""), ("/fittings/panel/centreToStop", "\"20 mm\""));

        var layout = Specimen.Read(json).Layout!;

        Assert.True(BuiltSchema.Accepts(json));
        var cutting = layout.Cutting!;
        Assert.Equal(["trunk 2 3 False", "CU-6x1 25 True", " 6 False"], cutting.Stock.Select(stock => $"{stock.Tube} {string.Join(' ', stock.Lengths.Select(length => length.Meters))} {stock.IsCoil}"));
        Assert.Equal((1.5, 0.0, 0.2), (cutting.Kerf!.Value.Millimeters, cutting.Squaring!.Value.Millimeters, cutting.Spare));
        Assert.Equal((20, 300, 15), (cutting.BenderGrip!.Value.Millimeters, cutting.ClipSpacing!.Value.Millimeters, cutting.Insertion!.Value.Millimeters));
        Assert.Equal(10, layout.Points[0].Joint.Insertion!.Value.Millimeters);
        Assert.Equal((9, 12), (layout.Runs[0].StartJoint.Insertion!.Value.Millimeters, layout.Runs[0].StartJoint.CentreToStop!.Value.Millimeters));
        Assert.False(layout.Runs[0].EndJoint.IsGiven);
        Assert.Equal(3, layout.Runs[0].Clips!.Value.Length);
        Assert.Null(layout.Runs[1].Clips);
        var hot = Assert.Single(layout.Runs[0].HotPlaces);
        Assert.Equal((0.1, 0.2, true), (hot.From.Meters, hot.To.Meters, hot.IsSleeved));
        Assert.Equal(180, hot.Temperature!.Value.DegreesCelsius, tolerance: 1e-9);
        var panel = layout.Runs[1].Fittings[0].Fitting;
        Assert.Equal((8, 3, 16, 20), (panel.PanelGrip!.Value.Millimeters, panel.Panel!.Value.Millimeters, panel.Thread!.Value.Millimeters, panel.CentreToStop!.Value.Millimeters));
    }

    [Fact]
    public void A_document_that_says_nothing_of_the_bench_has_no_cutting() => Assert.Null(Specimen.Read(Specimen.Json).Layout!.Cutting);

    [Fact]
    public void The_flow_does_not_hang_on_the_bench()
    {
        var (with, without) = (Specimen.Read(Specimen.With(("/cutting", Whole), ("/points/0/insertion", "\"10 mm\""))).Layout!, Specimen.Read(Specimen.Json).Layout!);

        Assert.Equal(FlowCalc.Flows.SteadyFlow.Solve(without, TestContext.Current.CancellationToken).Supply, FlowCalc.Flows.SteadyFlow.Solve(with, TestContext.Current.CancellationToken).Supply);
    }
}
