using FlowCalc.Api.Hosting;
using FlowCalc.Api.Jobs;
using OpenTelemetry.Exporter;
using OpenTelemetry.Logs;
using OpenTelemetry.Metrics;
using OpenTelemetry.Resources;
using OpenTelemetry.Trace;

namespace FlowCalc.Api.Operations;

/// <summary>Metrics, traces and logs by OpenTelemetry, where the settings name a collector.</summary>
internal static class TelemetrySetup
{
    // The framework's own, besides ours: requests, connections, refusals of the limit by address, memory and collections.
    static readonly string[] Meters = [ServiceMeter.Name, "Microsoft.AspNetCore.Hosting", "Microsoft.AspNetCore.Server.Kestrel", "Microsoft.AspNetCore.RateLimiting", "System.Runtime"];

    /// <summary>As what the service tells of itself.</summary>
    const string ServiceName = "flowcalc";

    static readonly string Version = typeof(TelemetrySetup).Assembly.GetName().Version!.ToString(3);

    /// <summary>Registers what counts, and where it is sent.</summary>
    public static void AddTelemetry(this WebApplicationBuilder builder)
    {
        builder.Services.AddMetrics();
        builder.Services.AddSingleton<ServiceMeter>();
        builder.Services.AddHostedService<Gauges>();
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
            // What the standard variables say (OTEL_SERVICE_NAME, OTEL_RESOURCE_ATTRIBUTES) comes last and stands.
            .ConfigureResource(resource => resource.AddService(ServiceName, serviceVersion: Version).AddEnvironmentVariableDetector())
            .WithMetrics(metrics => metrics.AddMeter(Meters).AddOtlpExporter(options => To(options, "v1/metrics")))
            .WithTracing(traces => traces.AddSource(ServiceMeter.Name).AddAspNetCoreInstrumentation().AddOtlpExporter(options => To(options, "v1/traces")));
        builder.Logging.AddOpenTelemetry(logs => logs.AddOtlpExporter(options => To(options, "v1/logs")));

        void To(OtlpExporterOptions options, string path)
        {
            options.Protocol = overHttp ? OtlpExportProtocol.HttpProtobuf : OtlpExportProtocol.Grpc;
            options.Endpoint = overHttp ? new Uri(new Uri(endpoint.AbsoluteUri.TrimEnd('/') + "/"), path) : endpoint;
        }
    }

    // Instruments that are observed have to be made once, when what they observe is there.
    sealed class Gauges(ServiceMeter meter, JobStore jobs, WorkPlaces places, HeldBytes held) : IHostedService
    {
        public Task StartAsync(CancellationToken cancellationToken)
        {
            meter.Meter.CreateObservableGauge("flowcalc.jobs.running", () => jobs.Counts().Running, "{job}", "Jobs that run.");
            meter.Meter.CreateObservableGauge("flowcalc.jobs.waiting", () => jobs.Counts().Waiting, "{job}", "Jobs that wait for a place.");
            meter.Meter.CreateObservableGauge("flowcalc.work.running", () => places.Counts().Taken, "{request}", "Requests that are worked on.");
            meter.Meter.CreateObservableGauge("flowcalc.work.waiting", () => places.Counts().Waiting, "{request}", "Requests that wait for a place of work.");
            meter.Meter.CreateObservableGauge("flowcalc.held", () => held.Count, "By", "Bodies that arrive or wait and answers that are sent.");
            return Task.CompletedTask;
        }

        public Task StopAsync(CancellationToken cancellationToken) => Task.CompletedTask;
    }
}
