using System.Diagnostics;
using System.Net;
using FlowCalc.Api.Tests.Flow;
using FlowCalc.Api.Tests.Hosting;
using FlowCalc.Api.Tests.Requests;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Logging;

namespace FlowCalc.Api.Tests.Discharge;

/// <summary>Time limit, callers who go away, and many at once.</summary>
public sealed class DischargeLoadTests(Service service) : IDisposable
{
    readonly HttpClient caller = service.Caller();

    public void Dispose() => caller.Dispose();

    [Fact]
    public async Task Answer_that_takes_too_long_is_a_422_that_says_so_and_the_service_goes_on()
    {
        await using var hasty = Service.With(("Limits:DischargeTime", "00:00:00.001"), ("Limits:Concurrent", "1"), ("Limits:Waiting", "0"));
        using var other = hasty.Caller();

        for (var visit = 0; visit < 3; visit++)
        {
            var fault = await other.PostDischarge(DischargeDocuments.Chain(400)).Fault(422);
            Assert.Contains("0.001 s", fault.GetProperty("errors").GetProperty("")[0].GetString()!, StringComparison.Ordinal);
        }
        await other.PostFlow(Documents.Small).Json(200);
    }

    [Fact]
    public async Task Time_limit_ends_the_work_soon_after()
    {
        await using var hasty = Service.With(("Limits:DischargeTime", "00:00:00.05"), ("Limits:DischargePoints", "10000"));
        using var other = hasty.Caller();
        await other.PostDischarge(DischargeDocuments.Chain(10_000)).Fault(422);

        var watch = Stopwatch.StartNew();
        await other.PostDischarge(DischargeDocuments.Chain(10_000)).Fault(422);

        // The whole answer takes minutes. Between two looks at the clock lies one solve of the line, some milliseconds; the rest is a busy machine's.
        Assert.InRange(watch.Elapsed.TotalSeconds, 0, 20);
    }

    [Fact]
    public async Task Caller_who_goes_away_in_the_midst_of_the_work_frees_its_place_and_leaves_no_error()
    {
        var log = new ErrorLog();
        await using var watched = Service.With(("Limits:Concurrent", "1"), ("Limits:Waiting", "0"), ("Limits:DischargeTime", "00:10:00"), ("Limits:DischargePoints", "10000"));
        await using var logged = watched.WithWebHostBuilder(host => host.ConfigureServices(services => services.AddSingleton<ILoggerProvider>(log)));
        logged.UseKestrel(kestrel => kestrel.Listen(IPAddress.Loopback, 0));
        logged.StartServer();
        using var client = logged.CreateClient();
        using var content = new StringContent(DischargeDocuments.Chain(10_000), new System.Net.Http.Headers.MediaTypeHeaderValue("application/json"));
        using var patience = new CancellationTokenSource(TimeSpan.FromSeconds(1));

        // Twelve cases of 10 000 points take minutes, so that the place can only be free because the work was given up.
        await Assert.ThrowsAnyAsync<OperationCanceledException>(() => client.PostAsync(new Uri("/v1/discharge", UriKind.Relative), content, patience.Token));
        var watch = Stopwatch.StartNew();
        var answered = false;
        while (!answered)
        {
            Assert.True(watch.Elapsed < TimeSpan.FromSeconds(30), "The place is still taken.");
            await Task.Delay(10, TestContext.Current.CancellationToken);
            using var next = await client.PostFlow(Documents.Small);
            answered = next.IsSuccessStatusCode;
        }

        Assert.Empty(log.Errors);
    }

    [Fact]
    public async Task Many_requests_at_once_get_the_same_bytes_back()
    {
        string[] queries = ["", "?units=us", "?units=si"];
        string[] documents = [DischargeDocuments.Small, Documents.Demo];
        var alone = new List<byte[]>();
        foreach (var document in documents)
            foreach (var query in queries)
                alone.Add(await Bytes(caller, document, query));
        await using var roomy = Service.With(("Limits:DischargeTime", "00:02:00"));
        using var crowd = roomy.Caller();

        var together = await Task.WhenAll(Enumerable.Range(0, 120).Select(at => Bytes(crowd, documents[at % 6 / 3], queries[at % 3])));

        foreach (var (at, bytes) in together.Index())
            Assert.True(alone[at % 6].AsSpan().SequenceEqual(bytes), $"Request {at} got other bytes.");
    }

    static async Task<byte[]> Bytes(HttpClient caller, string document, string query)
    {
        using var response = await caller.PostDischarge(document, query);
        Assert.True(response.IsSuccessStatusCode, response.StatusCode.ToString());
        return await response.Content.ReadAsByteArrayAsync(TestContext.Current.CancellationToken);
    }
}
