using System.Text.Json;
using FlowCalc.Api.Tests.Flow;
using FlowCalc.Api.Tests.Hosting;
using FlowCalc.Api.Tests.Requests;

namespace FlowCalc.Api.Tests.CutLists;

public sealed class CutListShapeTests(Service service) : IDisposable
{
    readonly HttpClient caller = service.Caller();

    public void Dispose() => caller.Dispose();

    [Fact]
    public async Task Demo_has_a_piece_a_run_and_two_where_the_firewall_is()
    {
        var answer = await caller.PostCutList(Documents.Demo).Json(200);

        var runs = answer.GetProperty("runs").EnumerateArray().ToDictionary(run => run.GetProperty("id").GetString()!);
        Assert.Equal(13, runs.Count);
        Assert.All(runs, run => Assert.Equal(run.Key == "R9" ? 2 : 1, run.Value.GetProperty("pieces").GetArrayLength()));
        Assert.Equal("firewall", runs["R9"].GetProperty("pieces")[0].GetProperty("end").GetProperty("fitting").GetString());
        Assert.Equal(2, runs["R1"].GetProperty("pieces")[0].GetProperty("bends").GetArrayLength());
        Assert.Equal(0, runs["R1"].GetProperty("unplacedBends").GetInt32());
    }

    [Fact]
    public async Task Every_piece_is_in_a_bar_or_too_long()
    {
        var answer = await caller.PostCutList(Documents.Demo).Json(200);

        static string Name(JsonElement piece) => $"{piece.GetProperty("run").GetString()}/{piece.GetProperty("number").GetInt32()}";
        var packed = answer.GetProperty("tubes").EnumerateArray().Select(tube => tube.GetProperty("stock"))
            .SelectMany(stock => stock.GetProperty("bars").EnumerateArray().SelectMany(bar => bar.GetProperty("pieces").EnumerateArray()).Concat(stock.GetProperty("tooLong").EnumerateArray())).Select(Name);
        var cut = answer.GetProperty("runs").EnumerateArray().SelectMany(run => run.GetProperty("pieces").EnumerateArray().Select(piece => $"{run.GetProperty("id").GetString()}/{piece.GetProperty("number").GetInt32()}"));
        Assert.Equal(cut.Order(StringComparer.Ordinal), packed.Order(StringComparer.Ordinal));
    }

    [Fact]
    public async Task Verdict_is_the_worst_finding_and_cautions_and_limits_are_there()
    {
        var answer = await caller.PostCutList(Documents.Demo).Json(200);

        var severities = answer.GetProperty("findings").EnumerateArray().Select(finding => finding.GetProperty("severity").GetString()).ToHashSet();
        Assert.Equal(((string[])["fail", "warn", "note"]).First(severities.Contains), answer.GetProperty("verdict").GetString());
        Assert.True(answer.GetProperty("cautions").GetArrayLength() > 3);
        Assert.Contains(answer.GetProperty("limits").EnumerateArray(), limit => limit.GetProperty("code").GetString() == "clip-too-far");
        Assert.DoesNotContain(answer.GetProperty("limits").EnumerateArray(), limit => limit.GetProperty("code").GetString() == "starved-nozzle");
    }

    [Theory]
    [InlineData("", "m", 1)]
    [InlineData("?units=us", "ft", 1 / 0.3048)]
    [InlineData("?units=si", "m", 1)]
    public async Task Lengths_are_in_the_units_asked_for(string query, string unit, double perMetre)
    {
        var answer = await caller.PostCutList(Documents.Small, query).Json(200);

        var length = answer.GetProperty("runs")[1].GetProperty("length");
        Assert.Equal(unit, length.GetProperty("unit").GetString());
        Assert.Equal(0.8 * perMetre, length.Value(), tolerance: 1e-9);
    }

    [Fact]
    public async Task Run_given_by_its_length_has_no_marks_and_says_so()
    {
        var answer = await caller.PostCutList(Documents.Small).Json(200);

        var run = answer.GetProperty("runs")[1];
        Assert.Equal(1, run.GetProperty("unplacedBends").GetInt32());
        Assert.Equal(0, run.GetProperty("pieces")[0].GetProperty("bends").GetArrayLength());
        Assert.Contains(answer.GetProperty("findings").EnumerateArray(), finding => finding.GetProperty("code").GetString() == "bend-places-unknown");
        Assert.Equal(JsonValueKind.Null, answer.GetProperty("tubes")[0].GetProperty("stock").ValueKind);
    }

    [Fact]
    public async Task Same_document_gets_the_same_answer_to_the_last_byte()
    {
        async Task<string> Asked()
        {
            using var response = await caller.PostCutList(Documents.Demo);
            return await response.Content.ReadAsStringAsync(TestContext.Current.CancellationToken);
        }

        Assert.Equal(await Asked(), await Asked());
    }
}
