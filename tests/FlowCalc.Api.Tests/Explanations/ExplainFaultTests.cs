using FlowCalc.Api.Tests.Discharge;
using FlowCalc.Api.Tests.Flow;
using FlowCalc.Api.Tests.Hosting;
using FlowCalc.Api.Tests.Requests;

namespace FlowCalc.Api.Tests.Explanations;

public sealed class ExplainFaultTests(Service service)
{
    [Theory]
    [InlineData("?explain=maybe", "\"maybe\" does not fit; it takes true or false.")]
    [InlineData("?explain=True", "\"True\" does not fit; it takes true or false.")]
    [InlineData("?explain=1", "\"1\" does not fit; it takes true or false.")]
    [InlineData("?explain", "\"\" does not fit; it takes true or false.")]
    [InlineData("?explain=true&explain=true", "It stands more than once; once is enough.")]
    public async Task Value_other_than_true_or_false_is_a_fault_that_says_so(string query, string message)
    {
        using var caller = service.Caller();

        foreach (var asked in (Task<HttpResponseMessage>[])[caller.PostFlow(Documents.Small, query), caller.PostDischarge(DischargeDocuments.Small, query)])
            Assert.Equal(message, (await asked.Fault(422)).GetProperty("errors").GetProperty("?explain")[0].GetString());
    }

    [Fact]
    public async Task All_faults_of_a_query_are_told_at_once()
    {
        using var caller = service.Caller();

        var errors = (await caller.PostFlow(Documents.Small, "?units=imperial&explain=maybe&format=csv").Fault(422)).GetProperty("errors");

        Assert.Equal(["?explain", "?format", "?units"], errors.EnumerateObject().Select(error => error.Name).Order(StringComparer.Ordinal));
    }

    [Fact]
    public async Task Call_that_explains_nothing_refuses_the_word()
    {
        using var caller = service.Caller();

        var errors = (await caller.Get("/v1/agents?explain=true").Fault(422)).GetProperty("errors");

        Assert.True(errors.TryGetProperty("?explain", out _));
    }

    [Fact]
    public async Task More_points_than_may_be_explained_are_a_fault_with_both_numbers_and_the_plain_answer_is_given()
    {
        await using var small = Service.With(("Limits:ExplainedPoints", "3"));
        using var caller = small.Caller();

        var fault = await caller.PostFlow(Documents.Small, "?explain=true").Fault(422);

        Assert.Contains("4 points", fault.GetProperty("errors").GetProperty("?explain")[0].GetString()!, StringComparison.Ordinal);
        Assert.Contains("at most 3", fault.GetProperty("errors").GetProperty("?explain")[0].GetString()!, StringComparison.Ordinal);
        await caller.PostFlow(Documents.Small).Json(200);
    }

    [Fact]
    public async Task Points_of_a_discharge_count_in_every_case()
    {
        await using var small = Service.With(("Limits:ExplainedPoints", "11"));
        using var caller = small.Caller();
        var twice = DischargeDocuments.Cases("""{ "temperatures": ["20 °C", "40 °C"], "attitudes": [{ "name": "upright", "gravity": [0, 0, -1] }] }""");
        var thrice = DischargeDocuments.Cases("""{ "temperatures": ["10 °C", "20 °C", "40 °C"], "attitudes": [{ "name": "upright", "gravity": [0, 0, -1] }] }""");

        await caller.PostDischarge(twice, "?explain=true").Json(200);
        var fault = await caller.PostDischarge(thrice, "?explain=true").Fault(422);

        Assert.Contains("12 points", fault.GetProperty("errors").GetProperty("?explain")[0].GetString()!, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Most_points_that_may_be_explained_are_answered()
    {
        using var caller = service.Caller();

        var answer = await caller.PostFlow(Documents.Chain(500), "?explain=true").Json(200);

        ToldSteps.Redo(answer.GetProperty("explanation"));
        await caller.PostFlow(Documents.Chain(600), "?explain=true").Fault(422);
    }
}
