using Microsoft.AspNetCore.Server.Kestrel.Core;

namespace FlowCalc.Api.Hosting;

/// <summary>The web server: where it listens and what it takes.</summary>
internal static class ServerSetup
{
    /// <summary>Where it listens unless the settings, the environment or the command line say otherwise.</summary>
    public const string DefaultUrl = "http://localhost:5080";

    static readonly string[] UrlSettings = ["urls", "http_ports", "https_ports", "Kestrel:Endpoints"];

    /// <summary>Sets Kestrel up: no server header, the body limit, and a port of its own.</summary>
    public static void AddServer(this WebApplicationBuilder builder)
    {
        if (!UrlSettings.Any(key => builder.Configuration.GetSection(key).Exists()))
            builder.WebHost.UseUrls(DefaultUrl);

        builder.WebHost.ConfigureKestrel(kestrel => kestrel.AddServerHeader = false);
        // Well over, so that our own reader sees the excess first and says what the limit is; the server also counts the marks between chunks.
        builder.Services.AddOptions<KestrelServerOptions>()
            .Configure<ServiceLimits>((kestrel, limits) =>
            {
                kestrel.Limits.MaxRequestBodySize = 2L * limits.BodyBytes;
                var slowest = new MinDataRate(bytesPerSecond: 10 * 1024, gracePeriod: TimeSpan.FromSeconds(5));
                kestrel.Limits.MinRequestBodyDataRate = slowest;
                // Who reads no answer holds its bytes no longer than that.
                kestrel.Limits.MinResponseDataRate = slowest;
            });
    }
}
