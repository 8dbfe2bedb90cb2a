using System.Globalization;
using System.Net;
using System.Text;
using FlowCalc.Api.Hosting;
using FlowCalc.Api.Tests.Flow;
using FlowCalc.Api.Tests.Requests;
using Microsoft.Extensions.DependencyInjection;

namespace FlowCalc.Api.Tests.Hosting;

/// <summary>Callers who send or read slowly, on real connections: they hold no place of work, and no more bytes than the settings say.</summary>
public sealed class SlowCallerTests
{
    const string Head = "POST /v1/flow HTTP/1.1\r\nHost: localhost\r\nContent-Type: application/json\r\nContent-Length: ";

    // Escaped, so that it is one byte a character.
    static readonly string Small = Documents.SmallWith(_ => { });

    [Fact]
    public async Task More_slow_senders_than_places_keep_nobody_waiting()
    {
        await using var service = Counting.Listening(("Limits:Concurrent", "1"), ("Limits:Waiting", "0"));
        List<RawCaller> slow = [];
        for (var at = 0; at < 8; at++)
        {
            slow.Add(await RawCaller.ToAsync(service.Address));
            await slow[^1].SendAsync(Request(Small.Length) + Small[..(Small.Length / 2)]);
        }
        await Until(() => service.Services.GetRequiredService<InFlight>().Count == slow.Count);
        using var other = new HttpClient { BaseAddress = service.Address };

        await other.PostFlow(Small).Json(200);

        foreach (var caller in slow)
        {
            await caller.SendAsync(Small[(Small.Length / 2)..]);
            Assert.StartsWith("HTTP/1.1 200", await caller.FirstAsync(), StringComparison.Ordinal);
            caller.Dispose();
        }
    }

    [Fact]
    public async Task More_slow_readers_than_places_keep_nobody_waiting_and_are_let_go_of()
    {
        await using var service = Counting.Listening(("Limits:Concurrent", "1"), ("Limits:Waiting", "8"));
        var held = service.Services.GetRequiredService<HeldBytes>();
        var document = Documents.Chain(10_000);
        List<RawCaller> slow = [];
        for (var at = 0; at < 2; at++)
        {
            slow.Add(await RawCaller.ToAsync(service.Address, receives: 4096));
            await slow[^1].SendAsync(Request(document.Length) + document);
        }
        // Each of the answers is several times what connections hold by themselves; the second is there before the first is cut off.
        await Until(() => service.Services.GetRequiredService<WorkPlaces>().Counts() == (0, 0) && service.Services.GetRequiredService<InFlight>().Count == slow.Count && held.Count > document.Length);
        using var other = new HttpClient { BaseAddress = service.Address };

        await other.PostFlow(Small).Json(200);

        // Whoever takes less than 10 kB a second, after five seconds, is cut off.
        await Until(() => held.Count == 0 && service.Services.GetRequiredService<InFlight>().Count == 0);
        slow.ForEach(caller => caller.Dispose());
    }

    [Fact]
    public async Task Bodies_beyond_what_is_held_are_a_429_with_Retry_After_until_there_is_room()
    {
        await using var service = Counting.Listening(("Limits:BodyBytes", "200000"), ("Limits:HeldBytes", "200000"));
        var held = service.Services.GetRequiredService<HeldBytes>();
        using var other = new HttpClient { BaseAddress = service.Address };
        using (var slow = await RawCaller.ToAsync(service.Address))
        {
            await slow.SendAsync(Request(200_000) + new string(' ', 190_000));
            await Until(() => held.Count >= 190_000);

            using var late = await RawCaller.ToAsync(service.Address);
            await late.SendAsync(Request(100_000) + "{");
            var said = await late.RestAsync();

            Assert.StartsWith("HTTP/1.1 429", said, StringComparison.Ordinal);
            Assert.Contains("\r\nRetry-After: 1\r\n", said, StringComparison.Ordinal);
            Assert.Contains("\r\nConnection: close\r\n", said, StringComparison.Ordinal);
            Assert.Contains("hold 200000 bytes", said, StringComparison.Ordinal);
        }
        await Until(() => held.Count == 0);
        await other.PostFlow(Small).Json(200);
    }

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public async Task The_largest_body_fits_where_it_is_alone(bool isLengthStated)
    {
        await using var service = Service.With(("Limits:BodyBytes", "200000"), ("Limits:HeldBytes", "200000"));
        using var caller = service.Caller();
        var document = Encoding.UTF8.GetBytes(Small.PadRight(200_000));
        using HttpContent content = isLengthStated ? new ByteArrayContent(document) : new StreamContent(new UnstatedLength(document));
        content.Headers.ContentType = new("application/json");

        await caller.PostAsync(new Uri("/v1/flow", UriKind.Relative), content, TestContext.Current.CancellationToken).Json(200);

        Assert.Equal(0, service.Services.GetRequiredService<HeldBytes>().Count);
    }

    [Fact]
    public async Task An_answer_is_sent_though_there_is_no_room_and_nothing_new_is_taken_in()
    {
        await using var service = Service.With(("Limits:Concurrent", "1"));
        using var caller = service.Caller();
        var (held, places) = (service.Services.GetRequiredService<HeldBytes>(), service.Services.GetRequiredService<WorkPlaces>());
        var taken = await places.TakeAsync(TestContext.Current.CancellationToken);
        var waiting = caller.PostFlow(Small);
        await Until(() => places.Counts().Waiting == 1);
        var most = service.Services.GetRequiredService<ServiceLimits>().HeldBytes;

        held.Add(most);
        await caller.PostFlow(Small).Fault(429);
        taken.Dispose();
        await waiting.Json(200);
        held.Return(most);

        await caller.PostFlow(Small).Json(200);
        Assert.Equal(0, held.Count);
    }

    [Fact]
    public async Task A_long_answer_says_its_length_beforehand()
    {
        await using var service = Counting.Listening();
        using var caller = new HttpClient { BaseAddress = service.Address };
        using var content = new StringContent(Documents.Chain(2_000), Encoding.UTF8, "application/json");
        using var request = new HttpRequestMessage(HttpMethod.Post, "/v1/flow") { Content = content };

        using var response = await caller.SendAsync(request, HttpCompletionOption.ResponseHeadersRead, TestContext.Current.CancellationToken);

        Assert.Equal(HttpStatusCode.OK, response.StatusCode);
        var length = response.Content.Headers.ContentLength;
        Assert.InRange(length ?? 0, 300_000, 10_000_000);
        Assert.Equal(length, (await response.Content.ReadAsByteArrayAsync(TestContext.Current.CancellationToken)).Length);
    }

    static string Request(int length) => Head + length.ToString(CultureInfo.InvariantCulture) + "\r\n\r\n";

    static async Task Until(Func<bool> holds)
    {
        var until = DateTime.UtcNow.AddSeconds(60);
        while (!holds() && DateTime.UtcNow < until) await Task.Delay(10, TestContext.Current.CancellationToken);
        Assert.True(holds());
    }
}
