using System.Text.Json;
using System.Text.Json.Nodes;
using FlowCalc.Api.Tests.Documentation;
using FlowCalc.Api.Tests.Flow;
using FlowCalc.Api.Tests.Hosting;
using FlowCalc.Api.Tests.Requests;
using FlowCalc.Api.Tests.Studies;

namespace FlowCalc.Api.Tests.Size;

public sealed class SizeTests(Service service) : IDisposable
{
    const string Impossible = """{ "stock": { "tubes": [{ "name": "stock", "tube": { "bore": "5 mm" } }] }, "wish": { "deviation": 0.1, "leastPressure": "11.9 bar" } }""";

    readonly HttpClient caller = service.Caller();

    public void Dispose() => caller.Dispose();

    [Theory]
    [InlineData("")]
    [InlineData("?units=us")]
    [InlineData("?units=si")]
    public async Task Sizes_fit_the_schema_that_the_contract_publishes(string query)
    {
        var contract = await Contract.Published();

        foreach (var request in (string[])[StudyRequests.Kept("size").ToJsonString(), StudyRequests.OfSmall(Impossible)])
            Assert.Empty(contract.Breaks("SizeAnswer", await caller.PostStudy("size", request, query).Json(200)));
    }

    // The demo's fault is meant: the thin tube of R11 starves the two nozzles behind it, and a feed there cures it.
    [Fact]
    public async Task Demo_is_cured_by_the_one_tube_that_starves_it_and_that_is_proven()
    {
        var answer = await caller.PostStudy("size", StudyRequests.Kept("size").ToJsonString()).Json(200);

        Assert.True(answer.GetProperty("possible").GetBoolean());
        Assert.Equal("exact", answer.GetProperty("proof").GetString());
        Assert.Equal(1, answer.GetProperty("objective").GetProperty("after").Value());
        var change = Assert.Single(answer.GetProperty("changes").EnumerateArray());
        Assert.Equal(("runs/R11/tube", "drop", "feed"), (change.GetProperty("path").GetString(), change.GetProperty("from").GetString(), change.GetProperty("to").GetString()));
        Assert.Contains("left in R11", change.GetProperty("reason").GetString(), StringComparison.Ordinal);
        Assert.True(answer.GetProperty("nozzles").EnumerateArray().All(nozzle => Math.Abs(nozzle.GetProperty("deviation").GetDouble()) <= 0.1));
        Assert.InRange(answer.GetProperty("time").GetProperty("longest").Value(), 5, 30);
    }

    [Theory]
    [InlineData("""{ "stock": { "orifices": ["1.1 mm", "1.3 mm"], "tubes": ["drop", "feed"] }, "wish": { "deviation": 0.05 }, "objective": "best-balance" }""")]
    [InlineData("""{ "stock": { "kFactors": ["0.9 L/min/bar^0.5", "1.3 L/min/bar^0.5"], "tubes": [{ "name": "new/one", "tube": { "bore": "5 mm", "minimumBendRadius": "20 mm" } }] }, "objective": "best-balance" }""")]
    public async Task Document_of_the_answer_posted_again_gives_the_stated_flow(string rest)
    {
        var request = JsonNode.Parse(rest)!.AsObject();
        request["layout"] = JsonNode.Parse(Documents.Demo);

        var answer = await caller.PostStudy("size", request.ToJsonString()).Json(200);

        Assert.NotEmpty(answer.GetProperty("changes").EnumerateArray());
        var flow = await caller.PostFlow(answer.GetProperty("layout").GetRawText()).Json(200);
        Assert.True(JsonElement.DeepEquals(flow.GetProperty("supply"), answer.GetProperty("supply")));
        Assert.True(JsonElement.DeepEquals(flow.GetProperty("findings"), answer.GetProperty("findings")));
        foreach (var (told, again) in answer.GetProperty("nozzles").EnumerateArray().Zip(flow.GetProperty("nozzles").EnumerateArray()))
            foreach (var field in (string[])["id", "pressure", "massFlow", "share", "wantedShare", "deviation"])
                Assert.True(JsonElement.DeepEquals(again.GetProperty(field), told.GetProperty(field)), $"{told} {again}");
        var worst = answer.GetProperty("nozzles").EnumerateArray().Max(nozzle => Math.Abs(nozzle.GetProperty("deviation").GetDouble()));
        Assert.Equal(worst, answer.GetProperty("objective").GetProperty("after").Value(), tolerance: 1e-9);
        Assert.Equal(11.5 / 100, answer.GetProperty("nozzles")[0].GetProperty("wantedShare").GetDouble(), tolerance: 1e-9);
    }

    [Fact]
    public async Task Nozzles_of_the_document_are_chosen_by_name_and_a_group_of_them_alike()
    {
        var request = StudyRequests.OfSmall("""{ "stock": { "nozzles": ["small", "large"] }, "free": [["left", "right"]], "wish": { "deviation": 0.2 }, "objective": "best-balance" }""", small =>
        {
            small["nozzles"] = JsonNode.Parse("""{ "small": { "kFactor": "1 L/min/bar^0.5", "pressureRange": ["1 bar", "16 bar"] }, "large": { "orifice": { "diameter": "3 mm", "dischargeCoefficient": 0.8 } } }""");
            foreach (var point in small["points"]!.AsArray().Skip(2))
                point!["share"] = 0.5;
        });

        var answer = await caller.PostStudy("size", request).Json(200);

        var set = answer.GetProperty("changes").EnumerateArray().Where(change => change.GetProperty("to").ValueKind == JsonValueKind.String).ToArray();
        Assert.Equal(["points/left/nozzle", "points/right/nozzle"], set.Select(change => change.GetProperty("path").GetString()));
        Assert.All(set, change => Assert.Equal("small", change.GetProperty("to").GetString()));
        Assert.Equal(0.5, answer.GetProperty("nozzles")[0].GetProperty("wantedShare").GetDouble(), tolerance: 1e-12);
    }

    [Fact]
    public async Task Wish_that_nothing_meets_is_answered_with_what_is_in_its_way()
    {
        var answer = await caller.PostStudy("size", StudyRequests.OfSmall(Impossible)).Json(200);

        Assert.False(answer.GetProperty("possible").GetBoolean());
        Assert.Equal("exact", answer.GetProperty("proof").GetString());
        Assert.Equal("fail", answer.GetProperty("verdict").GetString());
        Assert.Equal(JsonValueKind.Null, answer.GetProperty("layout").ValueKind);
        var ways = answer.GetProperty("inTheWay").EnumerateArray().ToDictionary(way => way.GetProperty("requirement").GetString()!);
        Assert.False(ways["deviation"].GetProperty("isAlone").GetBoolean());
        Assert.True(ways["leastPressure"].GetProperty("isAlone").GetBoolean());
        Assert.InRange(ways["leastPressure"].GetProperty("best").Value(), 8, 11.9);
        Assert.Contains("11.9 bar", ways["leastPressure"].GetProperty("message").GetString(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Every_fault_is_told_at_once_at_its_place()
    {
        var request = StudyRequests.OfSmall(
            """
            { "stock": { "tubes": ["CU-6x11", { "tube": { "bore": "5 mm", "roughness": "1 mm" } }, 7, { "name": "CU-6x1", "tube": { "bore": "4 mm" } }], "orifices": ["1.2", { "dischargeCoefficient": 2 }], "kFactors": ["1 bar"], "nozzles": ["cone"] },
              "free": ["lnog", "tee", "long", "long", ["short", "left"], [], 3, "valve"],
              "wish": { "deviation": -0.1, "within": ["5 s", "10 s"], "leastPressure": "-1 bar", "x": 1 },
              "objective": "cheapest" }
            """, small => small["agent"] = "watre");

        var problem = await caller.PostStudy("size", request).Fault(422);

        var errors = problem.GetProperty("errors").EnumerateObject().ToDictionary(error => error.Name, error => error.Value[0].GetString()!);
        Assert.Contains("water", errors["/layout/agent"], StringComparison.Ordinal);
        Assert.Contains("missing", errors["/stock/tubes/1/name"], StringComparison.Ordinal);
        Assert.Contains("5 %", errors["/stock/tubes/1/tube/roughness"], StringComparison.Ordinal);
        Assert.Contains("read 7", errors["/stock/tubes/2"], StringComparison.Ordinal);
        Assert.Contains("already", errors["/stock/tubes/3/name"], StringComparison.Ordinal);
        Assert.Contains("unit", errors["/stock/orifices/0"], StringComparison.Ordinal);
        Assert.Contains("0.000001 to 1", errors["/stock/orifices/1/dischargeCoefficient"], StringComparison.Ordinal);
        Assert.Contains("missing", errors["/stock/orifices/1/diameter"], StringComparison.Ordinal);
        Assert.True(errors.ContainsKey("/stock/kFactors/0"));
        Assert.Contains("over 0 to 1", errors["/wish/deviation"], StringComparison.Ordinal);
        Assert.Contains("ambient", errors["/wish/leastPressure"], StringComparison.Ordinal);
        Assert.Contains("unknown field 'x'", errors["/wish/x"], StringComparison.Ordinal);
        Assert.Contains("fewest-changes", errors["/objective"], StringComparison.Ordinal);
    }

    [Fact]
    public async Task What_is_free_is_named_by_ids_of_runs_and_nozzles_each_once()
    {
        var request = StudyRequests.OfSmall(
            """
            { "stock": { "tubes": ["CU-6x11", "CU-6x1"], "nozzles": ["cone"] },
              "free": ["lnog", "tee", "long", "long", ["short", "feed", "left"], [], 3],
              "wish": { "within": ["5 s", "10 s"] } }
            """);

        var problem = await caller.PostStudy("size", request).Fault(422);

        var errors = problem.GetProperty("errors").EnumerateObject().ToDictionary(error => error.Name, error => error.Value[0].GetString()!);
        Assert.Contains("did you mean 'CU-6x1'", errors["/stock/tubes/0"], StringComparison.Ordinal);
        Assert.Contains("there are none", errors["/stock/nozzles/0"], StringComparison.Ordinal);
        Assert.Contains("did you mean 'long'", errors["/free/0"], StringComparison.Ordinal);
        Assert.Contains("no nozzle", errors["/free/1"], StringComparison.Ordinal);
        Assert.Contains("free already", errors["/free/3"], StringComparison.Ordinal);
        Assert.Contains("stock has no", errors["/free/4/2"], StringComparison.Ordinal);
        Assert.Contains("empty group", errors["/free/5"], StringComparison.Ordinal);
        Assert.Contains("read 3", errors["/free/6"], StringComparison.Ordinal);
        Assert.Contains("needs a bottle", errors["/wish/within"], StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("""{ "wish": { "deviation": 0.1 } }""", "/stock")]
    [InlineData("""{ "stock": {}, "wish": { "deviation": 0.1 } }""", "/stock")]
    [InlineData("""{ "stock": { "tubes": ["CU-6x1"] } }""", "/wish")]
    [InlineData("""{ "stock": { "tubes": ["CU-6x1"] }, "wish": {} }""", "/wish")]
    [InlineData("""{ "stock": { "tubes": ["CU-6x1"] }, "free": [], "wish": { "deviation": 0.1 } }""", "/free")]
    [InlineData("""{ "stock": { "tubes": ["CU-6x1"] }, "wish": { "deviation": 0.1 }, "objective": "least-cost" }""", "/stock/tubes/0")]
    [InlineData("""{ "stock": { "tubes": [{ "name": "x", "tube": { "bore": "4 mm" } }] }, "wish": { "deviation": 0.1 }, "objective": "least-mass" }""", "/stock/tubes/0")]
    [InlineData("""{ "stock": { "tubes": ["CU-6x1", "CU-6x1"] }, "wish": { "deviation": 0.1 } }""", "/stock/tubes/1")]
    [InlineData("""{ "stock": { "tubes": ["CU-6x1"] }, "objective": "shortest-time" }""", "/objective")]
    public async Task Request_that_makes_no_sense_says_where(string rest, string pointer)
    {
        var problem = await caller.PostStudy("size", StudyRequests.OfSmall(rest)).Fault(422);

        Assert.Equal(pointer, Assert.Single(problem.GetProperty("errors").EnumerateObject()).Name);
    }

    [Fact]
    public async Task Stock_points_and_time_have_limits_of_their_own()
    {
        using var tight = Service.With(("Limits:SizeStock", "1"), ("Limits:SizePoints", "3"));
        using var hurried = Service.With(("Limits:SizeTime", "00:00:00.0001"));
        using var one = tight.Caller();
        using var other = hurried.Caller();

        var many = await one.PostStudy("size", StudyRequests.OfSmall("""{ "stock": { "tubes": ["CU-6x1", "CU-8x1"] }, "wish": { "deviation": 0.1 } }""")).Fault(422);
        var slow = await other.PostStudy("size", StudyRequests.Kept("size").ToJsonString()).Fault(422);

        var errors = many.GetProperty("errors").EnumerateObject().ToDictionary(error => error.Name, error => error.Value[0].GetString()!);
        Assert.Contains("at most 1", errors["/stock/tubes"], StringComparison.Ordinal);
        Assert.Contains(errors.Keys, pointer => pointer.StartsWith("/layout/points", StringComparison.Ordinal));
        Assert.Contains("0.0001 s", slow.GetProperty("errors").GetProperty("")[0].GetString(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Same_request_has_the_same_answer_every_time()
    {
        var request = StudyRequests.Kept("size").ToJsonString();

        var answers = await Task.WhenAll(Enumerable.Range(0, 3).Select(_ => caller.PostStudy("size", request).Json(200)));

        Assert.All(answers, answer => Assert.True(JsonElement.DeepEquals(answers[0], answer)));
    }
}
