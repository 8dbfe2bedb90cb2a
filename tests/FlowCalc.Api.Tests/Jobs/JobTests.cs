using System.Net.ServerSentEvents;
using System.Text;
using System.Text.Json;
using FlowCalc.Api.Tests.Documentation;
using FlowCalc.Api.Tests.Flow;
using FlowCalc.Api.Tests.Hosting;
using FlowCalc.Api.Tests.Requests;

namespace FlowCalc.Api.Tests.Jobs;

public sealed class JobTests(Service service) : IDisposable
{
    readonly HttpClient caller = service.Caller();

    public void Dispose() => caller.Dispose();

    [Theory]
    [InlineData("respond-async")]
    [InlineData("wait=10, Respond-Async; foo=bar")]
    public async Task Caller_who_prefers_a_job_gets_one_whose_answer_is_that_of_the_call(string preference)
    {
        var request = $$"""{ "layout": {{Documents.Small}}, "samples": 300 }""";

        var job = await HandIn(request, "?units=us", preference);
        var ended = await End(job);

        Assert.Empty((await Contract.Published()).Breaks("JobAnswer", ended));
        Assert.Equal("done", ended.GetProperty("state").GetString());
        Assert.Equal((300, 300), (ended.GetProperty("done").GetInt32(), ended.GetProperty("of").GetInt32()));
        Assert.Equal("/v1/tolerance", ended.GetProperty("call").GetString());
        Assert.EndsWith("Z", ended.GetProperty("keptUntil").GetString(), StringComparison.Ordinal);
        var direct = await caller.PostLayout("/v1/tolerance", Encoding.UTF8.GetBytes(request), "?units=us").Json(200);
        Assert.Equal(direct.GetRawText(), ended.GetProperty("answer").GetRawText());
    }

    [Fact]
    public async Task Request_with_a_fault_becomes_no_job()
    {
        using var response = await Post("""{ "layout": 1 }""", "", "respond-async");

        Assert.Equal(422, (int)response.StatusCode);
        Assert.Null(response.Headers.Location);
    }

    [Fact]
    public async Task Events_tell_progress_and_the_end()
    {
        var job = await HandIn($$"""{ "layout": {{Documents.Demo}}, "answer": "discharge", "samples": 400 }""");

        using var response = await caller.GetAsync(new Uri(job + "/events", UriKind.Relative), HttpCompletionOption.ResponseHeadersRead, TestContext.Current.CancellationToken);
        Assert.Equal("text/event-stream", response.Content.Headers.ContentType?.MediaType);
        List<SseItem<string>> events = [];
        await foreach (var item in SseParser.Create(await response.Content.ReadAsStreamAsync(TestContext.Current.CancellationToken)).EnumerateAsync(TestContext.Current.CancellationToken))
            events.Add(item);

        Assert.Equal("done", events[^1].EventType);
        Assert.All(events[..^1], item => Assert.Equal("progress", item.EventType));
        var done = events.Select(item => JsonDocument.Parse(item.Data).RootElement.GetProperty("done").GetInt32()).ToArray();
        Assert.Equal(400, done[^1]);
        Assert.Equal(done.Order(), done);
    }

    [Fact]
    public async Task Job_that_is_deleted_is_cancelled_and_deleted_again_is_forgotten()
    {
        var job = await HandIn($$"""{ "layout": {{Documents.Demo}}, "answer": "discharge", "cases": "all", "samples": 10000 }""");

        using (var stopped = await caller.DeleteAsync(new Uri(job, UriKind.Relative), TestContext.Current.CancellationToken)) Assert.Equal(204, (int)stopped.StatusCode);

        var after = await caller.Get(job).Json(200);
        Assert.Equal("cancelled", after.GetProperty("state").GetString());
        Assert.Equal(JsonValueKind.Null, after.GetProperty("answer").ValueKind);
        using (var forgotten = await caller.DeleteAsync(new Uri(job, UriKind.Relative), TestContext.Current.CancellationToken)) Assert.Equal(204, (int)forgotten.StatusCode);
        await caller.Get(job).Fault(404);
    }

    [Theory]
    [InlineData("/v1/jobs/x", 404)]
    [InlineData("/v1/jobs/00112233445566778899aabbccddeeff", 404)]
    [InlineData("/v1/jobs/00112233445566778899aabbccddeeff/events", 404)]
    [InlineData("/v1/jobs/x?units=us", 422)]
    [InlineData("/v1/jobs/x/events?a=b", 422)]
    public async Task Job_that_is_not_there_is_said_not_to_be(string path, int status) => await caller.Get(path).Fault(status);

    [Fact]
    public async Task Too_many_jobs_are_answered_429_with_a_time_to_wait()
    {
        await using var small = Service.With(("Limits:JobsRunning", "1"), ("Limits:JobsWaiting", "0"));
        using var other = small.Caller();
        var request = $$"""{ "layout": {{Documents.Demo}}, "answer": "discharge", "cases": "all", "samples": 10000 }""";
        using var first = await Post(request, "", "respond-async", other);

        using var second = await Post(request, "", "respond-async", other);

        Assert.Equal((202, 429), ((int)first.StatusCode, (int)second.StatusCode));
        Assert.NotNull(second.Headers.RetryAfter);
        Assert.False(second.Headers.Contains("Preference-Applied"));
        using var stopped = await other.DeleteAsync(first.Headers.Location, TestContext.Current.CancellationToken);
    }

    async Task<string> HandIn(string request, string query = "", string preference = "respond-async")
    {
        using var response = await Post(request, query, preference);
        Assert.Equal(202, (int)response.StatusCode);
        Assert.Equal("respond-async", Assert.Single(response.Headers.GetValues("Preference-Applied")));
        using var body = JsonDocument.Parse(await response.Content.ReadAsStringAsync(TestContext.Current.CancellationToken));
        var location = response.Headers.Location!.ToString();
        Assert.Equal("/v1/jobs/" + body.RootElement.GetProperty("id").GetString(), location);
        return location;
    }

    async Task<JsonElement> End(string job)
    {
        while (true)
        {
            var now = await caller.Get(job).Json(200);
            if (now.GetProperty("state").GetString() is not ("queued" or "running")) return now;
            await Task.Delay(20, TestContext.Current.CancellationToken);
        }
    }

    async Task<HttpResponseMessage> Post(string request, string query, string preference, HttpClient? by = null)
    {
        using var message = new HttpRequestMessage(HttpMethod.Post, "/v1/tolerance" + query) { Content = new StringContent(request, Encoding.UTF8, "application/json") };
        message.Headers.TryAddWithoutValidation("Prefer", preference);
        return await (by ?? caller).SendAsync(message, TestContext.Current.CancellationToken);
    }
}
