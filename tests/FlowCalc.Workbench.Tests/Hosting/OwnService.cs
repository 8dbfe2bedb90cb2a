using System.Net;
using Microsoft.AspNetCore.Hosting;
using Microsoft.AspNetCore.Hosting.Server;
using Microsoft.AspNetCore.Hosting.Server.Features;
using Microsoft.AspNetCore.Mvc.Testing;
using Microsoft.Extensions.DependencyInjection;

namespace FlowCalc.Workbench.Tests.Hosting;

/// <summary>A service of a test's own, which may end it and start another on the same port.</summary>
sealed class OwnService : WebApplicationFactory<Program>
{
    OwnService(int port)
    {
        UseKestrel(kestrel => kestrel.Listen(IPAddress.Loopback, port));
        StartServer();
        Address = new Uri(Services.GetRequiredService<IServer>().Features.Get<IServerAddressesFeature>()!.Addresses.First());
    }

    /// <summary>Where it listens.</summary>
    public Uri Address { get; }

    /// <summary>Starts a service on a port; on a free one where none is given.</summary>
    public static OwnService Start(int port = 0) => new(port);

    protected override void ConfigureWebHost(IWebHostBuilder builder)
    {
        builder.UseSetting("Startup:Demo", "false");
        builder.UseSetting("Logging:LogLevel:Default", "Warning");
    }
}
