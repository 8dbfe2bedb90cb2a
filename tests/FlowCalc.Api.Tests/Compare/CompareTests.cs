using System.Text.Json;
using System.Text.Json.Nodes;
using FlowCalc.Api.Tests.Documentation;
using FlowCalc.Api.Tests.Flow;
using FlowCalc.Api.Tests.Hosting;
using FlowCalc.Api.Tests.Requests;
using FlowCalc.Api.Tests.Studies;

namespace FlowCalc.Api.Tests.Compare;

public sealed class CompareTests(Service service) : IDisposable
{
    readonly HttpClient caller = service.Caller();

    public void Dispose() => caller.Dispose();

    [Theory]
    [InlineData("")]
    [InlineData("?units=us")]
    [InlineData("?units=si")]
    public async Task Comparison_fits_the_schema_that_the_contract_publishes(string query)
    {
        var contract = await Contract.Published();

        foreach (var request in (string[])[StudyRequests.Kept("compare").ToJsonString(), StudyRequests.OfSmall("""{ "variants": [{ "name": "wide", "set": { "runs/long/bore": "6 mm" } }] }""")])
            Assert.Empty(contract.Breaks("CompareAnswer", await caller.PostStudy("compare", request, query).Json(200)));
    }

    [Fact]
    public async Task Each_answer_is_what_the_calls_on_the_changed_layout_give()
    {
        var wide = JsonNode.Parse(Documents.Demo)!;
        wide["runs"]!.AsArray().Single(run => run!["id"]!.GetValue<string>() == "R11")!["tube"] = "feed";

        var answer = await caller.PostStudy("compare", StudyRequests.Kept("compare").ToJsonString()).Json(200);

        var (flow, discharge) = (await caller.PostFlow(wide.ToJsonString()).Json(200), JsonNode.Parse((await caller.PostDischarge(wide.ToJsonString()).Json(200)).GetRawText())!);
        foreach (var one in discharge["cases"]!.AsArray())
            one!["series"] = null;
        var variant = answer.GetProperty("answers").EnumerateArray().Single(one => one.GetProperty("name").GetString() == "feed in R11");
        Assert.True(JsonElement.DeepEquals(flow, variant.GetProperty("flow")));
        Assert.True(JsonElement.DeepEquals(JsonSerializer.SerializeToElement(discharge), variant.GetProperty("discharge")));
        Assert.Equal("feed in R11", answer.GetProperty("best").GetString());
    }

    [Fact]
    public async Task Difference_of_a_nozzle_is_the_variants_less_the_bases()
    {
        var answer = await caller.PostStudy("compare", StudyRequests.Kept("compare").ToJsonString()).Json(200);

        var entries = answer.GetProperty("nozzles").EnumerateArray().SelectMany(nozzle => nozzle.GetProperty("in").EnumerateArray().Skip(1), (nozzle, one) => (Base: nozzle.GetProperty("in")[0], One: one)).ToList();
        Assert.Equal(21, entries.Count);
        foreach (var (first, one) in entries)
        {
            var difference = one.GetProperty("difference");
            Assert.Equal(one.GetProperty("pressure").Value() - first.GetProperty("pressure").Value(), difference.GetProperty("pressure").Value(), tolerance: 1e-9);
            Assert.Equal(one.GetProperty("massFlow").Value() / first.GetProperty("massFlow").Value() - 1, difference.GetProperty("massFlow").GetDouble(), tolerance: 1e-9);
            Assert.Equal(one.GetProperty("share").GetDouble() - first.GetProperty("share").GetDouble(), difference.GetProperty("share").GetDouble(), tolerance: 1e-12);
            var (now, before) = (one.GetProperty("discharge"), first.GetProperty("discharge"));
            Assert.Equal(now.GetProperty("leastMass").Value() / before.GetProperty("leastMass").Value() - 1, difference.GetProperty("leastMass").GetDouble(), tolerance: 1e-9);
            Assert.Equal(now.GetProperty("latestTime95").Value() - before.GetProperty("latestTime95").Value(), difference.GetProperty("latestTime95").Value(), tolerance: 1e-9);
        }
    }

    [Fact]
    public async Task Variant_that_changes_nothing_ties_and_stands_behind_in_the_requests_order()
    {
        var answer = await caller.PostStudy("compare", StudyRequests.OfSmall("""{ "name": "as drawn", "variants": [{ "name": "noted", "set": { "note": "the same" } }] }""")).Json(200);

        Assert.Equal(["as drawn", "noted"], answer.GetProperty("ranking").EnumerateArray().Select(one => one.GetProperty("name").GetString()));
        Assert.Equal(["order", "order"], answer.GetProperty("ranking").EnumerateArray().Select(one => one.GetProperty("by").GetString()));
        Assert.True(JsonElement.DeepEquals(answer.GetProperty("answers")[0].GetProperty("flow"), answer.GetProperty("answers")[1].GetProperty("flow")));
    }

    [Fact]
    public async Task Whole_layout_may_be_a_variant_and_its_own_nozzles_stand_behind_those_of_the_base()
    {
        var other = Documents.Small.Replace("\"right\"", "\"starboard\"", StringComparison.Ordinal);

        var answer = await caller.PostStudy("compare", StudyRequests.OfSmall($$"""{ "variants": [{ "name": "renamed", "layout": {{other}} }] }""")).Json(200);

        Assert.Equal(["left", "right", "starboard"], answer.GetProperty("nozzles").EnumerateArray().Select(one => one.GetProperty("id").GetString()));
        Assert.Equal(["renamed"], answer.GetProperty("nozzles")[2].GetProperty("in").EnumerateArray().Select(one => one.GetProperty("name").GetString()));
        Assert.Equal(JsonValueKind.Null, answer.GetProperty("nozzles")[2].GetProperty("in")[0].GetProperty("difference").ValueKind);
    }

    [Fact]
    public async Task Every_fault_is_told_at_once_at_the_change_that_brought_it()
    {
        var request = StudyRequests.OfSmall(
            """
            { "variants": [
                { "name": "a", "set": { "runs/lnog/bore": "6 mm", "runs/long/bore": "6,0 mm", "runs/short/bends/0/radius": "-1 mm", "colour": "red" } },
                { "name": "a", "set": {} },
                { "name": "b" },
                { "name": "c", "set": { "runs/long/bore": "5 mm" }, "layout": {} },
                { "name": "d", "layout": { "format": 2 } },
                { "name": "e", "set": { "points/right": null } },
                { "name": "f", "set": { "title": { "x": 1, "x": 2 } } },
                7 ],
              "verdict": "please" }
            """);

        var problem = await caller.PostStudy("compare", request).Fault(422);

        var errors = problem.GetProperty("errors").EnumerateObject().ToDictionary(error => error.Name, error => error.Value[0].GetString()!);
        Assert.Contains("did you mean 'long'", errors["/variants/0/set/runs~1lnog~1bore"], StringComparison.Ordinal);
        Assert.Contains("decimal", errors["/variants/0/set/runs~1long~1bore"], StringComparison.Ordinal);
        Assert.Contains("radius", errors["/variants/0/set/runs~1short~1bends~10~1radius"], StringComparison.Ordinal);
        Assert.Contains("unknown field 'colour'", errors["/variants/0/set/colour"], StringComparison.Ordinal);
        Assert.Contains("another layout", errors["/variants/1/name"], StringComparison.Ordinal);
        Assert.Contains("0 changes", errors["/variants/1/set"], StringComparison.Ordinal);
        Assert.Contains("missing", errors["/variants/2/set"], StringComparison.Ordinal);
        Assert.Contains("both set and layout", errors["/variants/3"], StringComparison.Ordinal);
        Assert.Contains("format", errors["/variants/4/layout/format"], StringComparison.Ordinal);
        Assert.Contains("/runs/2/to", errors["/variants/5/set"], StringComparison.Ordinal);
        Assert.Contains("a name twice", errors["/variants/6/set/title"], StringComparison.Ordinal);
        Assert.Contains("read 7", errors["/variants/7"], StringComparison.Ordinal);
        Assert.Contains("unknown field 'verdict'", errors["/verdict"], StringComparison.Ordinal);
    }

    [Fact]
    public async Task Layout_and_variants_are_looked_at_though_the_layout_has_faults()
    {
        var problem = await caller.PostStudy("compare", """{ "layout": { "format": 1 }, "variants": [{ "name": "x", "set": { "runs//bore": 1 } }, { "nmae": "y" }] }""").Fault(422);

        var pointers = problem.GetProperty("errors").EnumerateObject().Select(error => error.Name).ToHashSet();
        Assert.Superset(new HashSet<string> { "/layout/agent", "/layout/points", "/variants/1/nmae", "/variants/1/name" }, pointers);
    }

    [Theory]
    [InlineData("""{ "variants": [{ "name": "x", "set": { "note": "y" } }] }""", "/layout")]
    [InlineData("""{ "layout": [], "variants": [{ "name": "x", "set": { "note": "y" } }] }""", "/layout")]
    [InlineData("""{ "layout": {}, "variants": [] }""", "/variants")]
    [InlineData("""{ "layout": {} }""", "/variants")]
    [InlineData("[]", "")]
    public async Task Request_without_its_parts_says_which_are_missing(string request, string pointer)
    {
        var problem = await caller.PostStudy("compare", request).Fault(422);

        Assert.Contains(problem.GetProperty("errors").EnumerateObject(), error => error.Name == pointer);
    }

    [Fact]
    public async Task One_variant_more_than_the_limit_is_refused_and_the_limit_is_taken()
    {
        using var few = Service.With(("Limits:Variants", "2"));
        using var client = few.Caller();

        await client.PostStudy("compare", Many(2)).Json(200);
        var problem = await client.PostStudy("compare", Many(3)).Fault(422);

        Assert.Contains("1 to 2 variants", problem.GetProperty("errors").GetProperty("/variants")[0].GetString(), StringComparison.Ordinal);

        static string Many(int count) => StudyRequests.OfSmall(
            $$"""{ "variants": [{{string.Join(",", Enumerable.Range(0, count).Select(at => $$"""{ "name": "v{{at}}", "set": { "runs/long/length": "{{at + 1}} m" } }"""))}}] }""");
    }

    [Fact]
    public async Task Comparison_that_takes_too_long_is_a_fault_that_says_so()
    {
        using var hurried = Service.With(("Limits:CompareTime", "00:00:00.0001"));
        using var client = hurried.Caller();

        var problem = await client.PostStudy("compare", StudyRequests.Kept("compare").ToJsonString()).Fault(422);

        Assert.Contains("0.0001 s", problem.GetProperty("errors").GetProperty("")[0].GetString(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Depth_of_a_layout_within_a_request_is_that_of_one_alone()
    {
        var deep = new string('[', 62) + new string(']', 62);
        var alone = await caller.PostFlow($$"""{ "format": 1, "note": {{deep}} }""").Fault(422);

        var within = await caller.PostStudy("compare", $$"""{ "layout": { "format": 1, "note": {{deep}} }, "variants": [{ "name": "x", "set": { "note": "y" } }] }""").Fault(422);

        Assert.Equal(alone.GetProperty("errors").GetProperty("/note")[0].GetString(), within.GetProperty("errors").GetProperty("/layout/note")[0].GetString());
    }
}
