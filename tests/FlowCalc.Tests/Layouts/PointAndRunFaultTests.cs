namespace FlowCalc.Tests.Layouts;

/// <summary>Faults of single points and runs, by length.</summary>
public class PointAndRunFaultTests
{
    [Theory]
    [InlineData("/points", "{}", "/points", "points are an array")]
    [InlineData("/runs", "5", "/runs", "runs are an array")]
    [InlineData("/runs", null, "/runs", "missing")]
    [InlineData("/points/5/id", "\"\"", "/points/5/id", "1 to 200 characters")]
    [InlineData("/points/5/id", "5", "/points/5/id", "is text")]
    [InlineData("/points/5/id", null, "/points/5/id", "missing")]
    [InlineData("/points/5/kind", null, "/points/5/kind", "missing: one of supply, tee")]
    [InlineData("/points/5/kind", "\"sprinkler\"", "/points/5/kind", "one of supply, tee, reducer, junction, nozzle, cap")]
    [InlineData("/points/4", "\"fork\"", "/points/4", "a point is an object")]
    [InlineData("/points/4/body", "\"smooth\"", "/points/4/body", "belongs to a tee; a junction has none")]
    [InlineData("/points/4/zone", "\"left\"", "/points/4/zone", "belongs to a nozzle; a junction has none")]
    [InlineData("/points/4/noet", "\"x\"", "/points/4/noet", "did you mean 'note'")]
    [InlineData("/points/1/fedThrough", null, "/points/1/fedThrough", "missing: run or branch")]
    [InlineData("/points/1/fedThrough", "\"side\"", "/points/1/fedThrough", "one of run, branch")]
    [InlineData("/points/1/body", "\"rough\"", "/points/1/body", "one of smooth, threaded")]
    [InlineData("/points/5/nozzle", "\"jett\"", "/points/5/nozzle", "did you mean 'jet'")]
    [InlineData("/points/5/nozzle", null, "/points/5", "none of nozzle, kFactor and orifice")]
    [InlineData("/points/5/kFactor", "\"1 L/min/bar^0.5\"", "/points/5/kFactor", "one of nozzle")]
    [InlineData("/points/5/orifice", """{ "diameter": "1 mm", "dischargeCoefficient": 0.8 }""", "/points/5/orifice", "one of nozzle")]
    [InlineData("/points/5/zone", "\"rihgt\"", "/points/5/zone", "did you mean 'right'")]
    [InlineData("/points/5/share", "1.5", "/points/5/share", "over 0 to 1")]
    [InlineData("/points/5/pressureRange", "[\"4 bar\", \"4 bar\"]", "/points/5/pressureRange", "below the most")]
    [InlineData("/points/5/aim", "[0, 0]", "/points/5/aim", "three bare numbers")]
    [InlineData("/points/5/aim", "[0, 0, 0]", "/points/5/aim", "no length")]
    [InlineData("/points/5/spray", "[]", "/points/5/spray", "a spray is an object")]
    [InlineData("/points/5/id", "\"first\"", "/points/5/id", "another point has that id")]
    [InlineData("/runs/2", "[]", "/runs/2", "a run is an object")]
    [InlineData("/runs/2/from", "\"stepp\"", "/runs/2/from", "did you mean 'step'")]
    [InlineData("/runs/2/to", "\"frist\"", "/runs/2/to", "did you mean 'first'")]
    [InlineData("/runs/2/to", "7", "/runs/2/to", "is text")]
    [InlineData("/runs/2/to", null, "/runs/2/to", "missing")]
    [InlineData("/runs/2/id", "\"main\"", "/runs/2/id", "another run is named 'main'")]
    [InlineData("/runs/1/id", "\"step-first\"", "/runs/2/id", "a run without id is named by its points")]
    [InlineData("/runs/2/tube", "\"thinn\"", "/runs/2/tube", "did you mean 'thin'")]
    [InlineData("/runs/2/tube", null, "/runs/2/tube", "missing: a run has tube")]
    [InlineData("/runs/2/bore", "\"4 mm\"", "/runs/2/bore", "or its own bore")]
    [InlineData("/runs/2/roughness", "\"2 µm\"", "/runs/2/roughness", "the roughness is the tube's")]
    [InlineData("/runs/3/bore", "\"0 mm\"", "/runs/3/bore", "0.001 mm to 1 m")]
    [InlineData("/runs/3/roughness", "\"1 mm\"", "/runs/3/roughness", "0 to 5 % of the bore")]
    [InlineData("/runs/2/length", null, "/runs/2/length", "missing: the developed length")]
    [InlineData("/runs/2/length", "\"-1 m\"", "/runs/2/length", "0 to 10 km")]
    [InlineData("/runs/2/length", "\"10001 m\"", "/runs/2/length", "0 to 10 km")]
    [InlineData("/runs/2/length", "0.3", "/runs/2/length", "a bare number; length takes")]
    [InlineData("/runs/2/rise", "\"0.4 m\"", "/runs/2/rise", "over the run's length of 0.3 m")]
    [InlineData("/runs/2/rise", "\"-0.4 m\"", "/runs/2/rise", "over the run's length of 0.3 m")]
    [InlineData("/runs/2/via", "[]", "/runs/2/via", "whose points have places")]
    [InlineData("/runs/2/bendRadius", "\"40 mm\"", "/runs/2/bendRadius", "whose points have places")]
    [InlineData("/runs/0/bends", "{}", "/runs/0/bends", "bends are an array")]
    [InlineData("/runs/0/bends/0/angle", "\"0 °\"", "/runs/0/bends/0/angle", "over 0 to 180°")]
    [InlineData("/runs/0/bends/0/angle", "\"181 °\"", "/runs/0/bends/0/angle", "over 0 to 180°")]
    [InlineData("/runs/0/bends/0/angle", null, "/runs/0/bends/0/angle", "missing")]
    [InlineData("/runs/0/bends/0/radius", "\"3 mm\"", "/runs/0/bends/0/radius", "half the bore of 8 mm or more")]
    [InlineData("/runs/0/bends/0/radius", null, "/runs/0/bends/0/radius", "missing")]
    [InlineData("/runs/0/bends/0/count", "0", "/runs/0/bends/0/count", "1 to 10000")]
    [InlineData("/runs/0/bends/0/count", "20", "/runs/0/bends", "over the run's length of 1 m")]
    [InlineData("/runs/1/fittings", "\"panel\"", "/runs/1/fittings", "fittings are an array")]
    [InlineData("/runs/1/fittings/0", "5", "/runs/1/fittings/0", "a fitting is an id of the catalogue")]
    [InlineData("/runs/1/fittings/0", "\"pannel\"", "/runs/1/fittings/0", "did you mean 'panel'")]
    [InlineData("/runs/1/fittings/0", "{}", "/runs/1/fittings/0/kind", "missing")]
    [InlineData("/runs/1/fittings/0", """{ "at": "0.1 m" }""", "/runs/1/fittings/0/fitting", "missing")]
    [InlineData("/runs/1/fittings/0/at", "\"0.6 m\"", "/runs/1/fittings/0/at", "0 to 0.5 m here")]
    [InlineData("/runs/1/fittings/0/at", "\"-0.1 m\"", "/runs/1/fittings/0/at", "0 to the run's length")]
    [InlineData("/runs/1/fittings/0/count", "0", "/runs/1/fittings/0/count", "1 to 10000")]
    [InlineData("/runs/2/lossCoefficient", "-0.1", "/runs/2/lossCoefficient", "0 to 1000000000")]
    [InlineData("/runs/2/lossCoefficient", "1e10", "/runs/2/lossCoefficient", "0 to 1000000000")]
    [InlineData("/runs/2/lossCoefficient", "\"1\"", "/runs/2/lossCoefficient", "a bare number")]
    [InlineData("/runs/2/leaves", "\"run\"", "/runs/2/leaves", "'step' is a reducer")]
    [InlineData("/runs/1/leaves", "\"side\"", "/runs/1/leaves", "one of run, branch")]
    [InlineData("/runs/1/leaves", null, "/runs/1/leaves", "missing: 'tee' is a tee fed through its run")]
    [InlineData("/runs/1/leaves", "\"branch\"", "/runs/3/leaves", "another run leaves 'tee' by that port")]
    public void A_wrong_point_or_run_is_one_fault(string edit, string? value, string pointer, string words) =>
        Specimen.HasOneFault(Specimen.With((edit, value)), pointer, words);

    [Fact]
    public void A_place_at_one_end_of_a_run_alone_is_a_fault_of_each_such_run()
    {
        var faults = Specimen.Read(Specimen.With(("/points/4/at", """["0 m", "0 m", "0 m"]"""))).Faults;

        Assert.Equal(["/runs/3", "/runs/4", "/runs/5"], faults.Select(fault => fault.Pointer));
        Assert.Contains("'fork' has a place (at) and 'tee' has none", faults[0].Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_bullhead_takes_no_ports()
    {
        var faults = Specimen.Read(Specimen.With(("/points/1/fedThrough", "\"branch\""))).Faults;

        Assert.Equal(["/runs/1/leaves", "/runs/3/leaves"], faults.Select(fault => fault.Pointer));
        Assert.All(faults, fault => Assert.Contains("fed through its branch", fault.Message, StringComparison.Ordinal));
    }

    [Fact]
    public void A_nozzle_without_zones_to_name_says_there_are_none()
    {
        var json = Specimen.With(("/zones", null), ("/points/3/zone", null));

        Specimen.HasOneFault(json, "/points/5/zone", "there are none");
    }

    [Fact]
    public void A_point_may_change_what_its_named_nozzle_says()
    {
        var reading = Specimen.Read(Specimen.With(("/points/3/pressureRange", "[\"4 bar\", \"10 bara\"]"), ("/points/3/share", "0.25"), ("/zones/left/share", "0.25")));

        var nozzle = Assert.IsType<FlowCalc.Layouts.Nozzle>(reading.Layout?.Points[3]);
        Assert.Equal(4e5 + 101_325, nozzle.PressureRange!.Value.Least.Pascals, tolerance: 1e-6);
        Assert.Equal(10e5, nozzle.PressureRange!.Value.Most.Pascals, tolerance: 1e-6);
        Assert.Equal(0.25, nozzle.Share);
        Assert.Equal("fan", nozzle.Type);
    }
}
