using System.Text;
using System.Text.Json;
using FlowCalc.Api.Tests.Flow;
using FlowCalc.Api.Tests.Hosting;
using FlowCalc.Api.Tests.Requests;

namespace FlowCalc.Api.Tests.Discharge;

public sealed class DischargeFaultTests(Service service) : IDisposable
{
    readonly HttpClient caller = service.Caller();

    public void Dispose() => caller.Dispose();

    [Fact]
    public async Task Held_supply_is_a_422_that_asks_for_a_bottle()
    {
        var fault = await caller.PostDischarge(Documents.Small).Fault(422);

        var said = Assert.Single(fault.GetProperty("errors").EnumerateObject());
        Assert.Equal("/supply", said.Name);
        Assert.Contains("bottle", said.Value[0].GetString()!, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Faults_of_the_bottle_and_of_the_cases_are_told_at_once()
    {
        var document = DischargeDocuments.SmallWith(layout =>
        {
            layout["supply"]!["bottle"]!["fill"] = 1.4;
            layout["supply"]!["bottle"]!["openingTime"] = "soon";
            layout["cases"]!["temperatures"]![0] = "20 bar";
            layout["cases"]!["attitudes"]![0]!["gravity"]!.AsArray().RemoveAt(2);
        });

        var errors = (await caller.PostDischarge(document).Fault(422)).GetProperty("errors");

        foreach (var pointer in (string[])["/supply/bottle/fill", "/supply/bottle/openingTime", "/cases/temperatures/0", "/cases/attitudes/0/gravity"])
            Assert.NotEmpty(errors.GetProperty(pointer)[0].GetString()!);
    }

    [Theory]
    [InlineData("", "empty")]
    [InlineData("{ \"format\": 1, \"agent\": }", "line 1, byte 25")]
    [InlineData("nonsense", "line 1")]
    public async Task Body_that_is_not_JSON_is_a_400(string body, string said)
    {
        var fault = await caller.PostDischarge(body).Fault(400);

        Assert.Contains(said, fault.GetProperty("detail").GetString()!, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("text/plain")]
    [InlineData("application/xml")]
    [InlineData(null)]
    public async Task Content_type_that_is_not_JSON_is_a_415(string? type) =>
        await caller.PostLayout("/v1/discharge", Encoding.UTF8.GetBytes(DischargeDocuments.Small), contentType: type).Fault(415);

    [Theory]
    [InlineData("?units=imperial", "?units")]
    [InlineData("?unit=us", "?unit")]
    public async Task Query_that_does_not_fit_is_a_422(string query, string key)
    {
        var fault = await caller.PostDischarge(DischargeDocuments.Small, query).Fault(422);

        Assert.NotEmpty(fault.GetProperty("errors").GetProperty(key)[0].GetString()!);
    }

    [Fact]
    public async Task Other_method_is_a_405() => await caller.Get("/v1/discharge").Fault(405);

    [Fact]
    public async Task More_points_than_the_limit_are_a_422_that_says_the_limit_and_the_flow_still_takes_them()
    {
        await using var tight = Service.With(("Limits:DischargePoints", "3"));
        using var other = tight.Caller();

        var fault = await other.PostDischarge(DischargeDocuments.Small).Fault(422);

        Assert.Contains("3", fault.GetProperty("errors").GetProperty("/points")[0].GetString()!, StringComparison.Ordinal);
        await other.PostFlow(DischargeDocuments.Small).Json(200);
    }

    [Fact]
    public async Task Usual_limit_of_points_is_taken_and_one_more_is_not()
    {
        // How long a cold process takes hangs on the machine, and is no matter of this test.
        await using var patient = Service.With(("Limits:DischargeTime", "00:02:00"));
        using var other = patient.Caller();

        var answer = await other.PostDischarge(DischargeDocuments.Chain(500)).Json(200);
        await other.PostDischarge(DischargeDocuments.Chain(502)).Fault(422);

        Assert.All(answer.GetProperty("cases").EnumerateArray(), one => Assert.Equal(JsonValueKind.Null, one.GetProperty("failure").ValueKind));
        Assert.Equal(250, answer.GetProperty("cases")[0].GetProperty("nozzles").GetArrayLength());
    }
}
