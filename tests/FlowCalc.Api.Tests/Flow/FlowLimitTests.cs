using System.Text;
using FlowCalc.Api.Hosting;
using FlowCalc.Api.Tests.Hosting;
using FlowCalc.Api.Tests.Requests;
using Microsoft.Extensions.DependencyInjection;

namespace FlowCalc.Api.Tests.Flow;

public sealed class FlowLimitTests
{
    [Fact]
    public async Task Body_over_the_limit_is_a_413_that_says_the_limit()
    {
        await using var service = Service.With(("Limits:BodyBytes", "4096"));
        using var caller = service.Caller();

        var fault = await caller.PostFlow(Documents.Small + new string(' ', 4096)).Fault(413);

        Assert.Contains("4096", fault.GetProperty("detail").GetString()!, StringComparison.Ordinal);
        await caller.PostFlow(Documents.Small).Json(200);
    }

    [Fact]
    public async Task Body_of_unstated_length_over_the_limit_is_a_413_too()
    {
        await using var service = Service.With(("Limits:BodyBytes", "20000"));
        using var caller = service.Caller();
        using var body = new UnstatedLength(Encoding.UTF8.GetBytes(Documents.Small + new string(' ', 40_000)));

        await Post(caller, body).Fault(413);
    }

    [Fact]
    public async Task More_points_than_the_limit_are_a_422_that_says_the_limit()
    {
        await using var service = Service.With(("Limits:Points", "3"));
        using var caller = service.Caller();

        var fault = await caller.PostFlow(Documents.Small).Fault(422);

        Assert.Contains("3", fault.GetProperty("errors").GetProperty("/points")[0].GetString()!, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Answer_that_takes_too_long_is_a_422_that_says_so()
    {
        await using var service = Service.With(("Limits:FlowTime", "00:00:00.001"));
        using var caller = service.Caller();

        var fault = await caller.PostFlow(Documents.Chain(100_000)).Fault(422);

        Assert.Contains("0.001 s", fault.GetProperty("errors").GetProperty("")[0].GetString()!, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_hundred_thousand_points_are_within_the_limits_of_body_and_points()
    {
        // How long a cold process takes hangs on the machine, and is no matter of this test.
        await using var service = Service.With(("Limits:FlowTime", "00:01:00"));
        using var caller = service.Caller();

        var answer = await caller.PostFlow(Documents.Chain(100_000)).Json(200);

        Assert.Equal(100_000, answer.GetProperty("points").GetArrayLength());
        Assert.Equal(1, answer.GetProperty("nozzles").EnumerateArray().Sum(nozzle => nozzle.GetProperty("share").GetDouble()), tolerance: 1e-9);
    }

    [Theory]
    [InlineData("POST", "/v1/flow")]
    [InlineData("GET", "/v1/agents/HFC-227ea")]
    public async Task Request_that_finds_neither_a_place_nor_a_wait_is_a_429_with_Retry_After(string method, string path)
    {
        await using var service = Service.With(("Limits:Concurrent", "1"), ("Limits:Waiting", "1"));
        using var caller = service.Caller();
        var places = service.Services.GetRequiredService<WorkPlaces>();
        var taken = await places.TakeAsync(TestContext.Current.CancellationToken);
        var waiting = Ask();
        while (places.Counts().Waiting == 0) await Task.Delay(5, TestContext.Current.CancellationToken);

        using var refused = await Ask();

        var fault = await Task.FromResult(refused).Fault(429);
        Assert.Equal(TimeSpan.FromSeconds(1), refused.Headers.RetryAfter?.Delta);
        Assert.Contains("busy", fault.GetProperty("detail").GetString()!, StringComparison.Ordinal);
        Assert.Equal((1, 1), places.Counts());
        taken.Dispose();
        await waiting.Json(200);
        Assert.Equal((0, 0), places.Counts());

        Task<HttpResponseMessage> Ask() => method == "GET" ? caller.Get(path) : caller.PostLayout(path, Encoding.UTF8.GetBytes(Documents.Small));
    }

    [Fact]
    public async Task Requests_a_minute_are_counted_only_where_the_settings_say_so_for_this_machine()
    {
        await using var counted = Service.With(("Limits:RequestsPerMinute", "2"), ("Limits:CountLoopback", "true"));
        await using var free = Service.With(("Limits:RequestsPerMinute", "2"));
        using var limited = counted.Caller();
        using var unlimited = free.Caller();

        for (var request = 0; request < 2; request++)
            await limited.Get("/v1/examples").Json(200);
        await limited.Get("/v1/examples").Fault(429);
        await limited.Get("/health/live").Json(200);
        for (var request = 0; request < 5; request++)
            await unlimited.Get("/v1/examples").Json(200);
    }

    static Task<HttpResponseMessage> Post(HttpClient caller, Stream body)
    {
        var content = new StreamContent(body);
        content.Headers.ContentType = new("application/json");
        return caller.PostAsync(new Uri("/v1/flow", UriKind.Relative), content, TestContext.Current.CancellationToken);
    }
}
