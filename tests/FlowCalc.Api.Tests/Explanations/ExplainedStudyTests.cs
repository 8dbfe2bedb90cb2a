using System.Text;
using System.Text.Json;
using FlowCalc.Api.Tests.Documentation;
using FlowCalc.Api.Tests.Flow;
using FlowCalc.Api.Tests.Hosting;
using FlowCalc.Api.Tests.Requests;
using FlowCalc.Api.Tests.Studies;
using FlowCalc.Examples;

namespace FlowCalc.Api.Tests.Explanations;

/// <summary>Cut lists, comparisons, sizes and studies of tolerances, explained as a caller gets them.</summary>
public sealed class ExplainedStudyTests(Service service) : IDisposable
{
    const string Cheapest = """
        { "stock": { "tubes": [{ "name": "five", "costPerMetre": 3.5, "tube": { "outsideDiameter": "7 mm", "wall": "1 mm", "material": "copper" } }, { "name": "six", "costPerMetre": 4.5, "tube": { "outsideDiameter": "8 mm", "wall": "1 mm", "material": "copper" } }] },
          "wish": { "deviation": 0.4 }, "objective": "OBJECTIVE" }
        """;

    readonly HttpClient caller = service.Caller();

    public static TheoryData<string> Examples => [.. ExampleCatalogue.All.Select(example => example.Name)];

    public void Dispose() => caller.Dispose();

    static string Example(string name) => Encoding.UTF8.GetString(ExampleCatalogue.Find(name)!.Value.Span);

    static string Request(string call) => call == "tolerance"
        ? StudyRequests.OfSmall("""{ "samples": 200, "seed": 3 }""")
        : StudyRequests.Kept(call).ToJsonString();

    static async Task<string> Text(Task<HttpResponseMessage> asked)
    {
        using var response = await asked;
        return await response.Content.ReadAsStringAsync(TestContext.Current.CancellationToken);
    }

    [Theory]
    [InlineData("compare")]
    [InlineData("size")]
    [InlineData("tolerance")]
    public async Task Explained_study_is_the_plain_one_with_its_explanation_behind(string call)
    {
        var plain = await Text(caller.PostStudy(call, Request(call)));

        Assert.Equal(plain, await Text(caller.PostStudy(call, Request(call), "?explain=false")));
        Assert.DoesNotContain("\"explanation\"", plain, StringComparison.Ordinal);
        Assert.StartsWith(plain[..^1] + ",\"explanation\":{\"equations\":[", await Text(caller.PostStudy(call, Request(call), "?explain=true")), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("compare", "metric", "CompareAnswer")]
    [InlineData("compare", "us", "CompareAnswer")]
    [InlineData("size", "metric", "SizeAnswer")]
    [InlineData("size", "us", "SizeAnswer")]
    [InlineData("tolerance", "si", "ToleranceAnswer")]
    [InlineData("tolerance", "us", "ToleranceAnswer")]
    public async Task Every_step_of_a_study_is_redone_from_the_answer_alone_and_fits_the_contract(string call, string units, string schema)
    {
        var answer = await caller.PostStudy(call, Request(call), $"?explain=true&units={units}").Json(200);

        ToldSteps.Redo(answer.GetProperty("explanation"));
        Assert.NotEmpty(answer.GetProperty("explanation").GetProperty("leftOut").EnumerateArray());
        Assert.Empty((await Contract.Published()).Breaks(schema, answer));
    }

    [Theory]
    [MemberData(nameof(Examples))]
    public async Task Every_step_of_a_cut_list_is_redone_from_the_answer_alone(string name)
    {
        foreach (var units in (string[])["metric", "us", "si"])
        {
            var answer = await caller.PostCutList(Example(name), $"?explain=true&units={units}").Json(200);

            ToldSteps.Redo(answer.GetProperty("explanation"));
            Assert.Empty((await Contract.Published()).Breaks("CutListAnswer", answer));
        }
        var plain = await Text(caller.PostCutList(Example(name)));
        Assert.StartsWith(plain[..^1] + ",\"explanation\":{\"equations\":[", await Text(caller.PostCutList(Example(name), "?explain=true&format=json")), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Steps_of_a_cut_list_come_out_at_its_lengths_and_marks()
    {
        var answer = await caller.PostCutList(Documents.Demo, "?explain=true").Json(200);
        var steps = ToldSteps.Of(answer.GetProperty("explanation"));

        foreach (var run in answer.GetProperty("runs").EnumerateArray())
        {
            double[] Told(string equation) => [.. steps.Where(step => step.Word("place") == "run" && step.Word("id") == run.Word("id") && step.Word("equation") == equation).Select(step => step.GetProperty("result").Value())];
            var pieces = run.GetProperty("pieces").EnumerateArray().ToArray();
            Assert.Equal(pieces.Select(piece => piece.GetProperty("exactLength").Value()), Told("piece-length"));
            Assert.Equal(pieces.SelectMany(piece => piece.GetProperty("bends").EnumerateArray()).Select(bend => bend.GetProperty("at").Value()), Told("bend-mark"));
        }
        foreach (var tube in answer.GetProperty("tubes").EnumerateArray())
            Assert.Contains(steps, step => step.Word("place") == "tube" && step.Word("id") == tube.Word("tube") && step.Word("equation") == "order-length" && step.GetProperty("result").Value() == tube.GetProperty("order").Value());
    }

    [Theory]
    [InlineData("least-cost", "cost-of-run")]
    [InlineData("least-mass", "mass-of-run")]
    [InlineData("fewest-changes", "pieces-exchanged")]
    [InlineData("best-balance", "largest-deviation")]
    public async Task Steps_of_sizes_come_out_at_the_objective_of_the_answer(string objective, string law)
    {
        var answer = await caller.PostStudy("size", StudyRequests.OfSmall(Cheapest.Replace("OBJECTIVE", objective, StringComparison.Ordinal)), "?explain=true").Json(200);
        var steps = ToldSteps.Of(answer.GetProperty("explanation"));

        Assert.Contains(steps, step => step.Word("equation") == law);
        var whole = steps.Single(step => step.Word("part") == "objective, after" && step.GetProperty("result").Word("symbol") == "V");
        Assert.Equal(answer.GetProperty("objective").GetProperty("after").Value(), whole.GetProperty("result").Value(), tolerance: 1e-9);
        ToldSteps.Redo(answer.GetProperty("explanation"));
    }

    [Fact]
    public async Task A_study_handed_in_as_a_job_is_explained_alike()
    {
        using var patient = service.Caller();
        patient.DefaultRequestHeaders.Add("Prefer", "respond-async");
        var job = (await patient.PostStudy("tolerance", Request("tolerance"), "?explain=true").Json(202)).Word("id");

        JsonElement told;
        do told = await caller.Get($"/v1/jobs/{job}").Json(200);
        while (told.Word("state") is "queued" or "running");

        var direct = await caller.PostStudy("tolerance", Request("tolerance"), "?explain=true").Json(200);
        Assert.True(JsonElement.DeepEquals(direct.GetProperty("explanation"), told.GetProperty("answer").GetProperty("explanation")));
    }
}
