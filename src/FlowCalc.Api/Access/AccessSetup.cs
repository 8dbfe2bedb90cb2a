using System.Net;
using Microsoft.AspNetCore.Cors.Infrastructure;
using Microsoft.AspNetCore.HttpOverrides;
using Microsoft.Extensions.Options;

namespace FlowCalc.Api.Access;

/// <summary>Keys, origins and proxies, all closed unless the settings open them.</summary>
internal static class AccessSetup
{
    /// <summary>Reads and checks the settings.</summary>
    public static void AddAccess(this WebApplicationBuilder builder)
    {
        builder.Services.AddOptions<AccessSettings>()
            .Bind(builder.Configuration.GetSection(AccessSettings.Section), binder => binder.ErrorOnUnknownConfiguration = true)
            .ValidateOnStart();
        builder.Services.AddSingleton<IValidateOptions<AccessSettings>, AccessValidation>();
        builder.Services.AddSingleton(services => services.GetRequiredService<IOptions<AccessSettings>>().Value);
        builder.Services.AddSingleton<KeyRing>();
        builder.Services.AddHostedService<OpenAddresses>();
        builder.Services.AddCors();
        builder.Services.AddOptions<CorsOptions>().Configure<AccessSettings>((cors, settings) => cors.AddDefaultPolicy(policy => policy
            .WithOrigins([.. settings.Origins])
            .WithMethods("GET", "POST", "DELETE")
            .WithHeaders("Content-Type", "Authorization", "Prefer")
            .WithExposedHeaders("Location", "Retry-After", "Preference-Applied")
            .SetPreflightMaxAge(TimeSpan.FromMinutes(10))));
        builder.Services.AddOptions<ForwardedHeadersOptions>().Configure<AccessSettings>(Believe);
    }

    /// <summary>Puts the gate before everything that answers. Before it comes who the caller is, as a trusted proxy tells.</summary>
    public static void UseAccess(this WebApplication app)
    {
        if (app.Services.GetRequiredService<AccessSettings>().Proxies.Count > 0) app.UseForwardedHeaders();
        // A browser asks beforehand without a key, so its question is answered before the gate.
        app.UseCors();
        app.UseMiddleware<KeyGate>();
    }

    static void Believe(ForwardedHeadersOptions options, AccessSettings settings)
    {
        options.ForwardedHeaders = ForwardedHeaders.XForwardedFor | ForwardedHeaders.XForwardedProto;
        // What the framework trusts by itself, this machine, is trusted only where the settings say so.
        options.KnownProxies.Clear();
        options.KnownIPNetworks.Clear();
        foreach (var proxy in settings.Proxies)
        {
            if (IPAddress.TryParse(proxy, out var address)) options.KnownProxies.Add(address);
            else options.KnownIPNetworks.Add(System.Net.IPNetwork.Parse(proxy));
        }
        // As far back as proxies are known, each in turn.
        options.ForwardLimit = null;
    }

    sealed class AccessValidation : IValidateOptions<AccessSettings>
    {
        public ValidateOptionsResult Validate(string? name, AccessSettings options) => options.Fault() is { } fault ? ValidateOptionsResult.Fail(fault) : ValidateOptionsResult.Success;
    }
}
