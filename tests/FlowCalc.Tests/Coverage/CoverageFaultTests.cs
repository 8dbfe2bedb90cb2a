using FlowCalc.Tests.Layouts;

namespace FlowCalc.Tests.Coverage;

/// <summary>Coverage that makes no sense: every fault with its place and what would be right.</summary>
public class CoverageFaultTests
{
    [Theory]
    [InlineData("/coverage", "[]", "/coverage", "is an object with")]
    [InlineData("/coverage/surfacs", "{}", "/coverage/surfacs", "did you mean 'surfaces'")]
    [InlineData("/coverage/surfaces", "[]", "/coverage/surfaces", "one entry a name")]
    [InlineData("/coverage/surfaces/x", "{}", "/coverage/surfaces/x", "neither corner with edges nor corners")]
    [InlineData("/coverage/surfaces/table/zone", "\"bnch\"", "/coverage/surfaces/table/zone", "did you mean 'bench'")]
    [InlineData("/coverage/surfaces/table/edges", null, "/coverage/surfaces/table/edges", "missing: two edges")]
    [InlineData("/coverage/surfaces/table/edges", """[["1 m", "0 m", "0 m"]]""", "/coverage/surfaces/table/edges", "two edges from the corner are right")]
    [InlineData("/coverage/surfaces/table/edges", """[["1 m", "0 m", "0 m"], ["2 m", "0 m", "0 m"]]""", "/coverage/surfaces/table/edges", "of no area")]
    [InlineData("/coverage/surfaces/table/edges", """[["1 m", "0 m", "0 m"], ["0 m", "0 m", "0 m"]]""", "/coverage/surfaces/table/edges", "of no area")]
    [InlineData("/coverage/surfaces/table/edges/0/0", "\"2 km\"", "/coverage/surfaces/table/edges/0/0", "takes")]
    [InlineData("/coverage/surfaces/table/edges/0/0", "\"2000 m\"", "/coverage/surfaces/table/edges/0/0", "-1000 to 1000 m")]
    [InlineData("/coverage/surfaces/x", """{ "corners": [["0 m", "0 m", "0 m"], ["1 m", "0 m", "0 m"]] }""", "/coverage/surfaces/x/corners", "3 to 64 places")]
    [InlineData("/coverage/surfaces/x", """{ "corners": [["0 m", "0 m", "0 m"], ["1 m", "0 m", "0 m"], ["2 m", "0 m", "0 m"]] }""", "/coverage/surfaces/x/corners", "of no area")]
    [InlineData("/coverage/surfaces/x", """{ "corners": [["0 m", "0 m", "0 m"], ["1 m", "0 m", "0 m"], ["1 m", "0 m", "0 m"]] }""", "/coverage/surfaces/x/corners/2", "stands at this place already")]
    [InlineData("/coverage/surfaces/x", """{ "corners": [["0 m", "0 m", "0 m"], ["1 m", "0 m", "0 m"], ["1 m", "1 m", "0.2 m"], ["0 m", "1 m", "0 m"]] }""", "/coverage/surfaces/x/corners", "off the plane")]
    [InlineData("/coverage/surfaces/x", """{ "corners": [["0 m", "0 m", "0 m"], ["1 m", "0 m", "0 m"], ["0 m", "1 m", "0 m"], ["2 m", "1 m", "0 m"]] }""", "/coverage/surfaces/x/corners", "crosses itself")]
    [InlineData("/coverage/surfaces/table/faces", "[1, 0, 0]", "/coverage/surfaces/table/faces", "lies in the surface")]
    [InlineData("/coverage/surfaces/table/faces", "[0, 0, 0]", "/coverage/surfaces/table/faces", "no length")]
    [InlineData("/coverage/targets/vice/at", null, "/coverage/targets/vice/at", "missing: its place")]
    [InlineData("/coverage/targets/vice/at", """["1 m", 0, "0 m"]""", "/coverage/targets/vice/at/1", "a bare number")]
    [InlineData("/coverage/persons/fitter/zone", "\"hall\"", "/coverage/persons/fitter/zone", "not among the document's zones")]
    [InlineData("/coverage/bodies/shelf/to", """["2 m", "3 m", "1 m"]""", "/coverage/bodies/shelf", "agree in a coordinate")]
    [InlineData("/coverage/bodies/shelf/from", null, "/coverage/bodies/shelf/from", "missing: a corner")]
    [InlineData("/points/2/aim", "[0, 0, 0]", "/points/2/aim", "no length")]
    [InlineData("/points/2/aim", "\"vise\"", "/points/2/aim", "did you mean 'vice'")]
    [InlineData("/points/2/aim", "\"fitter\"", "/points/2/aim", "not among the targets")]
    [InlineData("/points/2/aim", "7", "/points/2/aim", "an aim is a direction")]
    [InlineData("/points/2/aim", """["0.5 m", "0.8 m", "0.5 m"]""", "/points/2/aim", "the nozzle is at that place itself")]
    [InlineData("/points/2/spray", """{ "range": ["0.1 m", "1 m"] }""", "/points/2/spray/angle", "missing: the full angle")]
    [InlineData("/points/2/spray", """{ "angle": "180°" }""", "/points/2/spray/angle", "1 to 175°")]
    [InlineData("/points/2/spray", """{ "angle": "60 m" }""", "/points/2/spray/angle", "angle")]
    [InlineData("/points/2/spray", """{ "angle": "60°", "range": ["1 m", "0.1 m"] }""", "/points/2/spray/range", "the nearest and the farthest")]
    [InlineData("/points/2/spray", """{ "angle": "60°", "range": "1 m" }""", "/points/2/spray/range", "the nearest and the farthest")]
    [InlineData("/zones/bench/volume", "\"0 L\"", "/zones/bench/volume", "0.001 L to 1000000 m3")]
    [InlineData("/zones/bench/temperatures", """["40 °C", "0 °C"]""", "/zones/bench/temperatures", "the hottest below the coldest")]
    [InlineData("/zones/bench/temperatures", """["40 °C"]""", "/zones/bench/temperatures", "the coldest and the hottest")]
    [InlineData("/zones/bench/airflow", "\"-1 m3/s\"", "/zones/bench/airflow", "0 to 100000 m3/s")]
    [InlineData("/zones/bench/openings", "\"1 m\"", "/zones/bench/openings", "area")]
    [InlineData("/zones/bench/protection", "\"total\"", "/zones/bench/protection", "one of flooding, local")]
    [InlineData("/zones/bench/hazard", "\"B\"", "/zones/bench/hazard", "one of class-A, class-B")]
    [InlineData("/zones/bench/design", "9", "/zones/bench/design", "over 0 to 0.95")]
    [InlineData("/zones/bench/leaving", "\"10 s\"", "/zones/bench/leaving", "nobody has to leave a zone that is not occupied")]
    [InlineData("/zones/bench/airBottle", """{ "volume": "20 L" }""", "/zones/bench/airBottle/pressure", "missing")]
    [InlineData("/zones/bench/airBottle", """{ "volume": "20 L", "pressure": "0.5 bara" }""", "/zones/bench/airBottle/pressure", "not under the ambient pressure")]
    [InlineData("/altitude", "\"12000 m\"", "/altitude", "-500 to 9000 m")]
    public void A_wrong_value_is_one_fault(string at, string? value, string pointer, string words) =>
        Specimen.HasOneFault(Specimen.With(CoverageDocument.Table, at, value), pointer, words);

    [Fact]
    public void A_nozzle_without_a_place_aims_at_none()
    {
        var json = Specimen.With(Specimen.With(Specimen.Json, "/points/3/aim", """["0 m", "0 m", "0 m"]"""), "/coverage", """{ "targets": { "x": { "at": ["0 m", "0 m", "0 m"] } } }""");

        Specimen.HasOneFault(json, "/points/3/aim", "a place of its own");
        Specimen.HasOneFault(Specimen.With(json, "/points/3/aim", "\"x\""), "/points/3/aim", "a place of its own");
    }

    [Fact]
    public void Corners_stand_for_both_corner_and_edges()
    {
        var json = Specimen.With(CoverageDocument.Table, "/coverage/surfaces/table/corners", """[["0 m", "0 m", "0 m"], ["1 m", "0 m", "0 m"], ["1 m", "1 m", "0 m"]]""");

        Assert.Equal(["/coverage/surfaces/table/corner", "/coverage/surfaces/table/edges"], Specimen.Read(json).Faults.Select(fault => fault.Pointer));
    }

    [Fact]
    public void An_altitude_and_an_ambient_pressure_contradict_each_other() =>
        Specimen.HasOneFault(Specimen.With(("/altitude", "\"1500 m\"")), "/ambientPressure", "the altitude says it already");

    [Fact]
    public void All_faults_are_told_at_once()
    {
        var json = Specimen.With(Specimen.With(Specimen.With(CoverageDocument.Table, "/zones/bench/design", "2"), "/points/2/spray", """{ "angle": "200°" }"""), "/coverage/bodies/shelf/to", "7");

        Assert.Equal(["/coverage/bodies/shelf/to", "/points/2/spray/angle", "/zones/bench/design"], Specimen.Read(json).Faults.Select(fault => fault.Pointer).Order(StringComparer.Ordinal));
    }

    [Fact]
    public void More_than_200_entries_of_a_list_are_a_fault()
    {
        var targets = "{" + string.Join(',', Enumerable.Range(0, 201).Select(i => $"\"t{i}\": {{ \"at\": [\"0 m\", \"0 m\", \"0 m\"] }}")) + "}";

        Specimen.HasOneFault(Specimen.With(Specimen.Json, "/coverage", $"{{ \"targets\": {targets} }}"), "/coverage/targets", "at most 200");
    }
}
