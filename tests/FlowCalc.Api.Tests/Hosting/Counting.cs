using System.Net;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Hosting;
using Microsoft.AspNetCore.Hosting.Server;
using Microsoft.AspNetCore.Hosting.Server.Features;
using Microsoft.Extensions.DependencyInjection;

namespace FlowCalc.Api.Tests.Hosting;

/// <summary>How many requests a service is working on.</summary>
sealed class InFlight
{
    int count;

    public int Count => Volatile.Read(ref count);

    public void Add(int change) => Interlocked.Add(ref count, change);
}

/// <summary>A service that counts what it is working on.</summary>
sealed class Counting(params (string Key, string Value)[] others) : Service
{
    /// <summary>One that listens on a port of this machine.</summary>
    public static Counting Listening(params (string, string)[] settings)
    {
        var service = new Counting(settings);
        service.UseKestrel(kestrel => kestrel.Listen(IPAddress.Loopback, 0));
        service.StartServer();
        return service;
    }

    /// <summary>Where it listens.</summary>
    public Uri Address => new(Services.GetRequiredService<IServer>().Features.Get<IServerAddressesFeature>()!.Addresses.First());

    protected override void ConfigureWebHost(IWebHostBuilder builder)
    {
        base.ConfigureWebHost(builder);
        foreach (var (key, value) in others) builder.UseSetting(key, value);
        builder.ConfigureServices(services => services.AddSingleton<InFlight>().AddSingleton<IStartupFilter, Counts>());
    }

    sealed class Counts(InFlight flight) : IStartupFilter
    {
        public Action<IApplicationBuilder> Configure(Action<IApplicationBuilder> next) => app =>
        {
            app.Use(async (context, following) =>
            {
                flight.Add(1);
                try
                {
                    await following(context);
                }
                finally
                {
                    flight.Add(-1);
                }
            });
            next(app);
        };
    }
}
