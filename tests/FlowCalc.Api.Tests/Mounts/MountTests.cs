using System.Text.Json;
using System.Text.Json.Nodes;
using FlowCalc.Api.Tests.Flow;
using FlowCalc.Api.Tests.Hosting;
using FlowCalc.Api.Tests.Requests;

namespace FlowCalc.Api.Tests.Mounts;

public sealed class MountTests(Service service) : IDisposable
{
    readonly HttpClient caller = service.Caller();

    public void Dispose() => caller.Dispose();

    [Fact]
    public async Task Demo_is_answered_with_cases_checks_and_what_governs()
    {
        var answer = await caller.PostMount(Documents.Demo).Json(200);

        Assert.NotEqual("fail", answer.GetProperty("verdict").GetString());
        var cases = answer.GetProperty("loadCases").EnumerateArray().ToArray();
        Assert.Equal(7, cases.Length);
        Assert.Equal(JsonValueKind.Null, cases[^1].GetProperty("direction").ValueKind);
        Assert.All(cases, one => Assert.Equal(4, one.GetProperty("bolts").GetArrayLength()));
        Assert.Equal(6.2, answer.GetProperty("masses").GetProperty("total").Value(), tolerance: 0.03);
        var governing = answer.GetProperty("governing");
        Assert.Equal(answer.GetProperty("checks").EnumerateArray().Where(check => check.GetProperty("check").GetString() != "joint-opening").Max(check => check.GetProperty("use").GetDouble()), governing.GetProperty("use").GetDouble());
        Assert.Equal(1 / governing.GetProperty("use").GetDouble() - 1, governing.GetProperty("margin").GetDouble(), tolerance: 1e-12);
        Assert.False(answer.GetProperty("slip").GetProperty("holdsWithoutStops").GetBoolean());
        Assert.Equal(2, answer.GetProperty("straps").GetArrayLength());
        Assert.True(answer.GetProperty("cautions").GetArrayLength() > 3);
        Assert.Contains(answer.GetProperty("limits").EnumerateArray(), limit => limit.GetProperty("code").GetString() == "bolt-overloaded");
        Assert.Contains(answer.GetProperty("notAnswered").EnumerateArray(), words => words.GetString()!.Contains("fatigue", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("", "N", 1)]
    [InlineData("?units=us", "lbf", 1 / 4.4482216152605)]
    [InlineData("?units=si", "N", 1)]
    public async Task Forces_are_in_the_units_asked_for(string query, string unit, double perNewton)
    {
        var answer = await caller.PostMount(Documents.Demo, query).Json(200);

        var force = answer.GetProperty("loadCases")[6].GetProperty("force");
        var masses = answer.GetProperty("masses").GetProperty("total").Value() * (unit == "lbf" ? 0.45359237 : 1);
        Assert.Equal(unit, force.GetProperty("unit").GetString());
        Assert.Equal(masses * 25 * 9.80665 * perNewton, force.Value(), tolerance: 1e-6);
    }

    [Fact]
    public async Task Document_without_a_mount_is_a_422_with_its_place()
    {
        var fault = await caller.PostMount(Documents.DemoWith(demo => demo.AsObject().Remove("mount"))).Fault(422);

        Assert.Contains("how the bottle is held", fault.GetProperty("errors").GetProperty("/mount")[0].GetString()!, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Every_contradiction_is_told_at_once()
    {
        var document = Documents.DemoWith(demo =>
        {
            demo["mount"]!["bolts"]!["at"] = JsonNode.Parse("""[["0 mm", "0 mm"], ["0 mm", "0 mm"]]""");
            demo["mount"]!["bolts"]!.AsObject().Remove("rectangle");
            demo["mount"]!["centreOfMass"] = JsonNode.Parse("""["0 mm", "0 mm", "80 mm"]""");
            demo["mount"]!["straps"]![1]!["at"] = "-85 mm";
            demo["mount"]!["endStops"]![1]!["end"] = "base";
            demo["tubes"]!["drop"]!["wall"] = "-1 mm";
        });

        var errors = (await caller.PostMount(document).Fault(422)).GetProperty("errors");

        Assert.Equal(
            ["/mount", "/mount/bolts/at/1", "/mount/endStops/1", "/mount/straps/1", "/tubes/drop/wall"], errors.EnumerateObject().Select(error => error.Name).Order(StringComparer.Ordinal));
    }

    [Fact]
    public async Task Failing_strap_gets_a_cure_whose_changes_are_a_document()
    {
        var document = Documents.DemoWith(demo => demo["mount"]!.AsObject().Remove("endStops"));

        var answer = await caller.PostMount(document).Json(200);

        var finding = answer.GetProperty("findings").EnumerateArray().First(one => one.GetProperty("code").GetString() == "no-end-stop");
        Assert.Equal("fail", finding.GetProperty("severity").GetString());
        var change = finding.GetProperty("cure").GetProperty("changes")[0];
        Assert.Equal("mount/endStops", change.GetProperty("path").GetString());
        var cured = Documents.DemoWith(demo => demo["mount"]!["endStops"] = JsonNode.Parse(change.GetProperty("to").GetRawText()));
        Assert.DoesNotContain((await caller.PostMount(cured).Json(200)).GetProperty("findings").EnumerateArray(), one => one.GetProperty("code").GetString() == "no-end-stop");
    }

    [Fact]
    public async Task Same_document_gets_the_same_answer_to_the_last_byte()
    {
        async Task<string> Asked()
        {
            using var response = await caller.PostMount(Documents.Demo);
            return await response.Content.ReadAsStringAsync(TestContext.Current.CancellationToken);
        }

        Assert.Equal(await Asked(), await Asked());
    }

    [Theory]
    [InlineData("?explain=true", "?explain")]
    [InlineData("?units=imperial", "?units")]
    public async Task Query_that_does_not_fit_is_told(string query, string place) =>
        Assert.True((await caller.PostMount(Documents.Demo, query).Fault(422)).GetProperty("errors").TryGetProperty(place, out _));

    // 64 bolts in two groups nearly in line, long spacers and every part, all failing: the most work that a document can ask for.
    [Fact]
    public async Task Largest_mount_is_answered()
    {
        // Beside all other tests on a small machine a request may wait for its turn.
        await using var patient = Service.With(("Limits:MountTime", "00:02:00"));
        using var limited = patient.Caller();
        var document = Documents.DemoWith(demo =>
        {
            JsonArray Bolts() => new([.. Enumerable.Range(0, 64).Select(bolt => (JsonNode)new JsonArray($"{30 * (bolt % 32)} mm", $"{20 * (bolt / 32)} mm"))]);
            demo["mount"]!["bolts"] = new JsonObject { ["size"] = "M4", ["class"] = "4.6", ["at"] = Bolts() };
            demo["mount"]!["adapter"] = new JsonObject { ["thickness"] = "1 mm", ["material"] = "aluminium-6060-T66", ["bolts"] = new JsonObject { ["size"] = "M4", ["at"] = Bolts() } };
            demo["mount"]!["spacers"] = "0.9 m";
            demo["mount"]!["loads"] = new JsonArray([.. Enumerable.Range(0, 50).Select(load => (JsonNode)new JsonObject { ["name"] = $"any {load}", ["acceleration"] = 900 + load })]);
        });

        var answer = await limited.PostMount(document).Json(200);

        Assert.Equal("fail", answer.GetProperty("verdict").GetString());
        Assert.Equal(350, answer.GetProperty("loadCases").GetArrayLength());
    }

    [Fact]
    public async Task Answer_that_takes_too_long_is_a_422_that_says_so()
    {
        await using var hurried = Service.With(("Limits:MountTime", "00:00:00.0001"));
        using var limited = hurried.Caller();

        var fault = await limited.PostMount(Documents.Demo).Fault(422);

        Assert.Contains("0.0001 s", fault.GetProperty("errors").GetProperty("")[0].GetString()!, StringComparison.Ordinal);
    }
}
