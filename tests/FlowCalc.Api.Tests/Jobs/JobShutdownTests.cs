using System.Net.ServerSentEvents;
using System.Text;
using FlowCalc.Api.Tests.Flow;
using FlowCalc.Api.Tests.Hosting;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Hosting;

namespace FlowCalc.Api.Tests.Jobs;

public sealed class JobShutdownTests
{
    [Fact]
    public async Task Who_listens_to_a_job_when_the_service_stops_hears_that_it_was_stopped()
    {
        await using var service = Counting.Listening();
        using var caller = new HttpClient { BaseAddress = service.Address };
        using var content = new StringContent($$"""{ "layout": {{Documents.Demo}}, "answer": "discharge", "samples": 20000 }""", Encoding.UTF8, "application/json");
        using var request = new HttpRequestMessage(HttpMethod.Post, new Uri("/v1/tolerance", UriKind.Relative)) { Content = content, Headers = { { "Prefer", "respond-async" } } };
        using var taken = await caller.SendAsync(request, TestContext.Current.CancellationToken);
        Assert.Equal(202, (int)taken.StatusCode);
        using var events = await caller.GetAsync(new Uri(taken.Headers.Location + "/events", UriKind.Relative), HttpCompletionOption.ResponseHeadersRead, TestContext.Current.CancellationToken);

        var listening = Task.Run(async () =>
        {
            List<string> kinds = [];
            await foreach (var item in SseParser.Create(await events.Content.ReadAsStreamAsync(TestContext.Current.CancellationToken)).EnumerateAsync(TestContext.Current.CancellationToken))
                kinds.Add(item.EventType);
            return kinds;
        }, TestContext.Current.CancellationToken);
        await service.Services.GetRequiredService<IHost>().StopAsync(TestContext.Current.CancellationToken);

        Assert.Equal("cancelled", (await listening.WaitAsync(TimeSpan.FromSeconds(30), TestContext.Current.CancellationToken))[^1]);
    }
}
