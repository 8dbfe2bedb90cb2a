using System.Net;
using FlowCalc.Api.Tests.Hosting;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Hosting;
using Microsoft.Extensions.DependencyInjection;

namespace FlowCalc.Api.Tests.Access;

/// <summary>A service whose callers come from an address.</summary>
sealed class CallerFrom(IPAddress address, params (string Key, string Value)[] others) : Service
{
    protected override void ConfigureWebHost(IWebHostBuilder builder)
    {
        base.ConfigureWebHost(builder);
        foreach (var (key, value) in others) builder.UseSetting(key, value);
        builder.ConfigureServices(services => services.AddSingleton<IStartupFilter>(new From(address)));
    }

    // Before all else, as a connection would have it.
    sealed class From(IPAddress address) : IStartupFilter
    {
        public Action<IApplicationBuilder> Configure(Action<IApplicationBuilder> next) => app =>
        {
            app.Use((context, following) =>
            {
                context.Connection.RemoteIpAddress = address;
                return following(context);
            });
            next(app);
        };
    }
}
