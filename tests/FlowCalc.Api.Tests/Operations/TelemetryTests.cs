using System.Collections.Concurrent;
using System.Net;
using FlowCalc.Api.Tests.Flow;
using FlowCalc.Api.Tests.Hosting;
using FlowCalc.Api.Tests.Requests;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Hosting;
using Microsoft.AspNetCore.Hosting.Server;
using Microsoft.AspNetCore.Hosting.Server.Features;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Logging;
using OpenTelemetry.Logs;
using OpenTelemetry.Metrics;
using OpenTelemetry.Trace;

namespace FlowCalc.Api.Tests.Operations;

public sealed class TelemetryTests
{
    [Fact]
    public async Task A_collector_gets_metrics_traces_and_logs_with_what_they_count_and_nothing_of_the_document()
    {
        await using var collector = await Collector.StartAsync();
        await using (var service = Service.With(("Telemetry:Endpoint", collector.Address), ("Telemetry:OverHttp", "true"), ("Logging:LogLevel:Default", "Information"), ("Logging:LogLevel:Microsoft.AspNetCore", "Information")))
        {
            using var caller = service.Caller();
            // A busy machine may let an exporter's time run out: it is asked again.
            for (var tries = 0; tries < 10 && collector.Got.Count < 3; tries++)
            {
                await caller.PostFlow(Documents.SmallWith(small => small["title"] = "A secret boat")).Json(200);
                service.Services.GetRequiredService<MeterProvider>().ForceFlush(20_000);
                service.Services.GetRequiredService<TracerProvider>().ForceFlush(20_000);
                service.Services.GetRequiredService<LoggerProvider>().ForceFlush(20_000);
            }
        }

        foreach (var path in (string[])["/v1/metrics", "/v1/traces", "/v1/logs"]) Assert.True(collector.Got.ContainsKey(path), $"{path} of {string.Join(' ', collector.Got.Keys)}");
        Assert.All(collector.Got.Values, sent =>
        {
            Assert.Matches(@"(?s)service\.name.{1,6}flowcalc", sent);
            Assert.Matches(@"(?s)service\.version.{1,6}\d+\.\d+\.\d+", sent);
        });
        Assert.Contains("flowcalc.answers", collector.Got["/v1/metrics"], StringComparison.Ordinal);
        Assert.Contains("http.server.request.duration", collector.Got["/v1/metrics"], StringComparison.Ordinal);
        Assert.Contains("work", collector.Got["/v1/traces"], StringComparison.Ordinal);
        Assert.All(collector.Got.Values, sent => Assert.DoesNotContain("A secret boat", sent, StringComparison.Ordinal));
    }

    [Fact]
    public async Task Nothing_is_sent_by_default()
    {
        await using var service = Service.With();
        using var caller = service.Caller();
        await caller.PostFlow(Documents.Small).Json(200);

        Assert.Null(service.Services.GetService<MeterProvider>());
        Assert.Null(service.Services.GetService<TracerProvider>());
    }

    [Theory]
    [InlineData("Telemetry:Endpoint", "ftp://collector")]
    [InlineData("Telemetry:Endpoint", "collector:4317/x")]
    public async Task An_address_that_is_none_stops_the_start(string key, string value)
    {
        await using var service = Service.With((key, value));

        Assert.ThrowsAny<Exception>(service.Caller);
    }

    // Takes what is sent to it and keeps it as text, strings in it readable.
    sealed class Collector(WebApplication app) : IAsyncDisposable
    {
        public ConcurrentDictionary<string, string> Got { get; } = new();

        public string Address => app.Services.GetRequiredService<IServer>().Features.Get<IServerAddressesFeature>()!.Addresses.First();

        public static async Task<Collector> StartAsync()
        {
            var builder = WebApplication.CreateSlimBuilder();
            builder.Logging.ClearProviders();
            builder.WebHost.ConfigureKestrel(kestrel => kestrel.Listen(IPAddress.Loopback, 0));
            var app = builder.Build();
            var collector = new Collector(app);
            app.Run(async context =>
            {
                using var body = new MemoryStream();
                await context.Request.Body.CopyToAsync(body, context.RequestAborted);
                var text = System.Text.Encoding.Latin1.GetString(body.ToArray());
                collector.Got.AddOrUpdate(context.Request.Path, text, (_, before) => before + text);
            });
            await app.StartAsync(TestContext.Current.CancellationToken);
            return collector;
        }

        public ValueTask DisposeAsync() => app.DisposeAsync();
    }
}
