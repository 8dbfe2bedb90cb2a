using System.Net;
using System.Net.Sockets;
using FlowCalc.Api.Tests.Hosting;
using FlowCalc.Api.Tests.Requests;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Logging;

namespace FlowCalc.Api.Tests.Flow;

public sealed class FlowConcurrencyTests(Service service) : IDisposable
{
    readonly HttpClient caller = service.Caller();

    public void Dispose() => caller.Dispose();

    [Fact]
    public async Task Many_requests_at_once_get_the_same_bytes_back()
    {
        string[] queries = ["", "?units=us", "?units=si"];
        var alone = new List<byte[]>();
        foreach (var query in queries)
            alone.Add(await Bytes(query));

        var together = await Task.WhenAll(Enumerable.Range(0, 240).Select(at => Bytes(queries[at % 3])));

        foreach (var (at, bytes) in together.Index())
            Assert.True(alone[at % 3].AsSpan().SequenceEqual(bytes), $"Request {at} got other bytes.");
    }

    [Fact]
    public async Task Caller_who_goes_away_leaves_no_error_in_the_log_and_the_place_is_free_again()
    {
        var log = new ErrorLog();
        await using var watched = Service.With(("Limits:Concurrent", "1"), ("Limits:Waiting", "0"));
        await using var logged = watched.WithWebHostBuilder(host => host.ConfigureServices(services => services.AddSingleton<ILoggerProvider>(log)));
        logged.UseKestrel(kestrel => kestrel.Listen(IPAddress.Loopback, 0));
        logged.StartServer();
        using var client = logged.CreateClient();
        var port = client.BaseAddress!.Port;

        for (var visit = 0; visit < 5; visit++)
        {
            using var gone = new TcpClient();
            await gone.ConnectAsync(IPAddress.Loopback, port, TestContext.Current.CancellationToken);
            await gone.GetStream().WriteAsync(
                "POST /v1/flow HTTP/1.1\r\nHost: localhost\r\nContent-Type: application/json\r\nContent-Length: 5000\r\n\r\n{ \"format\": 1,"u8.ToArray(), TestContext.Current.CancellationToken);
            gone.Client.Close(0);
        }
        // The server notices a little later; only then is the one place free for the next caller.
        var answered = false;
        while (!answered)
        {
            TestContext.Current.CancellationToken.ThrowIfCancellationRequested();
            await Task.Delay(10, TestContext.Current.CancellationToken);
            using var next = await client.PostFlow(Documents.Small);
            answered = next.IsSuccessStatusCode;
        }

        Assert.True(answered);
        Assert.Empty(log.Errors);
    }

    async Task<byte[]> Bytes(string query)
    {
        using var response = await caller.PostFlow(Documents.Demo, query);
        Assert.True(response.IsSuccessStatusCode, response.StatusCode.ToString());
        return await response.Content.ReadAsByteArrayAsync(TestContext.Current.CancellationToken);
    }
}
