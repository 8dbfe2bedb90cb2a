using System.Diagnostics;
using System.Globalization;
using FlowCalc.Api.Hosting;
using FlowCalc.Api.Tests.Discharge;
using FlowCalc.Api.Tests.Flow;
using FlowCalc.Api.Tests.Requests;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Hosting;

namespace FlowCalc.Api.Tests.Hosting;

/// <summary>Callers who flood, dawdle or hang up, on real connections.</summary>
public sealed class RudeCallerTests
{
    [Fact]
    public async Task A_sender_who_dawdles_is_cut_off_when_the_time_of_a_body_is_over()
    {
        await using var service = Counting.Listening(("Limits:BodyTime", "00:00:01"));
        using var slow = await RawCaller.ToAsync(service.Address);
        await slow.SendAsync("POST /v1/flow HTTP/1.1\r\nHost: x\r\nContent-Type: application/json\r\nContent-Length: 1000\r\n\r\n{");

        var said = await slow.RestAsync();

        Assert.StartsWith("HTTP/1.1 408", said, StringComparison.Ordinal);
        Assert.Contains("1 s", said, StringComparison.Ordinal);
        Assert.Equal(0, service.Services.GetRequiredService<HeldBytes>().Count);
    }

    [Theory]
    [InlineData(20, 1_000, 200)]
    [InlineData(200, 10, 431)]
    [InlineData(20, 4_000, 431)]
    public async Task Headers_within_the_servers_bounds_are_read_and_a_flood_is_a_431(int count, int length, int status)
    {
        await using var service = Counting.Listening();
        using var caller = await RawCaller.ToAsync(service.Address);
        var headers = string.Concat(Enumerable.Range(0, count).Select(at => $"X-H{at}: {new string('h', length)}\r\n"));

        await caller.SendAsync($"GET /health/live HTTP/1.1\r\nHost: x\r\nConnection: close\r\n{headers}\r\n");

        Assert.StartsWith("HTTP/1.1 " + status.ToString(CultureInfo.InvariantCulture), await caller.RestAsync(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(7_000, 422)]
    [InlineData(20_000, 414)]
    public async Task A_query_within_the_servers_bounds_is_told_and_a_longer_one_is_a_414(int length, int status)
    {
        await using var service = Counting.Listening();
        using var caller = await RawCaller.ToAsync(service.Address);

        await caller.SendAsync($"POST /v1/flow?{new string('q', length)} HTTP/1.1\r\nHost: x\r\nConnection: close\r\nContent-Length: 0\r\n\r\n");

        Assert.StartsWith("HTTP/1.1 " + status.ToString(CultureInfo.InvariantCulture), await caller.RestAsync(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Nonsense_on_a_connection_is_a_400_and_the_service_goes_on()
    {
        await using var service = Counting.Listening();
        foreach (var nonsense in (string[])["\u0016\u0003\u0001\u0002\r\n\r\n", "GET\r\n\r\n", "POST /v1/flow HTTP/9.9\r\n\r\n", "POST /v1/flow HTTP/1.1\r\nHost: x\r\nContent-Length: -5\r\n\r\n", "POST /v1/flow HTTP/1.1\r\nHost: x\r\nTransfer-Encoding: chunked\r\nContent-Type: application/json\r\n\r\nZZ\r\n"])
        {
            using var caller = await RawCaller.ToAsync(service.Address);
            await caller.SendAsync(nonsense);
            var said = await caller.RestAsync();
            Assert.Matches("^HTTP/1.1 (400|505)", said);
        }
        using var other = new HttpClient { BaseAddress = service.Address };
        await other.PostFlow(Documents.Small).Json(200);
    }

    [Fact]
    public async Task A_request_that_is_being_answered_when_the_service_stops_is_answered()
    {
        await using var service = Counting.Listening(("Limits:DischargeTime", "00:02:00"));
        using var caller = new HttpClient { BaseAddress = service.Address };
        await caller.PostFlow(Documents.Small).Json(200);
        var asked = Task.Run(() => caller.PostDischarge(DischargeDocuments.Chain(400)).Json(200), TestContext.Current.CancellationToken);
        var watch = Stopwatch.StartNew();
        while (service.Services.GetRequiredService<InFlight>().Count == 0 && watch.Elapsed < TimeSpan.FromSeconds(30)) await Task.Delay(5, TestContext.Current.CancellationToken);

        await service.Services.GetRequiredService<IHost>().StopAsync(TestContext.Current.CancellationToken);

        Assert.NotEmpty((await asked).GetProperty("cases").EnumerateArray());
        await Assert.ThrowsAnyAsync<HttpRequestException>(() => caller.PostFlow(Documents.Small));
    }
}
