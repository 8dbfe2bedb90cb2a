namespace FlowCalc.Tests.Layouts;

/// <summary>Faults of runs whose points have places.</summary>
public class RouteFaultTests
{
    const string Placed = """
        {
          "format": 1, "agent": "water", "supply": { "pressure": "12 bar" },
          "tubes": { "own": { "bore": "8 mm", "minimumBendRadius": "30 mm" } },
          "points": [
            { "id": "s", "kind": "supply", "at": ["0 m", "0 m", "0 m"] },
            { "id": "n", "kind": "nozzle", "kFactor": "1.5 L/min/bar^0.5", "at": ["1 m", "1 m", "0 m"] }
          ],
          "runs": [{ "from": "s", "to": "n", "tube": "own", "via": [["1 m", "0 m", "0 m"]] }]
        }
        """;

    [Theory]
    [InlineData("/points/0/at", "\"here\"", "/points/0/at", "three lengths [x, y, z]")]
    [InlineData("/points/0/at/1", "0", "/points/0/at/1", "a bare number; length takes")]
    [InlineData("/points/0/at/1", "\"11 km\"", "/points/0/at/1", "unknown unit km")]
    [InlineData("/points/0/at/1", "\"10001 m\"", "/points/0/at/1", "-10 km to 10 km")]
    [InlineData("/points/0/at/2", null, "/points/0/at", "read 2 entries")]
    [InlineData("/runs/0/length", "\"2 m\"", "/runs/0/length", "from which it follows")]
    [InlineData("/runs/0/rise", "\"0 m\"", "/runs/0/rise", "from which it follows")]
    [InlineData("/runs/0/bends", "[]", "/runs/0/bends", "from which it follows")]
    [InlineData("/runs/0/via", "\"round\"", "/runs/0/via", "an array of places")]
    [InlineData("/runs/0/via/0", "[\"1 m\", \"0 m\"]", "/runs/0/via/0", "read 2 entries")]
    [InlineData("/runs/0/via/0", "[\"0 m\", \"0 m\", \"0 m\"]", "/runs/0/via/0", "corner 1 is where the run's start is")]
    [InlineData("/runs/0/via/0", "[\"1 m\", \"1 m\", \"0 m\"]", "/runs/0", "the run's end is where corner 1 is")]
    [InlineData("/points/1/at", "[\"0.5 m\", \"0 m\", \"0 m\"]", "/runs/0/via/0", "turns back on itself")]
    [InlineData("/runs/0/bendRadius", "\"3 mm\"", "/runs/0/bendRadius", "half the bore of 8 mm or more")]
    [InlineData("/runs/0/bendRadius", "\"1.1 m\"", "/runs/0", "take 0.2 m more than the way has")]
    [InlineData("/tubes/own/minimumBendRadius", null, "/runs/0/bendRadius", "no minimumBendRadius")]
    public void A_wrong_way_is_one_fault(string edit, string? value, string pointer, string words) =>
        Specimen.HasOneFault(Specimen.With(Placed, edit, value), pointer, words);

    [Fact]
    public void A_way_of_over_ten_kilometres_is_a_fault()
    {
        var far = Specimen.With(Specimen.With(Placed, "/points/1/at/1", "\"6000 m\""), "/runs/0/via/0/0", "\"6000 m\"");

        Specimen.HasOneFault(far, "/runs/0", "0 to 10 km");
    }

    [Fact]
    public void A_straight_way_needs_no_radius()
    {
        var straight = Specimen.With(Specimen.With(Placed, "/runs/0/via", null), "/tubes/own/minimumBendRadius", null);

        var run = Specimen.Read(straight).Layout!.Runs[0];

        Assert.Equal(Math.Sqrt(2), run.Length.Meters, tolerance: 1e-12);
        Assert.Empty(run.Bends);
    }

    [Fact]
    public void Overlapping_bends_are_no_fault_of_reading_but_stay_visible_as_a_negative_straight()
    {
        var tight = Specimen.With(Placed, "/runs/0/via", """[["0.9 m", "0 m", "0 m"], ["0.9 m", "0.05 m", "0 m"], ["1 m", "0.05 m", "0 m"]]""");

        var run = Specimen.Read(tight).Layout!.Runs[0];

        Assert.Equal([0.87, -0.01, 0.04, 0.92], run.Route!.Straights.Select(straight => Math.Round(straight.Meters, 12)));
    }
}
