using System.Text.Json;
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
    [InlineData("/v1/tubes", "/v1/tubes")]
    [InlineData("/v1/fittings", "/v1/fittings")]
    [InlineData("/v1/examples", "/v1/examples")]
    [InlineData("/v1/examples/raid-pickup", "/v1/examples/{name}")]
    [InlineData("/health/live", "/health/live")]
    [InlineData("/health/ready", "/health/ready")]
    public async Task Answer_fits_the_schema_that_the_contract_publishes(string asked, string path)
    {
        var contract = await Contract.Published(service);

        var answer = await caller.Get(asked).Json(200);

        Assert.Empty(contract.Breaks(contract.SchemaOf(path, "get", "200"), answer));
    }

    [Theory]
    [InlineData("")]
    [InlineData("?units=us")]
    [InlineData("?units=si")]
    public async Task Flow_fits_the_schema_that_the_contract_publishes(string query)
    {
        var contract = await Contract.Published(service);

        foreach (var document in (string[])[Documents.Demo, Documents.Small])
            Assert.Empty(contract.Breaks("FlowAnswer", await caller.PostFlow(document, query).Json(200)));
    }

    [Fact]
    public async Task Faults_fit_the_schema_that_the_contract_publishes()
    {
        var contract = await Contract.Published(service);

        JsonElement[] faults =
        [
            await caller.PostFlow("").Fault(400), await caller.PostFlow("{").Fault(400), await caller.PostFlow("{}").Fault(422), await caller.PostFlow("{}", contentType: "text/plain").Fault(415),
            await caller.PostFlow("{}", "?units=x").Fault(422), await caller.Get("/v1/agents/x").Fault(404), await caller.Get("/x").Fault(404), await caller.Get("/v1/flow").Fault(405),
        ];

        Assert.All(faults, fault => Assert.Empty(contract.Breaks("Problem", fault)));
    }

    [Fact]
    public async Task Schema_refuses_an_answer_with_a_field_too_few_or_too_many()
    {
        var contract = await Contract.Published(service);
        var answer = await caller.PostFlow(Documents.Small).Json(200);

        var fewer = answer.GetRawText().Replace("\"verdict\":", "\"verdikt\":", StringComparison.Ordinal);
        var deeper = answer.GetRawText().Replace("\"reynolds\":", "\"extra\":1,\"reynolds\":", StringComparison.Ordinal);

        Assert.NotEmpty(contract.Breaks("FlowAnswer", JsonDocument.Parse(fewer).RootElement));
        Assert.NotEmpty(contract.Breaks("FlowAnswer", JsonDocument.Parse(deeper).RootElement));
    }
}
