using Microsoft.Extensions.Options;

namespace FlowCalc.Api.Tests.Hosting;

public sealed class SettingTests
{
    [Theory]
    [InlineData("Limits:BodyBytes", "10")]
    [InlineData("Limits:Points", "0")]
    [InlineData("Limits:FlowTime", "00:00:00")]
    [InlineData("Limits:Concurrent", "-1")]
    [InlineData("Limits:Waiting", "-1")]
    [InlineData("Limits:RequestsPerMinute", "-5")]
    public async Task Limit_outside_its_range_stops_the_start(string key, string value)
    {
        await using var service = Service.With((key, value));

        var thrown = Assert.Throws<OptionsValidationException>(service.CreateClient);

        Assert.Contains("Limits", thrown.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("Limits:BodyByte", "100000")]
    [InlineData("Limits:FlowTime", "soon")]
    [InlineData("Startup:Demos", "true")]
    public async Task Setting_that_is_unknown_or_unreadable_stops_the_start(string key, string value)
    {
        await using var service = Service.With((key, value));

        Assert.Throws<InvalidOperationException>(service.CreateClient);
    }
}
