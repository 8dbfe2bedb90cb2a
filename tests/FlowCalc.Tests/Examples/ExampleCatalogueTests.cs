using System.Text.Json;
using FlowCalc.Examples;
using FlowCalc.Stock;

namespace FlowCalc.Tests.Examples;

public class ExampleCatalogueTests
{
    public static TheoryData<string> Names => [.. ExampleCatalogue.All.Select(example => example.Name)];

    [Fact]
    public void The_catalogue_names_its_examples_in_order()
    {
        Assert.Equal(["boat-engine-space", "cabinet-inert-gas", "machine-enclosure", "raid-pickup", "yacht-halocarbon"], ExampleCatalogue.All.Select(example => example.Name));
        Assert.Equal("Desert raid pickup, seven nozzles in three zones", ExampleCatalogue.All.Single(example => example.Name == "raid-pickup").Title);
    }

    [Fact]
    public void An_unknown_example_is_null() => Assert.Null(ExampleCatalogue.Find("no-such-example"));

    [Theory]
    [MemberData(nameof(Names))]
    public void An_example_is_a_tree_with_one_supply(string name)
    {
        using var document = Document(name);
        var points = document.RootElement.GetProperty("points").EnumerateArray().ToDictionary(point => point.GetProperty("id").GetString()!);
        var runs = document.RootElement.GetProperty("runs").EnumerateArray().ToArray();

        var supply = Assert.Single(points.Values, point => point.GetProperty("kind").GetString() == "supply");
        var fed = runs.Select(run => run.GetProperty("to").GetString()!).ToArray();
        Assert.Equal(fed.Distinct(), fed);
        Assert.Equal(points.Keys.Order(), fed.Append(supply.GetProperty("id").GetString()!).Order());
        Assert.All(runs, run => Assert.Contains(run.GetProperty("from").GetString()!, points.Keys));
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void An_example_uses_tubes_and_fittings_that_exist(string name)
    {
        using var document = Document(name);
        var root = document.RootElement;

        foreach (var run in root.GetProperty("runs").EnumerateArray())
        {
            var tube = run.GetProperty("tube").GetString()!;
            Assert.True(Own(root, "tubes", tube) || TubeCatalogue.Find(tube) is not null, tube);
            if (!run.TryGetProperty("fittings", out var fittings)) continue;
            foreach (var entry in fittings.EnumerateArray())
            {
                var fitting = (entry.ValueKind == JsonValueKind.String ? entry : entry.GetProperty("fitting")).GetString()!;
                Assert.True(Own(root, "fittings", fitting) || FittingCatalogue.Find(fitting) is not null, fitting);
            }
        }
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void The_wanted_shares_of_an_example_add_up_to_one(string name)
    {
        using var document = Document(name);
        var zones = document.RootElement.GetProperty("zones").EnumerateObject().Select(zone => zone.Value);
        var points = document.RootElement.GetProperty("points").EnumerateArray();

        Assert.Equal(1, zones.Concat(points).Sum(thing => thing.TryGetProperty("share", out var share) ? share.GetDouble() : 0), tolerance: 1e-12);
    }

    static JsonDocument Document(string name) => JsonDocument.Parse(ExampleCatalogue.Find(name)!.Value);

    static bool Own(JsonElement root, string stock, string name) => root.TryGetProperty(stock, out var own) && own.TryGetProperty(name, out _);
}
