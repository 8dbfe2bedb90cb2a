using System.Text.Json;
using System.Text.Json.Nodes;
using FlowCalc.Api.Tests.Coverage;
using FlowCalc.Api.Tests.Discharge;
using FlowCalc.Api.Tests.Flow;
using FlowCalc.Api.Tests.Hosting;
using FlowCalc.Api.Tests.Requests;

namespace FlowCalc.Api.Tests.Documentation;

public sealed class AnswersFitContractTests(Service service) : IDisposable
{
    readonly HttpClient caller = service.Caller();

    public void Dispose() => caller.Dispose();

    [Theory]
    [InlineData("/v1/agents", "/v1/agents")]
    [InlineData("/v1/agents?units=us", "/v1/agents")]
    [InlineData("/v1/agents/water", "/v1/agents/{id}")]
    [InlineData("/v1/agents/water-propylene-glycol?units=si", "/v1/agents/{id}")]
    [InlineData("/v1/agents/carbon-dioxide?fill=600%20kg/m3", "/v1/agents/{id}")]
    [InlineData("/v1/agents/IG-55?units=us", "/v1/agents/{id}")]
    [InlineData("/v1/tubes", "/v1/tubes")]
    [InlineData("/v1/fittings", "/v1/fittings")]
    [InlineData("/v1/applications", "/v1/applications")]
    [InlineData("/v1/applications?units=us", "/v1/applications")]
    [InlineData("/v1/examples", "/v1/examples")]
    [InlineData("/v1/examples/raid-pickup", "/v1/examples/{name}")]
    [InlineData("/health/live", "/health/live")]
    [InlineData("/health/ready", "/health/ready")]
    public async Task Answer_fits_the_schema_that_the_contract_publishes(string asked, string path)
    {
        var contract = await Contract.Published();

        var answer = await caller.Get(asked).Json(200);

        Assert.Empty(contract.Breaks(contract.SchemaOf(path, "get", "200"), answer));
    }

    [Theory]
    [InlineData("")]
    [InlineData("?units=us")]
    [InlineData("?units=si")]
    public async Task Flow_fits_the_schema_that_the_contract_publishes(string query)
    {
        var contract = await Contract.Published();

        foreach (var document in (string[])[Documents.Demo, Documents.Small])
            Assert.Empty(contract.Breaks("FlowAnswer", await caller.PostFlow(document, query).Json(200)));
    }

    [Theory]
    [InlineData("")]
    [InlineData("?units=us")]
    [InlineData("?units=si")]
    public async Task Discharge_fits_the_schema_that_the_contract_publishes(string query)
    {
        var contract = await Contract.Published();

        Assert.Empty(contract.Breaks("DischargeAnswer", await caller.PostDischarge(Documents.Demo, query).Json(200)));
    }

    [Theory]
    [InlineData("metric")]
    [InlineData("us")]
    [InlineData("si")]
    public async Task Calibration_fits_the_schema_that_the_contract_publishes(string units)
    {
        var contract = await Contract.Published();

        Assert.Empty(contract.Breaks("CalibrationAnswer", await caller.PostCalibration(Documents.Demo, "?units=" + units).Json(200)));
        var timed = JsonNode.Parse(Documents.Demo)!;
        timed["measured"] = new JsonObject { ["dischargeTime"] = "17 s" };
        Assert.Empty(contract.Breaks("CalibrationAnswer", await caller.PostCalibration(timed.ToJsonString(), "?units=" + units).Json(200)));
    }

    [Theory]
    [InlineData("?explain=true")]
    [InlineData("?explain=true&units=us")]
    public async Task Explained_answer_fits_the_schema_that_the_contract_publishes(string query)
    {
        var contract = await Contract.Published();

        foreach (var document in (string[])[Documents.Demo, Documents.Small, GasDocument])
            Assert.Empty(contract.Breaks("FlowAnswer", await caller.PostFlow(document, query).Json(200)));
        foreach (var document in (string[])[DischargeDocuments.Small, GasDocument])
            Assert.Empty(contract.Breaks("DischargeAnswer", await caller.PostDischarge(document, query).Json(200)));
    }

    static string GasDocument => Documents.SmallWith(small =>
    {
        small["agent"] = "carbon-dioxide";
        small["supply"] = JsonNode.Parse("""{ "bottle": { "volume": "2 L", "fill": "1.3 kg" } }""");
        small["cases"] = JsonNode.Parse("""{ "temperatures": ["20 °C"] }""");
    });

    [Theory]
    [InlineData("")]
    [InlineData("?units=us&format=json")]
    [InlineData("?units=si")]
    public async Task Cut_list_fits_the_schema_that_the_contract_publishes(string query)
    {
        var contract = await Contract.Published();

        foreach (var document in (string[])[Documents.Demo, Documents.Small])
            Assert.Empty(contract.Breaks("CutListAnswer", await caller.PostCutList(document, query).Json(200)));
    }

    // With everything given, and with so little that most of it is null.
    [Theory]
    [InlineData("")]
    [InlineData("?units=us")]
    public async Task Mount_fits_the_schema_that_the_contract_publishes(string query)
    {
        var contract = await Contract.Published();
        var bare = JsonNode.Parse(Documents.Demo)!;
        bare["mount"] = JsonNode.Parse("""{ "normal": [-1, 0, 0], "centreOfMass": ["0 mm", "0 mm", "80 mm"], "bolts": { "size": "M5", "at": [["0 mm", "0 mm"]] } }""");
        bare["supply"]!["bottle"]!.AsObject().Remove("outlet");

        foreach (var document in (string[])[Documents.Demo, bare.ToJsonString()])
            Assert.Empty(contract.Breaks("MountAnswer", await caller.PostMount(document, query).Json(200)));
    }

    [Theory]
    [InlineData("metric")]
    [InlineData("us")]
    [InlineData("si")]
    public async Task Circuit_upkeep_and_check_fit_the_schema_that_the_contract_publishes(string units)
    {
        var contract = await Contract.Published();

        Assert.Empty(contract.Breaks("CheckAnswer", await caller.PostCheck(Documents.Demo, "?today=2026-11-25&units=" + units).Json(200)));
        Assert.Empty(contract.Breaks("CheckAnswer", await caller.PostCheck(Documents.SmallWith(_ => { }), "?units=" + units).Json(200)));

        Assert.Empty(contract.Breaks("CircuitAnswer", await caller.PostCircuit(Documents.Demo, "?units=" + units).Json(200)));
        Assert.Empty(contract.Breaks("UpkeepAnswer", await caller.PostUpkeep(Documents.Demo, "?today=2026-11-25&temperature=5%20%C2%B0C&units=" + units).Json(200)));
        Assert.Empty(contract.Breaks("UpkeepAnswer", await caller.PostUpkeep(Documents.SmallWith(small => small["service"] = new JsonObject()), "?today=2026-11-25").Json(200)));
    }

    // Water freezes in one case, and the bottle gives nothing in the other: most fields of a case have nothing to say.
    [Fact]
    public async Task Discharge_with_little_to_say_fits_the_schema_that_the_contract_publishes()
    {
        var contract = await Contract.Published();
        var document = Documents.SmallWith(small =>
        {
            small["supply"] = JsonNode.Parse("""{ "bottle": { "volume": "2 L", "fill": "1.5 kg", "chargePressure": "12 bar", "outlet": { "dipTube": { "bore": "8 mm", "length": "150 mm" } }, "shape": { "diameter": "100 mm", "length": "255 mm" } } }""");
            small["cases"] = JsonNode.Parse("""{ "temperatures": ["-5 °C", "20 °C"], "attitudes": [{ "name": "on the roof", "gravity": [0, 0, 1] }] }""");
        });

        var answer = await caller.PostDischarge(document).Json(200);

        var cases = answer.GetProperty("cases");
        Assert.Equal(JsonValueKind.String, cases[0].GetProperty("failure").ValueKind);
        Assert.Equal(JsonValueKind.Null, cases[0].GetProperty("series").ValueKind);
        Assert.Equal(JsonValueKind.Null, cases[1].GetProperty("failure").ValueKind);
        Assert.Equal(JsonValueKind.Null, cases[1].GetProperty("time95").ValueKind);
        Assert.Empty(contract.Breaks("DischargeAnswer", answer));
    }

    [Theory]
    [InlineData("")]
    [InlineData("?units=us")]
    [InlineData("?units=si")]
    public async Task Coverage_fits_the_schema_that_the_contract_publishes(string query)
    {
        var contract = await Contract.Published();
        foreach (var document in (string[])[Documents.Demo, CoverageCallTests.Space, CoverageCallTests.Bare])
            Assert.Empty(contract.Breaks("CoverageAnswer", await caller.PostCoverage(document, query).Json(200)));
    }

    [Fact]
    public async Task Faults_fit_the_schema_that_the_contract_publishes()
    {
        var contract = await Contract.Published();

        JsonElement[] faults =
        [
            await caller.PostFlow("").Fault(400), await caller.PostFlow("{").Fault(400), await caller.PostFlow("{}").Fault(422), await caller.PostFlow("{}", contentType: "text/plain").Fault(415),
            await caller.PostFlow("{}", "?units=x").Fault(422), await caller.Get("/v1/agents/x").Fault(404), await caller.Get("/x").Fault(404), await caller.Get("/v1/flow").Fault(405),
            await caller.PostDischarge("{}").Fault(422), await caller.PostDischarge(Documents.Small).Fault(422),
        ];

        Assert.All(faults, fault => Assert.Empty(contract.Breaks("Problem", fault)));
    }

    [Fact]
    public async Task Schema_refuses_an_answer_with_a_field_too_few_or_too_many()
    {
        var contract = await Contract.Published();
        var answer = await caller.PostFlow(Documents.Small).Json(200);

        var fewer = answer.GetRawText().Replace("\"verdict\":", "\"verdikt\":", StringComparison.Ordinal);
        var deeper = answer.GetRawText().Replace("\"reynolds\":", "\"extra\":1,\"reynolds\":", StringComparison.Ordinal);

        Assert.NotEmpty(contract.Breaks("FlowAnswer", JsonDocument.Parse(fewer).RootElement));
        Assert.NotEmpty(contract.Breaks("FlowAnswer", JsonDocument.Parse(deeper).RootElement));
    }
}
