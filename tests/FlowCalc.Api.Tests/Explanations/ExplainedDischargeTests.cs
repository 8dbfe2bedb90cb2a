using System.Text;
using FlowCalc.Api.Tests.Discharge;
using FlowCalc.Api.Tests.Flow;
using FlowCalc.Api.Tests.Hosting;
using FlowCalc.Api.Tests.Requests;
using FlowCalc.Examples;

namespace FlowCalc.Api.Tests.Explanations;

public sealed class ExplainedDischargeTests(Service service) : IDisposable
{
    readonly HttpClient caller = service.Caller();

    public void Dispose() => caller.Dispose();

    async Task<string> Text(string document, string query)
    {
        using var response = await caller.PostDischarge(document, query);
        return await response.Content.ReadAsStringAsync(TestContext.Current.CancellationToken);
    }

    [Fact]
    public async Task Explained_discharge_is_the_plain_one_with_its_explanation_behind()
    {
        var plain = await Text(Documents.Demo, "");

        Assert.Equal(plain, await Text(Documents.Demo, "?explain=false"));
        Assert.DoesNotContain("\"explanation\"", plain, StringComparison.Ordinal);
        Assert.StartsWith(plain[..^1] + ",\"explanation\":{\"equations\":[", await Text(Documents.Demo, "?explain=true"), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("raid-pickup")]
    [InlineData("boat-engine-space")]
    [InlineData("yacht-halocarbon")]
    [InlineData("cabinet-inert-gas")]
    public async Task Every_step_of_every_case_is_redone_from_the_answer_alone(string name)
    {
        var document = Encoding.UTF8.GetString(ExampleCatalogue.Find(name)!.Value.Span);
        // What is tested are the steps; how long a busy machine takes for them is not.
        await using var patient = Service.With(("Limits:DischargeTime", "00:02:00"));
        using var patientCaller = patient.Caller();
        foreach (var units in (string[])["metric", "us"])
        {
            var answer = await patientCaller.PostDischarge(document, $"?explain=true&units={units}").Json(200);
            var explanation = answer.GetProperty("explanation");

            ToldSteps.Redo(explanation);
            Assert.Equal(
                answer.GetProperty("cases").EnumerateArray().Select(one => (one.GetProperty("temperature").Value(), one.Word("attitude"))),
                explanation.GetProperty("cases").EnumerateArray().Select(one => (one.GetProperty("temperature").Value(), one.Word("attitude"))));
        }
    }

    [Fact]
    public async Task Case_starts_with_its_bottle_goes_on_with_its_flow_and_ends_with_how_the_bottle_changes()
    {
        var answer = await caller.PostDischarge(DischargeDocuments.Small, "?explain=true").Json(200);

        var laws = answer.GetProperty("explanation").GetProperty("cases")[0].GetProperty("steps").EnumerateArray().Select(step => step.Word("equation")!).ToList();
        foreach (var (earlier, later) in ((string, string)[])[
            ("cushion-volume", "bottle-pressure"), ("bottle-pressure", "cushion-at-uncovering"), ("cushion-at-uncovering", "cushion-law"), ("cushion-law", "head-in-bottle"), ("head-in-bottle", "kv-loss"),
            ("kv-loss", "nozzle-flow"), ("nozzle-flow", "contents-rate"), ("contents-rate", "cushion-volume-rate"), ("cushion-volume-rate", "cushion-temperature-rate")])
            Assert.True(laws.IndexOf(earlier) >= 0 && laws.IndexOf(earlier) < laws.IndexOf(later), $"{earlier} before {later}");
        Assert.Contains(answer.GetProperty("explanation").GetProperty("leftOut").EnumerateArray(), text => text.GetString()!.Contains("steps between start and end", StringComparison.Ordinal));
    }

    [Fact]
    public async Task Case_that_has_no_discharge_has_no_steps()
    {
        var answer = await caller.PostDischarge(DischargeDocuments.Cases("""{ "temperatures": ["-5 °C", "20 °C"] }"""), "?explain=true").Json(200);

        var cases = answer.GetProperty("explanation").GetProperty("cases");
        Assert.Equal(0, cases[0].GetProperty("steps").GetArrayLength());
        Assert.NotEqual(0, cases[1].GetProperty("steps").GetArrayLength());
    }
}
