using FlowCalc.Api.Hosting;
using FlowCalc.Api.Startup;
using Microsoft.AspNetCore.Builder;
using Microsoft.Extensions.Logging;
using Microsoft.Extensions.Options;

namespace FlowCalc.Api.Tests.Hosting;

public sealed class SettingTests
{
    [Theory]
    [InlineData("Limits:BodyBytes", "10")]
    [InlineData("Limits:BodyTime", "00:00:00.5")]
    [InlineData("Limits:HeldBytes", "50331647")]
    [InlineData("Limits:HeldBytes", "68719476737")]
    [InlineData("Limits:Points", "0")]
    [InlineData("Limits:FlowTime", "00:00:00")]
    [InlineData("Limits:DischargePoints", "1")]
    [InlineData("Limits:DischargePoints", "10001")]
    [InlineData("Limits:DischargeTime", "00:00:00")]
    [InlineData("Limits:DischargeTime", "01:00:01")]
    [InlineData("Limits:ToleranceTime", "00:00:00")]
    [InlineData("Limits:ToleranceFlowSamples", "99")]
    [InlineData("Limits:ToleranceDischargeSamples", "1000001")]
    [InlineData("Limits:ToleranceNumbers", "9999")]
    [InlineData("Limits:JobsRunning", "0")]
    [InlineData("Limits:JobsWaiting", "-1")]
    [InlineData("Limits:JobsKept", "0")]
    [InlineData("Limits:JobBytes", "1023")]
    [InlineData("Limits:JobKept", "00:00:00.5")]
    [InlineData("Limits:JobTime", "1.00:00:01")]
    [InlineData("Limits:SizePoints", "1")]
    [InlineData("Limits:SizeStock", "61")]
    [InlineData("Limits:SizeWork", "0")]
    [InlineData("Limits:SizeTime", "01:00:01")]
    [InlineData("Limits:ExplainedPoints", "1")]
    [InlineData("Limits:ExplainedPoints", "10001")]
    [InlineData("Limits:CutListPoints", "1")]
    [InlineData("Limits:CutListParts", "1000001")]
    [InlineData("Limits:CutListTime", "00:00:00")]
    [InlineData("Limits:DrawingPoints", "5001")]
    [InlineData("Limits:DrawingParts", "1")]
    [InlineData("Limits:DrawingTime", "00:00:00")]
    [InlineData("Limits:ReportPoints", "1001")]
    [InlineData("Limits:ReportParts", "1")]
    [InlineData("Limits:ReportTime", "01:00:01")]
    [InlineData("Limits:MountPoints", "1")]
    [InlineData("Limits:MountTime", "00:00:00")]
    [InlineData("Limits:CircuitPoints", "1")]
    [InlineData("Limits:CircuitTime", "00:00:00")]
    [InlineData("Limits:UpkeepPoints", "100001")]
    [InlineData("Limits:UpkeepTime", "01:00:01")]
    [InlineData("Limits:CheckPoints", "10001")]
    [InlineData("Limits:CheckParts", "1")]
    [InlineData("Limits:CheckTime", "00:00:00")]
    [InlineData("Limits:CoveragePoints", "10001")]
    [InlineData("Limits:CoveragePairs", "1")]
    [InlineData("Limits:CoverageTime", "00:00:00")]
    [InlineData("Limits:CalibrationPoints", "5001")]
    [InlineData("Limits:CalibrationTime", "00:00:00")]
    [InlineData("Limits:Concurrent", "-1")]
    [InlineData("Limits:Waiting", "-1")]
    [InlineData("Limits:RequestsPerMinute", "-5")]
    public async Task Limit_outside_its_range_stops_the_start(string key, string value)
    {
        await using var service = Configured(key, value);

        var thrown = await Assert.ThrowsAsync<OptionsValidationException>(() => service.StartAsync(TestContext.Current.CancellationToken));

        Assert.StartsWith($"{key} is ", thrown.Message, StringComparison.Ordinal);
        Assert.Contains("; right is ", thrown.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("Limits:BodyByte", "100000")]
    [InlineData("Limits:FlowTime", "soon")]
    [InlineData("Startup:Demos", "true")]
    public async Task Setting_that_is_unknown_or_unreadable_stops_the_start(string key, string value)
    {
        await using var service = Configured(key, value);

        await Assert.ThrowsAsync<InvalidOperationException>(() => service.StartAsync(TestContext.Current.CancellationToken));
    }

    static WebApplication Configured(string key, string value)
    {
        var builder = WebApplication.CreateBuilder([$"--{key}={value}", "--urls=http://127.0.0.1:0"]);
        builder.Logging.ClearProviders();
        builder.AddLimits();
        builder.AddDemo();
        return builder.Build();
    }
}
