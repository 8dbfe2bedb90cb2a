using System.Text.Json.Nodes;

namespace FlowCalc.Api.Tests.Documentation.Compatibility;

public sealed class ReleasedContractTests
{
    // DEVELOPERS.md says when and how the released contract is renewed.
    [Fact]
    public async Task Present_contract_breaks_nothing_that_the_released_one_promised()
    {
        var released = await Read("v1.released.json");
        var present = JsonNode.Parse((await Contract.Published()).Document.GetRawText())!.AsObject();

        Assert.Empty(ContractDifference.Of(released, present));
    }

    [Fact]
    public async Task Comparison_reaches_every_component_of_the_released_contract_that_a_call_takes_or_answers()
    {
        var released = await Read("v1.released.json");
        var altered = released.DeepClone().AsObject();
        var missed = new List<string>();

        foreach (var (name, schema) in altered["components"]!["schemas"]!.AsObject())
        {
            if (schema!["properties"] is not JsonObject { Count: > 0 } fields) continue;
            var (field, stated) = fields.First();
            fields[field] = new JsonObject { ["type"] = "odd" };
            if (ContractDifference.Of(released, altered).Count == 0) missed.Add(name);
            fields[field] = stated;
        }

        Assert.Empty(missed);
    }

    static async Task<JsonObject> Read(string name) =>
        JsonNode.Parse(await File.ReadAllTextAsync(Path.Combine(AppContext.BaseDirectory, "openapi", name), TestContext.Current.CancellationToken))!.AsObject();
}
