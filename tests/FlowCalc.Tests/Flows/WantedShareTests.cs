using FlowCalc.Flows;
using FlowCalc.Layouts;

namespace FlowCalc.Tests.Flows;

/// <summary>Who should get what: own share, else the zone's by K-factor, else what is left by K-factor.</summary>
public class WantedShareTests
{
    static double[] Wanted(string nozzles, string zones = "")
    {
        var names = nozzles.Split("\"id\": \"")[1..].Select(part => part[..part.IndexOf('"', StringComparison.Ordinal)]);
        var runs = string.Join(", ", names.Select(name => $$"""{ "from": "J", "to": "{{name}}", "bore": "6 mm", "length": "1 m" }"""));
        var layout = Documents.Read(Documents.Water(
            """{ "id": "J", "kind": "junction" }, """ + nozzles, """{ "from": "S", "to": "J", "bore": "8 mm", "length": "1 m" }, """ + runs, zones));
        return [.. WantedShares.Of(layout).Where((_, i) => layout.Points[i] is Nozzle)];
    }

    static string Nozzle(string id, double k, string more = "") => FormattableString.Invariant($$"""{ "id": "{{id}}", "kind": "nozzle", "kFactor": "{{k}} L/min/bar^0.5"{{more}} }""");

    static void Same(double[] expected, double[] wanted)
    {
        Assert.Equal(expected.Length, wanted.Length);
        for (var i = 0; i < expected.Length; i++) Assert.Equal(expected[i], wanted[i], tolerance: 1e-14);
    }

    [Fact]
    public void Without_shares_the_K_factors_decide() =>
        Same([0.25, 0.75], Wanted(Nozzle("A", 1) + ", " + Nozzle("B", 3)));

    [Fact]
    public void An_own_share_leaves_the_rest_to_the_others() =>
        Same([0.5, 0.125, 0.375], Wanted(Nozzle("A", 9, ", \"share\": 0.5") + ", " + Nozzle("B", 1) + ", " + Nozzle("C", 3)));

    [Fact]
    public void A_zone_splits_its_share_and_the_rest_goes_to_those_outside() =>
        Same([0.2, 0.4, 0.4], Wanted(
            Nozzle("A", 1, ", \"zone\": \"front\"") + ", " + Nozzle("B", 2, ", \"zone\": \"front\"") + ", " + Nozzle("C", 5),
            """ "zones": { "front": { "share": 0.6 } }, """));

    [Fact]
    public void An_own_share_within_a_zone_is_taken_from_the_zone() =>
        Same([0.4, 0.2, 0.4], Wanted(
            Nozzle("A", 1, ", \"zone\": \"front\", \"share\": 0.4") + ", " + Nozzle("B", 2, ", \"zone\": \"front\"") + ", " + Nozzle("C", 5),
            """ "zones": { "front": { "share": 0.6 } }, """));

    [Fact]
    public void A_zone_without_a_share_takes_part_in_what_is_left() =>
        Same([0.5, 0.5], Wanted(Nozzle("A", 2, ", \"zone\": \"front\"") + ", " + Nozzle("B", 2), """ "zones": { "front": {} }, """));
}
