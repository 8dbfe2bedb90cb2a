using System.Text;
using System.Text.Json;
using FlowCalc.Api.Tests.Documentation;
using FlowCalc.Api.Tests.Flow;
using FlowCalc.Api.Tests.Hosting;
using FlowCalc.Api.Tests.Requests;

namespace FlowCalc.Api.Tests.Tolerance;

public sealed class ToleranceTests(Service service) : IDisposable
{
    readonly HttpClient caller = service.Caller();

    public void Dispose() => caller.Dispose();

    [Fact]
    public async Task Spread_of_a_flow_tells_shares_chances_and_what_matters()
    {
        var answer = await Post($$"""{ "layout": {{Documents.Small}}, "samples": 400, "seed": 7, "spreads": { "kFactor": { "normal": 0.05 }, "runs/long/length": { "uniform": "50 mm" } } }""").Json(200);

        Assert.Equal(("flow", 400, 7), (answer.GetProperty("answer").GetString(), answer.GetProperty("samples").GetInt32(), answer.GetProperty("seed").GetInt32()));
        Assert.Equal(["runs/long/length", "points/left/kFactor", "points/right/kFactor"], answer.GetProperty("inputs").EnumerateArray().Select(input => input.GetProperty("path").GetString()));
        Assert.Equal(400, answer.GetProperty("verdicts").EnumerateObject().Sum(verdict => verdict.Value.GetProperty("count").GetInt32()));
        Assert.Contains("matters most to the share of the worst-fed nozzle", answer.GetProperty("statement").GetString(), StringComparison.Ordinal);
        var shares = answer.GetProperty("cases")[0].GetProperty("nozzles").EnumerateArray().Select(nozzle => Figure(nozzle, "share")).ToArray();
        Assert.Equal(1, shares.Sum(share => share.GetProperty("mean").GetDouble()), tolerance: 1e-12);
        Assert.All(shares, share => Assert.InRange(share.GetProperty("p50").GetDouble(), share.GetProperty("p05").GetDouble(), share.GetProperty("p95").GetDouble()));
        // The design's own figure is that of the call itself.
        var flow = await caller.PostFlow(Documents.Small).Json(200);
        Assert.Equal(flow.GetProperty("nozzles")[0].GetProperty("share").GetDouble(), shares[0].GetProperty("design").GetDouble(), tolerance: 1e-12);
    }

    [Fact]
    public async Task Units_change_the_numbers_and_not_what_they_mean()
    {
        var request = $$"""{ "layout": {{Documents.Small}}, "samples": 100 }""";

        var (metric, us) = (await Post(request).Json(200), await Post(request, "?units=us").Json(200));

        var (bar, psi) = (Figure(Left(metric), "pressure"), Figure(Left(us), "pressure"));
        Assert.Equal(("bar", "psi"), (bar.GetProperty("unit").GetString(), psi.GetProperty("unit").GetString()));
        foreach (var name in (string[])["design", "mean", "standardDeviation", "least", "p05", "p50", "p95", "greatest"])
            Assert.Equal(14.503773773, psi.GetProperty(name).GetDouble() / bar.GetProperty(name).GetDouble(), tolerance: 1e-6);
        Assert.Equal(Figure(Left(metric), "share").GetRawText(), Figure(Left(us), "share").GetRawText());
        Assert.Equal(metric.GetProperty("findings").GetRawText(), us.GetProperty("findings").GetRawText());
    }

    [Theory]
    [InlineData("")]
    [InlineData("?units=us")]
    [InlineData("?units=si")]
    public async Task Answers_fit_the_schema_that_the_contract_publishes(string query)
    {
        var contract = await Contract.Published();

        foreach (var more in (string[])["", """, "answer": "discharge", "spreads": { "temperature": { "uniform": "25 K" } } """])
            Assert.Empty(contract.Breaks("ToleranceAnswer", await Post($$"""{ "layout": {{Documents.Demo}}, "samples": 100{{more}} }""", query).Json(200)));
    }

    [Fact]
    public async Task Faults_come_at_once_each_at_its_place()
    {
        var fault = await Post($$"""{ "layout": { "format": 1 }, "samples": 1, "spreads": { "bores": { "normal": 0.1 } } }""").Fault(422);

        var pointers = fault.GetProperty("errors").EnumerateObject().Select(error => error.Name).ToArray();
        Assert.Contains("/samples", pointers);
        Assert.Contains("/spreads/bores", pointers);
        Assert.Contains("/layout/agent", pointers);
        Assert.Contains("/layout/points", pointers);
    }

    [Fact]
    public async Task Study_over_its_time_says_so()
    {
        await using var hurried = Service.With(("Limits:ToleranceTime", "00:00:00.05"));
        using var other = hurried.Caller();

        var fault = await other.PostLayout("/v1/tolerance", Encoding.UTF8.GetBytes($$"""{ "layout": {{Documents.Demo}}, "answer": "discharge", "cases": "all", "samples": 10000 }""")).Fault(422);

        Assert.Contains("0.05 s", fault.GetProperty("errors").GetProperty("")[0].GetString(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("Limits:ToleranceFlowSamples", "150", "flow")]
    [InlineData("Limits:ToleranceDischargeSamples", "150", "discharge")]
    public async Task Samples_beyond_the_limit_of_the_service_are_refused(string setting, string most, string answer)
    {
        await using var small = Service.With((setting, most));
        using var other = small.Caller();

        var fault = await other.PostLayout("/v1/tolerance", Encoding.UTF8.GetBytes($$"""{ "layout": {{Documents.Demo}}, "answer": "{{answer}}", "samples": 151 }""")).Fault(422);

        Assert.Contains("100 to 150", fault.GetProperty("errors").GetProperty("/samples")[0].GetString(), StringComparison.Ordinal);
    }

    Task<HttpResponseMessage> Post(string request, string query = "") => caller.PostLayout("/v1/tolerance", Encoding.UTF8.GetBytes(request), query);

    static JsonElement Left(JsonElement answer) => answer.GetProperty("cases")[0].GetProperty("nozzles")[0];

    static JsonElement Figure(JsonElement place, string name) => place.GetProperty("figures").EnumerateArray().Single(figure => figure.GetProperty("figure").GetString() == name);
}
