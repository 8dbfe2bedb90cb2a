using FlowCalc.Api.Tests.Hosting;
using Microsoft.AspNetCore.Hosting;
using Microsoft.AspNetCore.Mvc.Testing;

[assembly: AssemblyFixture(typeof(Service))]

namespace FlowCalc.Api.Tests.Hosting;

/// <summary>The real service in this process, as it runs by default but for the demo on the terminal and for its patience: how long a busy machine takes is no matter of most tests.</summary>
public class Service : WebApplicationFactory<Program>
{
    static readonly string[] Calls = ["Flow", "Discharge", "Compare", "Tolerance", "Size", "CutList", "Drawing", "Report", "Mount", "Circuit", "Upkeep", "Check", "Coverage", "Calibration"];

    readonly Dictionary<string, string> settings = new() { ["Startup:Demo"] = "false", ["Logging:LogLevel:Default"] = "Warning" };

    /// <summary>A patient service.</summary>
    public Service()
    {
        foreach (var call in Calls) settings[$"Limits:{call}Time"] = "00:02:00";
    }

    /// <summary>A service of its own with other settings.</summary>
    public static Service With(params (string Key, string Value)[] settings)
    {
        var service = new Service();
        foreach (var (key, value) in settings)
            service.settings[key] = value;
        return service;
    }

    /// <summary>A service of its own with the limits of time that it is shipped with.</summary>
    public static Service AsShipped()
    {
        var service = new Service();
        foreach (var call in Calls) service.settings.Remove($"Limits:{call}Time");
        return service;
    }

    public HttpClient Caller() => CreateClient(new WebApplicationFactoryClientOptions { AllowAutoRedirect = false });

    protected override void ConfigureWebHost(IWebHostBuilder builder)
    {
        foreach (var (key, value) in settings)
            builder.UseSetting(key, value);
    }
}
