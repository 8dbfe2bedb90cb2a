using System.Text;
using System.Text.Json;
using FlowCalc.Examples;
using FlowCalc.Layouts;
using FlowCalc.Losses;

namespace FlowCalc.Tests.Layouts;

/// <summary>What the reader makes of sound documents, and how it tells many faults at once.</summary>
public class LayoutReaderTests
{
    static Layout ReadExample(string name)
    {
        var reading = LayoutReader.Read(ExampleCatalogue.Find(name)!.Value, null, TestContext.Current.CancellationToken);
        Assert.Empty(reading.Faults);
        return reading.Layout!;
    }

    [Fact]
    public void Every_example_is_read_without_a_fault() =>
        Assert.All(ExampleCatalogue.All, example => Assert.Equal(example.Title, ReadExample(example.Name).Title));

    // Lengths by hand: distances between the places, less R·tan(θ/2) twice and plus R·θ for each corner.
    [Theory]
    [InlineData("R1", 0.12 + 0.45 + 0.12 - 4 * 0.04 + 2 * 0.04 * Math.PI / 2, -0.45, "90 90")]
    [InlineData("R2", 0.35 + 0.60 - 2 * 0.028 + 0.028 * Math.PI / 2, 0, "90")]
    [InlineData("R6", 0.35, 0, "")]
    [InlineData("R8", 0.10 + 0.55 + 0.40 + 0.55 - 6 * 0.018 + 3 * 0.018 * Math.PI / 2, 0.55, "90 90 90")]
    [InlineData("R9", 0.70 + 0.40 + 0.30 - 4 * 0.028 + 2 * 0.028 * Math.PI / 2, 0.40, "90 90")]
    [InlineData("R11", 0.60, 0, "")]
    public void Lengths_rises_and_bends_of_the_raid_pickup_follow_from_its_places(string id, double length, double rise, string turns)
    {
        var run = ReadExample("raid-pickup").Runs.Single(run => run.Id == id);

        Assert.Equal(length, run.Length.Meters, tolerance: 1e-12);
        Assert.Equal(rise, run.Rise.Meters, tolerance: 1e-12);
        Assert.Equal(turns, string.Join(' ', run.Bends.Select(bend => Math.Round(bend.Angle.Degrees, 9))));
        Assert.Equal(run.Bends.Length + 1, run.Route!.Straights.Length);
    }

    [Fact]
    public void The_offset_of_R5_turns_by_twice_45_degrees()
    {
        var run = ReadExample("raid-pickup").Runs.Single(run => run.Id == "R5");

        var tangent = 0.035 * Math.Tan(Math.PI / 8);
        Assert.Equal([45.0, 45.0], run.Bends.Select(bend => Math.Round(bend.Angle.Degrees, 9)));
        Assert.Equal(Math.Sqrt(2) * 0.05 - 2 * tangent, run.Route!.Straights[1].Meters, tolerance: 1e-12);
        Assert.Equal(0.45 + Math.Sqrt(2) * 0.05 + 0.40 - 4 * tangent + 2 * 0.035 * Math.PI / 4, run.Length.Meters, tolerance: 1e-12);
    }

    [Fact]
    public void The_raid_pickup_is_read_whole()
    {
        var layout = ReadExample("raid-pickup");

        Assert.Equal(Application.Motorsport, layout.Application);
        Assert.Equal("water-premix", layout.Agent.Id);
        Assert.Equal(101_300, layout.AmbientPressure.Pascals, tolerance: 1e-6);
        Assert.Equal((14, 13, 3, 3), (layout.Points.Length, layout.Runs.Length, layout.Zones.Length, layout.Tubes.Length));
        Assert.Equal((3, 3), (layout.Cases!.Temperatures.Length, layout.Cases.Attitudes.Length));
        var bottle = Assert.IsType<BottleSupply>(layout.Supply).Bottle;
        Assert.Equal(14e5 + 101_300, bottle.ChargePressure.Pascals, tolerance: 1e-6);
        Assert.True(bottle.Outlet!.DipTube!.Follows);
        Assert.Equal(2.4 / 3600 / Math.Sqrt(1e5), bottle.Outlet.ValveKv!.Value, tolerance: 1e-18);
        var nozzle = Assert.IsType<Nozzle>(layout.Points.Single(point => point.Id == "turbo"));
        Assert.Equal(0.82 * Math.PI / 4 * 1.5e-3 * 1.5e-3 * Math.Sqrt(2 / 1000.0), nozzle.KFactor, tolerance: 1e-19);
        Assert.Equal("engine", nozzle.Zone);
        Assert.Equal(TeeBody.Smooth, Assert.IsType<Tee>(layout.Points[1]).Body);
        Assert.Equal(1.24, layout.Runs[8].Fittings[0].At!.Value.Meters, tolerance: 1e-15);
    }

    [Fact]
    public void What_a_document_leaves_open_is_listed_as_assumed()
    {
        const string bare = """
            {
              "format": 1, "agent": "water", "supply": { "bottle": { "volume": "4 L", "fill": "3 kg", "chargePressure": "14 bar" } }, "tubes": { "a/b": { "bore": "4 mm" } },
              "points": [
                { "id": "s", "kind": "supply" }, { "id": "t", "kind": "tee", "fedThrough": "branch" },
                { "id": "m", "kind": "nozzle", "kFactor": "1 L/min/bar^0.5" }, { "id": "n", "kind": "nozzle", "kFactor": "1 L/min/bar^0.5" }
              ],
              "runs": [
                { "from": "s", "to": "t", "bore": "8 mm", "length": "1 m" }, { "from": "t", "to": "m", "tube": "a/b", "length": "1 m", "fittings": ["union", { "kind": "elbow" }] },
                { "from": "t", "to": "n", "tube": "a/b", "length": "1 m" }
              ]
            }
            """;

        var layout = Specimen.Read(bare).Layout!;

        Assert.Equal(
            [
                "/ambientPressure", "/points/1/body", "/runs/0/roughness", "/runs/1/fittings/0", "/runs/1/fittings/1", "/runs/1/fittings/1", "/supply/bottle/chargeTemperature",
                "/supply/bottle/cushionGas", "/supply/bottle/outlet", "/temperature", "/tubes/a~1b/roughness",
            ],
            layout.Assumptions.Select(assumption => assumption.Pointer).Order(StringComparer.Ordinal));
        Assert.Equal(293.15, layout.Temperature.Kelvins, tolerance: 1e-12);
        Assert.Equal(90, layout.Runs[1].Fittings[1].Fitting.Angle!.Value.Degrees, tolerance: 1e-12);
        Assert.Null(Assert.IsType<Tee>(layout.Points[1]).Body);
    }

    [Fact]
    public void What_is_assumed_in_very_many_places_is_listed_for_some_and_counted()
    {
        var json = new StringBuilder("""{ "format": 1, "agent": "water", "supply": { "pressure": "9 bar" }, "points": [{ "id": "0", "kind": "supply" }""");
        for (var i = 1; i <= 40; i++) json.Append($$""", { "id": "{{i}}", {{(i < 40 ? "\"kind\": \"junction\"" : "\"kind\": \"nozzle\", \"kFactor\": \"1 L/min/bar^0.5\"")}} }""");
        json.Append("""], "runs": [""");
        for (var i = 1; i <= 40; i++) json.Append($$"""{{(i > 1 ? "," : "")}} { "from": "{{i - 1}}", "to": "{{i}}", "bore": "8 mm", "length": "1 m" }""");
        json.Append("] }");

        var rough = Specimen.Read(json.ToString()).Layout!.Assumptions.Where(assumption => assumption.Value.StartsWith("1.5 µm", StringComparison.Ordinal)).ToArray();

        Assert.Equal(26, rough.Length);
        Assert.Equal(("/runs", "1.5 µm, in 15 further places"), (rough[^1].Pointer, rough[^1].Value));
    }

    [Fact]
    public void A_mixture_and_a_liquid_of_ones_own_are_read()
    {
        var mixture = Specimen.Read(Specimen.With(("/agent", """{ "mixture": "water-propylene-glycol", "massFraction": 0.4 }"""))).Layout!.Agent;
        var own = Specimen.Read(Specimen.With(("/agent", """{ "density": "1.2 kg/L", "viscosity": "2 cP", "freezingPoint": "-30 °C" }"""))).Layout!.Agent as FlowCalc.Agents.LiquidAgent;

        Assert.Equal("water-propylene-glycol", mixture.Id);
        Assert.True(mixture.FreezingPoint < 273.15 - 15);
        Assert.Equal(1_200, own!.Density(300), tolerance: 1e-9);
        Assert.Equal(243.15, own.FreezingPoint!.Value, tolerance: 1e-9);
    }

    [Fact]
    public void Limits_of_the_document_are_read_in_the_unit_of_their_finding()
    {
        var layout = Specimen.Read(Specimen.With(("/limits", """{ "velocity-high": { "note": "5 m/s", "warn": "36 km/h" }, "starved-nozzle": { "fail": 0.3 } }"""))).Layout!;

        Assert.Equal(["velocity-high", "starved-nozzle"], layout.Limits.Select(limit => limit.Code));
        Assert.Equal(10, layout.Limits[0].Warn!.Value.Si, tolerance: 1e-12);
        Assert.Null(layout.Limits[0].Fail);
        Assert.Equal(0.3, layout.Limits[1].Fail!.Value.Si);
    }

    [Fact]
    public void Straights_between_bends_may_be_negative_and_so_may_their_limits()
    {
        var json = Specimen.With(("/limits", """{ "bends-overlap": { "warn": 0, "fail": -1 }, "bends-interact": { "note": -1 } }"""));

        Assert.Equal(-1, Specimen.Read(json).Layout!.Limits[0].Fail!.Value.Si);
        Assert.True(BuiltSchema.Accepts(json));
    }

    [Fact]
    public void A_tube_of_the_catalogue_needs_no_entry()
    {
        var run = Specimen.Read(Specimen.With(("/runs/2/tube", "\"CU-6x1\""))).Layout!.Runs[2];

        Assert.Equal("CU-6x1", run.Tube.Name);
        Assert.Equal(4, run.Tube.Bore.Millimeters, tolerance: 1e-12);
    }

    [Fact]
    public void The_order_of_members_does_not_matter()
    {
        using var document = JsonDocument.Parse(Specimen.Json);

        var reversed = Specimen.Read(Reversed(document.RootElement)).Layout!;

        var straight = Specimen.Read(Specimen.Json).Layout!;
        Assert.Equal(straight.Points, reversed.Points);
        Assert.Equal(straight.Runs.Select(run => (run.Id, run.From, run.To, run.Length)), reversed.Runs.Select(run => (run.Id, run.From, run.To, run.Length)));
    }

    static string Reversed(JsonElement element) => element.ValueKind switch
    {
        JsonValueKind.Object => "{" + string.Join(',', element.EnumerateObject().Reverse().Select(member => $"{JsonSerializer.Serialize(member.Name)}:{Reversed(member.Value)}")) + "}",
        JsonValueKind.Array => "[" + string.Join(',', element.EnumerateArray().Select(Reversed)) + "]",
        _ => element.GetRawText(),
    };
}
