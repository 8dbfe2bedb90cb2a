namespace FlowCalc.Api.Operations;

/// <summary>Where the service tells of itself; the section <c>Telemetry</c> of the settings. Nothing leaves it by default.</summary>
public sealed class TelemetrySettings
{
    /// <summary>Name of the section.</summary>
    public const string Section = "Telemetry";

    /// <summary>Address of a collector that takes the OpenTelemetry protocol (OTLP), such as <c>http://localhost:4317</c>; null for none.</summary>
    public Uri? Endpoint { get; init; }

    /// <summary>True for OTLP over HTTP (usually port 4318), false over gRPC (usually 4317).</summary>
    public bool OverHttp { get; init; }

    /// <summary>Whether it makes sense.</summary>
    public bool IsSound() => Endpoint is null || (Endpoint.IsAbsoluteUri && Endpoint.Scheme is "http" or "https");
}
