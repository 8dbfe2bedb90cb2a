using FlowCalc.Api.Jobs;
using OpenTelemetry.Exporter;
using OpenTelemetry.Logs;
using OpenTelemetry.Metrics;
using OpenTelemetry.Trace;

namespace FlowCalc.Api.Operations;

/// <summary>Metrics, traces and logs by OpenTelemetry, where the settings name a collector.</summary>
internal static class TelemetrySetup
{
    // The framework's own, besides ours: requests, connections, the queue of the rate limiter, memory and collections.
    static readonly string[] Meters = [ServiceMeter.Name, "Microsoft.AspNetCore.Hosting", "Microsoft.AspNetCore.Server.Kestrel", "Microsoft.AspNetCore.RateLimiting", "System.Runtime"];

    /// <summary>Registers what counts, and where it is sent.</summary>
    public static void AddTelemetry(this WebApplicationBuilder builder)
    {
        builder.Services.AddMetrics();
        builder.Services.AddSingleton<ServiceMeter>();
        builder.Services.AddHostedService<JobGauge>();
        builder.Services.AddOptions<TelemetrySettings>()
            .Bind(builder.Configuration.GetSection(TelemetrySettings.Section), binder => binder.ErrorOnUnknownConfiguration = true)
            .Validate(settings => settings.IsSound(), $"{TelemetrySettings.Section}:Endpoint is an absolute http or https address.")
            .ValidateOnStart();
        if (builder.Configuration.GetSection(TelemetrySettings.Section).Get<TelemetrySettings>() is { Endpoint: { } endpoint } settings && settings.IsSound())
            Send(builder, endpoint, settings.OverHttp);
    }

    static void Send(WebApplicationBuilder builder, Uri endpoint, bool overHttp)
    {
        builder.Services.AddOpenTelemetry()
            .WithMetrics(metrics => metrics.AddMeter(Meters).AddOtlpExporter(options => To(options, "v1/metrics")))
            .WithTracing(traces => traces.AddSource(ServiceMeter.Name).AddAspNetCoreInstrumentation().AddOtlpExporter(options => To(options, "v1/traces")));
        builder.Logging.AddOpenTelemetry(logs => logs.AddOtlpExporter(options => To(options, "v1/logs")));

        void To(OtlpExporterOptions options, string path)
        {
            options.Protocol = overHttp ? OtlpExportProtocol.HttpProtobuf : OtlpExportProtocol.Grpc;
            options.Endpoint = overHttp ? new Uri(new Uri(endpoint.AbsoluteUri.TrimEnd('/') + "/"), path) : endpoint;
        }
    }

    // Instruments that are observed have to be made once, when the store of jobs is there.
    sealed class JobGauge(ServiceMeter meter, JobStore jobs) : IHostedService
    {
        public Task StartAsync(CancellationToken cancellationToken)
        {
            meter.Meter.CreateObservableGauge("flowcalc.jobs.running", () => jobs.Counts().Running, "{job}", "Jobs that run.");
            meter.Meter.CreateObservableGauge("flowcalc.jobs.waiting", () => jobs.Counts().Waiting, "{job}", "Jobs that wait for a place.");
            return Task.CompletedTask;
        }

        public Task StopAsync(CancellationToken cancellationToken) => Task.CompletedTask;
    }
}
