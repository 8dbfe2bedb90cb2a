using System.Text;
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
        using var client = logged.CreateClient();
        using var held = new HeldBody(Encoding.UTF8.GetBytes(Documents.Small));
        using var content = new StreamContent(held);
        content.Headers.ContentType = new("application/json");
        using var gone = new CancellationTokenSource();

        var asked = client.PostAsync(new Uri("/v1/flow", UriKind.Relative), content, gone.Token);
        await gone.CancelAsync();
        await Assert.ThrowsAnyAsync<OperationCanceledException>(() => asked);
        // The server notices a little later than the caller; a later request waits for that by trying again.
        for (var attempt = 0; attempt < 1_000; attempt++)
        {
            using var next = await client.PostFlow(Documents.Small);
            if (next.IsSuccessStatusCode)
                break;
            await Task.Yield();
        }

        await client.PostFlow(Documents.Small).Json(200);
        Assert.Empty(log.Errors);
    }

    async Task<byte[]> Bytes(string query)
    {
        using var response = await caller.PostFlow(Documents.Demo, query);
        Assert.True(response.IsSuccessStatusCode, response.StatusCode.ToString());
        return await response.Content.ReadAsByteArrayAsync(TestContext.Current.CancellationToken);
    }
}
