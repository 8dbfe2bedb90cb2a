using System.Diagnostics;
using System.Text;
using FlowCalc.Layouts;

namespace FlowCalc.Tests.Layouts;

/// <summary>Documents of very many entries, sound or not, are read in a time that grows with their length: the caps are far above it and far below what a search for each entry took.</summary>
public class LargeDocumentTests
{
    const int Many = 200_000, Few = 1_000;
    static readonly TimeSpan Cap = TimeSpan.FromSeconds(20);

    // Names of like length and beginning, so that a search for the closest has to compare them letter by letter.
    static string Name(string kind, int index) => $"{kind}-of-the-long-and-winding-way-through-the-whole-{index:D6}";

    static string Entries(int count, string entry) => "{" + string.Join(',', Enumerable.Range(0, count).Select(i => $"\"{Name("part", i)}\":{entry}")) + "}";

    static string Document(string stock, IEnumerable<string> points, IEnumerable<string> runs) => $$"""
        { "format": 1, "agent": "water", "supply": { "pressure": "9 bar" }, {{stock}} "points": [{{string.Join(',', points)}}], "runs": [{{string.Join(',', runs)}}] }
        """;

    static string Star(string stock, Func<int, string> nozzle, Func<int, string> run) => Document(
        stock,
        Enumerable.Range(0, Few).Select(nozzle).Prepend("""{ "id": "j", "kind": "junction" }""").Prepend("""{ "id": "s", "kind": "supply" }"""),
        Enumerable.Range(0, Few).Select(run).Prepend("""{ "from": "s", "to": "j", "bore": "8 mm", "length": "1 m" }"""));

    static string Nozzle(int index) => $$"""{ "id": "{{Name("n", index)}}", "kind": "nozzle", "kFactor": "1 L/min/bar^0.5" }""";

    static string Run(int index) => $$"""{ "from": "j", "to": "{{Name("n", index)}}", "bore": "8 mm", "length": "1 m" }""";

    static LayoutReading ReadInTime(string json)
    {
        var watch = Stopwatch.StartNew();
        var reading = LayoutReader.Read(Encoding.UTF8.GetBytes(json), null, TestContext.Current.CancellationToken);
        Assert.True(watch.Elapsed < Cap, $"{watch.Elapsed.TotalSeconds} s");
        return reading;
    }

    [Fact]
    public void Very_many_zones_that_no_nozzle_names_are_counted()
    {
        var reading = ReadInTime(Star($"\"zones\": {Entries(Many, "{\"share\":1e-9}")},", Nozzle, Run));

        Assert.Equal($"{Many - 1_000} more faults are not listed; the first 1000 found are", reading.Faults[^1].Message);
        Assert.Equal($"/zones/{Name("part", 0)}/share", reading.Faults[0].Pointer);
    }

    [Fact]
    public void Very_many_zones_that_want_a_share_are_read()
    {
        var zones = Entries(Few, "{\"share\":1e-4}");

        var reading = ReadInTime(Star($"\"zones\": {zones},", i => Nozzle(i).Replace(" }", $$""", "zone": "{{Name("part", i)}}" }""", StringComparison.Ordinal), Run));

        Assert.Equal(Few, reading.Layout!.Zones.Length);
    }

    [Fact]
    public void Unknown_tubes_beside_very_many_known_ones_are_faults()
    {
        var stock = $"\"tubes\": {Entries(Many, "{\"bore\":\"5 mm\",\"roughness\":\"1 um\"}")},";

        var reading = ReadInTime(Star(stock, Nozzle, i => $$"""{ "from": "j", "to": "{{Name("n", i)}}", "tube": "{{Name("pipe", i)}}", "length": "1 m" }"""));

        Assert.Equal(Few, reading.Faults.Length);
        Assert.All(reading.Faults, fault => Assert.Contains("no tube of the document or the catalogue", fault.Message, StringComparison.Ordinal));
    }

    [Fact]
    public void Unknown_fittings_beside_very_many_known_ones_are_faults()
    {
        var stock = $"\"fittings\": {Entries(Many, "{\"kind\":\"valve\"}")},";
        var fittings = string.Join(',', Enumerable.Range(0, 300).Select(i => $"\"{Name("pipe", i)}\""));

        var reading = ReadInTime(Star(stock, Nozzle, i => Run(i).Replace(" }", $$""", "fittings": [{{(i < 10 ? fittings : "")}}] }""", StringComparison.Ordinal)));

        Assert.Equal("2000 more faults are not listed; the first 1000 found are", reading.Faults[^1].Message);
    }

    [Fact]
    public void Unknown_nozzles_and_zones_beside_very_many_known_ones_are_faults()
    {
        var stock = $"\"nozzles\": {Entries(Many, "{\"kFactor\":\"1 L/min/bar^0.5\"}")}, \"zones\": {Entries(Many, "{}")},";

        var reading = ReadInTime(Star(stock, i => $$"""{ "id": "{{Name("n", i)}}", "kind": "nozzle", "nozzle": "{{Name("pipe", i)}}", "zone": "{{Name("pipe", i)}}" }""", Run));

        Assert.Equal("1000 more faults are not listed; the first 1000 found are", reading.Faults[^1].Message);
    }

    [Fact]
    public void Runs_between_very_many_points_that_name_others_are_faults()
    {
        var points = Enumerable.Range(0, 99_999).Select(i => $$"""{ "id": "{{Name("p", i)}}", "kind": "junction" }""").Prepend("""{ "id": "s", "kind": "supply" }""");
        var runs = Enumerable.Range(0, 100_000).Select(i => $$"""{ "from": "{{Name("q", i)}}", "to": "{{Name("r", i)}}", "bore": "8 mm", "length": "1 m" }""");

        var reading = ReadInTime(Document("", points, runs));

        Assert.Equal(1_001, reading.Faults.Length);
    }

    [Fact]
    public void The_first_unknown_names_still_hear_of_the_closest()
    {
        var stock = $"\"tubes\": {Entries(1_500, "{\"bore\":\"5 mm\",\"roughness\":\"1 um\"}")},";

        var reading = ReadInTime(Star(stock, Nozzle, i => $$"""{ "from": "j", "to": "{{Name("n", i)}}", "tube": "{{Name("prat", i)}}", "length": "1 m" }"""));

        Assert.Contains($"did you mean '{Name("part", 0)}'?", reading.Faults[0].Message, StringComparison.Ordinal);
        Assert.DoesNotContain("did you mean", reading.Faults[^1].Message, StringComparison.Ordinal);
        Assert.EndsWith($"… ({1_500 + FlowCalc.Stock.TubeCatalogue.All.Length} in all)", reading.Faults[^1].Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("")]
    [InlineData("\\uD800")]
    public void A_long_name_within_a_spray_is_one_fault_and_not_a_thousand_long_pointers(string start)
    {
        var spray = $$"""{ "angle": "60°", "{{start}}{{new string('x', 500_000)}}": { {{string.Join(',', Enumerable.Repeat("\"a\":1", 2_000))}} } }""";

        var fault = Assert.Single(ReadInTime(Specimen.With(("/nozzles/fan/spray", "{}")).Replace("\"spray\":{}", $"\"spray\":{spray}", StringComparison.Ordinal)).Faults);

        Assert.Contains("unknown field", fault.Message, StringComparison.Ordinal);
        Assert.True(fault.Message.Length < 1_000);
    }
}
