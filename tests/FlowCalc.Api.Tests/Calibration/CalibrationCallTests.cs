using System.Text.Json;
using System.Text.Json.Nodes;
using FlowCalc.Api.Tests.Flow;
using FlowCalc.Api.Tests.Hosting;
using FlowCalc.Api.Tests.Requests;

namespace FlowCalc.Api.Tests.Calibration;

public sealed class CalibrationCallTests(Service service) : IDisposable
{
    readonly HttpClient caller = service.Caller();

    public void Dispose() => caller.Dispose();

    [Fact]
    public async Task Demo_has_one_run_that_is_kinked_a_little()
    {
        var answer = await caller.PostCalibration(Documents.Demo).Json(200);

        Assert.Equal("run", answer.GetProperty("likeliest").GetProperty("cause").GetString());
        Assert.Equal("R8", answer.GetProperty("likeliest").GetProperty("run").GetString());
        var kink = answer.GetProperty("findings").EnumerateArray().Single(finding => finding.GetProperty("code").GetString() == "likely-kinked-run");
        Assert.Equal("warn", kink.GetProperty("severity").GetString());
        Assert.Equal("runs/R8/lossCoefficient", Assert.Single(answer.GetProperty("asBuilt").GetProperty("changes").EnumerateArray()).GetProperty("path").GetString());
        Assert.Equal(1 + 4 + 13, answer.GetProperty("causes").GetArrayLength());
        Assert.All(answer.GetProperty("readings").EnumerateArray(), reading => Assert.InRange(reading.GetProperty("residual").GetDouble(), -3, 3));
        Assert.Contains(answer.GetProperty("cautions").EnumerateArray(), caution => caution.GetString()!.StartsWith("No approval", StringComparison.Ordinal));
    }

    [Fact]
    public async Task Nozzles_as_drawn_are_those_of_the_flow_and_as_built_those_of_the_changed_layout()
    {
        var answer = await caller.PostCalibration(Documents.Demo, "?units=si").Json(200);
        var drawn = await caller.PostFlow(Documents.Demo, "?units=si").Json(200);
        var change = answer.GetProperty("asBuilt").GetProperty("changes")[0];
        var built = await caller.PostFlow(Documents.DemoWith(demo => demo["runs"]![7]!["lossCoefficient"] = change.GetProperty("to").GetDouble()), "?units=si").Json(200);

        foreach (var (at, nozzle) in answer.GetProperty("asBuilt").GetProperty("nozzles").EnumerateArray().Index())
        {
            Assert.Equal(drawn.GetProperty("nozzles")[at].GetProperty("share").GetDouble(), nozzle.GetProperty("drawnShare").GetDouble(), tolerance: 1e-9);
            Assert.Equal(built.GetProperty("nozzles")[at].GetProperty("share").GetDouble(), nozzle.GetProperty("builtShare").GetDouble(), tolerance: 1e-9);
        }
        Assert.Equal(drawn.GetProperty("verdict").GetString(), answer.GetProperty("asBuilt").GetProperty("drawn").GetProperty("verdict").GetString());
    }

    [Fact]
    public async Task Document_without_a_test_is_a_422_that_says_so()
    {
        var fault = await caller.PostCalibration(Documents.Small).Fault(422);

        Assert.Contains("missing", fault.GetProperty("errors").GetProperty("/measured")[0].GetString()!, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Every_wrong_reading_is_told_at_once()
    {
        var errors = (await caller.PostCalibration(Documents.DemoWith(demo =>
        {
            demo["measured"]!["collected"]!["drivr"] = "1 L";
            demo["measured"]!["collected"]!["turbo"] = "1 bar";
            demo["measured"]!.AsObject().Remove("time");
            demo["measured"]!["suspects"] = new JsonArray("kink");
        })).Fault(422)).GetProperty("errors");

        Assert.Equal(["/measured/collected/drivr", "/measured/collected/turbo", "/measured/suspects/0", "/measured/time"], errors.EnumerateObject().Select(error => error.Name).Order(StringComparer.Ordinal));
    }

    [Theory]
    [InlineData("?units=imperial", "?units")]
    [InlineData("?explain=true", "?explain")]
    public async Task Query_that_does_not_fit_is_told(string query, string place) =>
        Assert.True((await caller.PostCalibration(Documents.Demo, query).Fault(422)).GetProperty("errors").TryGetProperty(place, out _));

    [Fact]
    public async Task Same_document_gives_the_same_bytes() =>
        Assert.Equal(await caller.PostCalibration(Documents.Demo).Text(), await caller.PostCalibration(Documents.Demo).Text());

    [Theory]
    [InlineData("/v1/flow", "")]
    [InlineData("/v1/cut-list", "")]
    [InlineData("/v1/mount", "")]
    [InlineData("/v1/circuit", "")]
    [InlineData("/v1/upkeep", "?today=2026-11-25")]
    public async Task No_other_answer_hangs_on_the_test(string path, string query)
    {
        async Task<JsonElement> Ask(string document) => await caller.PostLayout(path, System.Text.Encoding.UTF8.GetBytes(document), query).Json(200);

        Assert.Equal((await Ask(Documents.DemoWith(demo => demo.AsObject().Remove("measured")))).GetRawText(), (await Ask(Documents.Demo)).GetRawText());
    }

    [Fact]
    public async Task More_points_than_are_tried_are_a_422()
    {
        await using var small = Service.With(("Limits:CalibrationPoints", "5"));
        using var limited = small.Caller();

        Assert.True((await limited.PostCalibration(Documents.Demo).Fault(422)).GetProperty("errors").TryGetProperty("/points", out _));
    }

    [Fact]
    public async Task Answer_that_takes_too_long_is_a_422_that_says_so()
    {
        await using var hurried = Service.With(("Limits:CalibrationTime", "00:00:00.0001"));
        using var limited = hurried.Caller();

        var fault = await limited.PostCalibration(Documents.Demo).Fault(422);

        Assert.Contains("0.0001 s", fault.GetProperty("errors").GetProperty("")[0].GetString()!, StringComparison.Ordinal);
    }
}
