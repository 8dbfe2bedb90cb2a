using FlowCalc.Api.Tests.Hosting;
using Microsoft.AspNetCore.Hosting;
using Microsoft.AspNetCore.Mvc.Testing;

[assembly: AssemblyFixture(typeof(Service))]

namespace FlowCalc.Api.Tests.Hosting;

/// <summary>The real service in this process, as it runs by default but for the demo on the terminal.</summary>
public class Service : WebApplicationFactory<Program>
{
    readonly Dictionary<string, string> settings = new() { ["Startup:Demo"] = "false", ["Logging:LogLevel:Default"] = "Warning" };

    /// <summary>A service of its own with other settings.</summary>
    public static Service With(params (string Key, string Value)[] settings)
    {
        var service = new Service();
        foreach (var (key, value) in settings)
            service.settings[key] = value;
        return service;
    }

    public HttpClient Caller() => CreateClient(new WebApplicationFactoryClientOptions { AllowAutoRedirect = false });

    protected override void ConfigureWebHost(IWebHostBuilder builder)
    {
        foreach (var (key, value) in settings)
            builder.UseSetting(key, value);
    }
}
