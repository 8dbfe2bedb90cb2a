using System.Text.Json.Nodes;
using FlowCalc.Api.Tests.Flow;
using FlowCalc.Api.Tests.Hosting;
using FlowCalc.Api.Tests.Requests;

namespace FlowCalc.Api.Tests.CutLists;

public sealed class CutListFaultTests(Service service) : IDisposable
{
    readonly HttpClient caller = service.Caller();

    public void Dispose() => caller.Dispose();

    [Theory]
    [InlineData("?format=xml", "?format", "json and csv")]
    [InlineData("?format=csv&format=csv", "?format", "more than once")]
    [InlineData("?format=csv&part=bends", "?part", "pieces and order")]
    [InlineData("?part=order", "?part", "format=csv")]
    [InlineData("?units=imperial", "?units", "metric, us and si")]
    [InlineData("?sheet=1", "?sheet", "it takes units, explain, format, part")]
    [InlineData("?format=csv&explain=true", "?explain", "format=json")]
    [InlineData("?format=csv&explain=false", "?explain", "format=json")]
    public async Task Query_that_does_not_fit_is_told(string query, string place, string words)
    {
        var fault = await caller.PostCutList(Documents.Small, query).Fault(422);

        Assert.Contains(words, fault.GetProperty("errors").GetProperty(place)[0].GetString()!, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Every_wrong_figure_of_the_bench_is_told_at_once()
    {
        var document = Documents.SmallWith(small =>
        {
            small["cutting"] = JsonNode.Parse("""{ "kerf": "-1 mm", "stock": [{ "lengths": ["0 m"] }], "saw": 1 }""");
            small["points"]![0]!["insertion"] = "5";
            small["runs"]![0]!["clips"] = new JsonArray("3 m");
        });

        foreach (var query in (string[])["", "?format=csv"])
        {
            var errors = (await caller.PostCutList(document, query).Fault(422)).GetProperty("errors");

            Assert.Equal(
                ["/cutting/kerf", "/cutting/saw", "/cutting/stock/0/lengths/0", "/points/0/insertion", "/runs/0/clips"],
                errors.EnumerateObject().Select(error => error.Name).Order(StringComparer.Ordinal));
        }
    }

    [Fact]
    public async Task Stock_shorter_than_a_piece_is_a_finding_and_no_fault()
    {
        var answer = await caller.PostCutList(Documents.SmallWith(small => small["cutting"] = JsonNode.Parse("""{ "stock": [{ "lengths": ["1 m"] }] }"""))).Json(200);

        Assert.Equal("fail", answer.GetProperty("verdict").GetString());
        Assert.Equal(["feed", "long"], answer.GetProperty("findings").EnumerateArray().Where(finding => finding.GetProperty("code").GetString() == "stock-too-short")
            .SelectMany(finding => finding.GetProperty("where").EnumerateArray().Select(id => id.GetString())).Order());
    }

    [Theory]
    [InlineData("Limits:CutListPoints", "3", "/points")]
    [InlineData("Limits:CutListParts", "3", "")]
    public async Task More_than_the_limit_is_a_422_that_says_the_limit(string setting, string value, string place)
    {
        await using var small = Service.With((setting, value));
        using var limited = small.Caller();

        var fault = await limited.PostCutList(Documents.Small).Fault(422);

        Assert.Contains(value, fault.GetProperty("errors").GetProperty(place)[0].GetString()!, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Answer_that_takes_too_long_is_a_422_that_says_so()
    {
        await using var hurried = Service.With(("Limits:CutListTime", "00:00:00.001"));
        using var limited = hurried.Caller();

        var fault = await limited.PostCutList(Documents.Chain(10_000)).Fault(422);

        Assert.Contains("0.001 s", fault.GetProperty("errors").GetProperty("")[0].GetString()!, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Ten_thousand_points_are_within_the_limits()
    {
        await using var patient = Service.With(("Limits:CutListTime", "00:01:00"));
        using var limited = patient.Caller();

        var document = JsonNode.Parse(Documents.Chain(10_000))!;
        document["cutting"] = JsonNode.Parse("""{ "stock": [{ "lengths": ["1 m", "3 m"] }] }""");
        var answer = await limited.PostCutList(document.ToJsonString()).Json(200);

        Assert.Equal(9_999, answer.GetProperty("runs").GetArrayLength());
    }
}
