using FlowCalc.Api.Tests.Discharge;
using FlowCalc.Api.Tests.Flow;
using FlowCalc.Api.Tests.Hosting;
using FlowCalc.Api.Tests.Requests;
using FlowCalc.Api.Tests.Studies;

namespace FlowCalc.Api.Tests.Explanations;

public sealed class ExplainFaultTests(Service service)
{
    const string SizeOfSmall = """{ "stock": { "tubes": [{ "name": "stock", "tube": { "bore": "5 mm" } }] }, "wish": { "deviation": 0.5 } }""", FewSamples = """{ "samples": 100 }""";

    [Theory]
    [InlineData("?explain=maybe", "\"maybe\" does not fit; it takes true or false.")]
    [InlineData("?explain=True", "\"True\" does not fit; it takes true or false.")]
    [InlineData("?explain=1", "\"1\" does not fit; it takes true or false.")]
    [InlineData("?explain", "\"\" does not fit; it takes true or false.")]
    [InlineData("?explain=true&explain=true", "It stands more than once; once is enough.")]
    public async Task Value_other_than_true_or_false_is_a_fault_that_says_so(string query, string message)
    {
        using var caller = service.Caller();

        foreach (var asked in (Task<HttpResponseMessage>[])[
            caller.PostFlow(Documents.Small, query), caller.PostDischarge(DischargeDocuments.Small, query), caller.PostCutList(Documents.Small, query),
            .. ((string[])["compare", "size", "tolerance"]).Select(call => caller.PostStudy(call, StudyRequests.Kept(call).ToJsonString(), query))])
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
    public async Task Points_of_a_comparison_are_those_of_all_its_layouts()
    {
        await using var small = Service.With(("Limits:ExplainedPoints", "11"));
        using var caller = small.Caller();
        string Request(int variants)
        {
            var list = string.Join(", ", Enumerable.Range(0, variants).Select(at => $$"""{ "name": "{{at}}", "set": { "runs/long/bore": "6 mm" } }"""));
            return StudyRequests.OfSmall($$"""{ "variants": [{{list}}] }""");
        }

        await caller.PostStudy("compare", Request(1), "?explain=true").Json(200);
        var fault = await caller.PostStudy("compare", Request(2), "?explain=true").Fault(422);

        Assert.Contains("12 points (those of the base and of every variant)", fault.GetProperty("errors").GetProperty("?explain")[0].GetString()!, StringComparison.Ordinal);
        await caller.PostStudy("compare", Request(2)).Json(200);
    }

    [Fact]
    public async Task Points_of_sizes_and_of_a_study_are_those_of_the_layout()
    {
        await using var small = Service.With(("Limits:ExplainedPoints", "3"));
        using var caller = small.Caller();

        foreach (var (call, request) in ((string, string)[])[("size", StudyRequests.OfSmall(SizeOfSmall)), ("tolerance", StudyRequests.OfSmall(FewSamples))])
        {
            var fault = await caller.PostStudy(call, request, "?explain=true").Fault(422);
            Assert.Contains("4 points", fault.GetProperty("errors").GetProperty("?explain")[0].GetString()!, StringComparison.Ordinal);
            await caller.PostStudy(call, request).Json(200);
        }
    }

    [Fact]
    public async Task A_study_handed_in_as_a_job_has_the_same_bound()
    {
        await using var small = Service.With(("Limits:ExplainedPoints", "3"));
        using var caller = small.Caller();
        caller.DefaultRequestHeaders.Add("Prefer", "respond-async");

        var fault = await caller.PostStudy("tolerance", StudyRequests.OfSmall(FewSamples), "?explain=true").Fault(422);

        Assert.Contains("at most 3", fault.GetProperty("errors").GetProperty("?explain")[0].GetString()!, StringComparison.Ordinal);
    }

    [Fact]
    public async Task What_a_cut_list_has_to_explain_is_counted_in_its_parts()
    {
        await using var small = Service.With(("Limits:ExplainedPoints", "2"));
        using var caller = small.Caller();

        var fault = await caller.PostCutList(Documents.Small, "?explain=true").Fault(422);

        Assert.Contains("runs, bends, fittings, clips and hot places to explain; at most 2", fault.GetProperty("errors").GetProperty("?explain")[0].GetString()!, StringComparison.Ordinal);
        await caller.PostCutList(Documents.Small).Json(200);
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
