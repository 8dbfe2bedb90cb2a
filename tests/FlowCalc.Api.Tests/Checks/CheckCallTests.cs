using System.Text.Json;
using System.Text.Json.Nodes;
using FlowCalc.Api.Tests.Flow;
using FlowCalc.Api.Tests.Hosting;
using FlowCalc.Api.Tests.Requests;

namespace FlowCalc.Api.Tests.Checks;

public sealed class CheckCallTests(Service service) : IDisposable
{
    const string Day = "?today=2026-11-25";

    readonly HttpClient caller = service.Caller();

    public void Dispose() => caller.Dispose();

    [Fact]
    public async Task Every_part_of_the_demo_is_what_its_own_call_answers()
    {
        var answer = await caller.PostCheck(Documents.Demo, Day + "&temperature=5%20%C2%B0C").Json(200);

        await Same("flow", "/v1/flow", "");
        await Same("discharge", "/v1/discharge", "");
        await Same("cutList", "/v1/cut-list", "");
        await Same("mount", "/v1/mount", "");
        await Same("circuit", "/v1/circuit", "");
        await Same("coverage", "/v1/coverage", "");
        await Same("calibration", "/v1/calibrate", "");
        await Same("upkeep", "/v1/upkeep", Day + "&temperature=5%20%C2%B0C");
        Assert.All(answer.GetProperty("parts").EnumerateArray(), part => Assert.Equal(JsonValueKind.Null, part.GetProperty("why").ValueKind));

        async Task Same(string part, string call, string query)
        {
            var own = await caller.PostLayout(call, System.Text.Encoding.UTF8.GetBytes(Documents.Demo), query).Json(200);
            Assert.True(JsonElement.DeepEquals(own, answer.GetProperty(part)), part);
        }
    }

    [Fact]
    public async Task Verdict_is_the_worst_of_the_parts_and_every_finding_stands_once_the_worst_first()
    {
        var answer = await caller.PostCheck(Documents.Demo, Day).Json(200);

        string[] order = ["pass", "note", "warn", "fail"];
        var verdicts = answer.GetProperty("parts").EnumerateArray().Select(part => Array.IndexOf(order, part.GetProperty("verdict").GetString())).ToArray();
        Assert.Equal(order[verdicts.Max()], answer.GetProperty("verdict").GetString());
        var findings = answer.GetProperty("findings").EnumerateArray().ToArray();
        var severities = findings.Select(finding => Array.IndexOf(order, finding.GetProperty("severity").GetString())).ToArray();
        Assert.Equal(severities.OrderDescending(), severities);
        var told = findings.Select(Key).ToArray();
        Assert.Equal(told.Length, told.Distinct().Count());
        string[] parts = ["flow", "discharge", "cutList", "mount", "circuit", "coverage", "upkeep", "calibration"];
        var all = parts.SelectMany(part => answer.GetProperty(part).GetProperty("findings").EnumerateArray()).Select(Key).ToHashSet();
        Assert.Equal(all.Order(), told.Order());

        static (string?, string?) Key(JsonElement finding) => (finding.GetProperty("code").GetString(), finding.GetProperty("message").GetString());
    }

    [Fact]
    public async Task What_a_document_has_no_data_for_is_listed_with_what_it_would_take_and_is_no_fault()
    {
        var held = Documents.SmallWith(small => small["supply"] = new JsonObject { ["pressure"] = "12 bar" });

        var answer = await caller.PostCheck(held).Json(200);

        foreach (var (part, words) in new[] { ("discharge", "not a bottle"), ("mount", "no mount"), ("circuit", "no circuit"), ("upkeep", "no service"), ("calibration", "no measured") })
        {
            var said = Part(answer, part);
            Assert.Equal(JsonValueKind.Null, said.GetProperty("verdict").ValueKind);
            Assert.Contains(words, said.GetProperty("why").GetString(), StringComparison.Ordinal);
            Assert.Equal(JsonValueKind.Null, answer.GetProperty(part).ValueKind);
        }
        Assert.Equal(JsonValueKind.Object, answer.GetProperty("flow").ValueKind);
    }

    [Fact]
    public async Task Without_a_day_the_dates_are_not_judged_and_the_rest_is()
    {
        var answer = await caller.PostCheck(Documents.Demo).Json(200);

        Assert.Contains("No day", Part(answer, "upkeep").GetProperty("why").GetString(), StringComparison.Ordinal);
        Assert.Equal(JsonValueKind.Null, answer.GetProperty("upkeep").ValueKind);
        Assert.Equal(JsonValueKind.Object, answer.GetProperty("circuit").ValueKind);
    }

    [Fact]
    public async Task Dates_after_the_day_and_wrong_words_of_the_query_are_faults()
    {
        Assert.Contains("/service/lastService", (await caller.PostCheck(Documents.Demo, "?today=2025-11-25").Fault(422)).GetProperty("errors").EnumerateObject().Select(error => error.Name));
        Assert.Equal(["?temperature", "?today"], (await caller.PostCheck(Documents.Demo, "?today=yesterday&temperature=5").Fault(422)).GetProperty("errors").EnumerateObject().Select(error => error.Name).Order());
        Assert.Contains("does not take it", (await caller.PostCheck(Documents.Demo, "?clock=utc").Fault(422)).GetProperty("errors").GetProperty("?clock")[0].GetString(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("Limits:CheckPoints", "5", "points")]
    [InlineData("Limits:CheckParts", "10", "this call takes 10")]
    [InlineData("Limits:CheckTime", "00:00:00.0001", "0.0001 s")]
    public async Task Over_a_limit_the_call_says_which(string key, string value, string words)
    {
        await using var small = Service.With((key, value));
        using var other = small.Caller();

        Assert.Contains(words, (await other.PostCheck(Documents.Demo, Day).Fault(422)).GetRawText(), StringComparison.Ordinal);
    }

    static JsonElement Part(JsonElement answer, string name) => answer.GetProperty("parts").EnumerateArray().Single(part => part.GetProperty("part").GetString() == name);
}
