using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Nodes;
using FlowCalc.Api.Tests.Discharge;
using FlowCalc.Api.Tests.Flow;
using FlowCalc.Api.Tests.Hosting;
using FlowCalc.Api.Tests.Requests;
using FlowCalc.Api.Tests.Studies;

namespace FlowCalc.Api.Tests.Documentation;

public sealed class KeptExampleTests(Service service) : IDisposable
{
    static readonly JsonSerializerOptions Readable = new() { WriteIndented = true, Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    readonly HttpClient caller = service.Caller();

    public void Dispose() => caller.Dispose();

    [Fact]
    public async Task Kept_answer_of_the_demo_is_what_the_service_answers() => await Compare("flow", await caller.PostFlow(Documents.Demo).Json(200));

    // The steps of time follow the last digits of each solve, so that a discharge agrees to its own error and not to nine digits.
    [Fact]
    public async Task Kept_discharge_of_the_demo_is_what_the_service_answers()
    {
        var answer = JsonNode.Parse((await caller.PostDischarge(Documents.Demo).Json(200)).GetRawText());
        Shorten(answer);

        await Compare("discharge", JsonSerializer.SerializeToElement(answer), within: 1e-4);
    }

    [Theory]
    [InlineData("compare")]
    [InlineData("tolerance")]
    [InlineData("size")]
    public async Task Kept_answer_of_a_study_is_what_the_service_answers(string call)
    {
        var request = StudyRequests.Kept(call).ToJsonString();
        var answer = JsonNode.Parse((await caller.PostStudy(call, request).Json(200)).GetRawText());
        Shorten(answer);

        await Compare(call, JsonSerializer.SerializeToElement(answer), within: 1e-4);
    }

    // The whole calculation of one run and one nozzle; other lists by their first two entries.
    [Fact]
    public async Task Kept_explained_answer_is_what_the_service_answers()
    {
        var answer = JsonNode.Parse((await caller.PostFlow(OneRun, "?explain=true").Json(200)).GetRawText())!.AsObject();
        Shorten(answer, "steps");

        await Compare("flow-explained", JsonSerializer.SerializeToElement(answer));
    }

    [Fact]
    public async Task Kept_explained_discharge_is_what_the_service_answers()
    {
        var answer = JsonNode.Parse((await caller.PostDischarge(DischargeDocuments.Small, "?explain=true").Json(200)).GetRawText());
        Shorten(answer);

        await Compare("discharge-explained", JsonSerializer.SerializeToElement(answer), within: 1e-4);
    }

    const string OneRun =
        """
        { "format": 1, "agent": "water", "supply": { "pressure": "12 bar" },
          "points": [ { "id": "valve", "kind": "supply" }, { "id": "cab", "kind": "nozzle", "kFactor": "1.2 L/min/bar^0.5" } ],
          "runs": [ { "id": "feed", "from": "valve", "to": "cab", "bore": "4 mm", "length": "2 m", "rise": "0.4 m", "bends": [{ "angle": "90°", "radius": "18 mm" }] } ] }
        """;

    [Fact]
    public async Task Kept_cut_list_of_the_demo_is_what_the_service_answers()
    {
        var answer = JsonNode.Parse((await caller.PostCutList(Documents.Demo).Json(200)).GetRawText());
        Shorten(answer);

        await Compare("cutlist", JsonSerializer.SerializeToElement(answer));
    }

    [Fact]
    public async Task Kept_mount_of_the_demo_is_what_the_service_answers()
    {
        var answer = JsonNode.Parse((await caller.PostMount(Documents.Demo).Json(200)).GetRawText());
        Shorten(answer);

        await Compare("mount", JsonSerializer.SerializeToElement(answer), within: 1e-6);
    }

    [Fact]
    public async Task Kept_circuit_of_the_demo_is_what_the_service_answers()
    {
        var answer = JsonNode.Parse((await caller.PostCircuit(Documents.Demo).Json(200)).GetRawText());
        Shorten(answer);

        await Compare("circuit", JsonSerializer.SerializeToElement(answer));
    }

    [Fact]
    public async Task Kept_upkeep_of_the_demo_is_what_the_service_answers()
    {
        var answer = JsonNode.Parse((await caller.PostUpkeep(Documents.Demo, "?today=2026-11-25&temperature=5%20%C2%B0C").Json(200)).GetRawText());
        Shorten(answer);

        await Compare("upkeep", JsonSerializer.SerializeToElement(answer));
    }

    [Fact]
    public async Task Kept_check_of_the_demo_is_what_the_service_answers()
    {
        var answer = JsonNode.Parse((await caller.PostCheck(Documents.Demo, "?today=2026-11-25&temperature=5%20%C2%B0C").Json(200)).GetRawText());
        Shorten(answer);

        await Compare("check", JsonSerializer.SerializeToElement(answer));
    }

    [Fact]
    public async Task Kept_coverage_of_the_demo_is_what_the_service_answers()
    {
        var answer = JsonNode.Parse((await caller.PostCoverage(Documents.Demo).Json(200)).GetRawText());
        Shorten(answer);

        await Compare("coverage", JsonSerializer.SerializeToElement(answer), within: 1e-4);
    }

    [Fact]
    public async Task Kept_calibration_of_the_demo_is_what_the_service_answers()
    {
        var answer = JsonNode.Parse((await caller.PostCalibration(Documents.Demo).Json(200)).GetRawText());
        Shorten(answer);

        // A fit ends within its own tolerance, and an interval hangs on its derivatives.
        await Compare("calibrate", JsonSerializer.SerializeToElement(answer), within: 1e-4);
    }

    // Long lists are shown by their first two entries.
    [Theory]
    [InlineData("agents", "/v1/agents")]
    [InlineData("agent", "/v1/agents/HFC-227ea")]
    [InlineData("tubes", "/v1/tubes")]
    [InlineData("fittings", "/v1/fittings")]
    [InlineData("applications", "/v1/applications")]
    [InlineData("examples", "/v1/examples")]
    public async Task Kept_answer_of_the_catalogue_is_what_the_service_answers(string call, string path)
    {
        var answer = JsonNode.Parse((await caller.Get(path).Json(200)).GetRawText());
        Shorten(answer);

        await Compare(call, JsonSerializer.SerializeToElement(answer));
    }

    static async Task Compare(string call, JsonElement answer, double within = 1e-9)
    {
        var name = call + ".json";
        await KeptAnswers.Keep(Path.Combine("Documentation", "Answers", name), JsonSerializer.Serialize(answer, Readable) + "\n");

        await using var kept = typeof(Program).Assembly.GetManifestResourceStream("contract-examples/" + name);
        Assert.NotNull(kept);
        using var expected = await JsonDocument.ParseAsync(kept, cancellationToken: TestContext.Current.CancellationToken);
        AssertSame(expected.RootElement, answer, "", within);
    }

    static void Shorten(JsonNode? node, string? whole = null)
    {
        if (node is JsonArray items)
        {
            while (items.Count > 2)
                items.RemoveAt(items.Count - 1);
            foreach (var item in items)
                Shorten(item, whole);
        }
        if (node is JsonObject fields)
            foreach (var (name, field) in fields)
                if (name != whole)
                    Shorten(field, whole);
    }

    // The last digits of a solve may differ between processors, so numbers are compared to so many digits and residuals not at all.
    static void AssertSame(JsonElement expected, JsonElement actual, string place, double within)
    {
        Assert.Equal(expected.ValueKind, actual.ValueKind);
        if (place.EndsWith("/massResidual", StringComparison.Ordinal) || place.EndsWith("/iterations", StringComparison.Ordinal))
            return;
        switch (expected.ValueKind)
        {
            case JsonValueKind.Object:
                Assert.Equal(expected.EnumerateObject().Select(field => field.Name), actual.EnumerateObject().Select(field => field.Name));
                foreach (var field in expected.EnumerateObject())
                    AssertSame(field.Value, actual.GetProperty(field.Name), $"{place}/{field.Name}", within);
                break;
            case JsonValueKind.Array:
                Assert.True(expected.GetArrayLength() == actual.GetArrayLength(), place);
                foreach (var (at, item) in expected.EnumerateArray().Index())
                    AssertSame(item, actual[at], $"{place}/{at}", within);
                break;
            case JsonValueKind.Number:
                var (one, other) = (expected.GetDouble(), actual.GetDouble());
                Assert.True(Math.Abs(one - other) <= within * Math.Max(1, Math.Abs(one)), $"{place}: {one} kept, {other} answered.");
                break;
            default:
                Assert.Equal(expected.ToString(), actual.ToString());
                break;
        }
    }
}
