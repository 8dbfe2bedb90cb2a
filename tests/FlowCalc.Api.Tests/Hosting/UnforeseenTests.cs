using FlowCalc.Api.Tests.Requests;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Hosting;
using Microsoft.AspNetCore.Http;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Logging;

namespace FlowCalc.Api.Tests.Hosting;

public sealed class UnforeseenTests(Service service)
{
    [Theory]
    [InlineData("Development")]
    [InlineData("Production")]
    public async Task What_nobody_foresaw_is_a_500_that_tells_nothing_of_the_inside_and_is_logged(string environment)
    {
        var log = new ErrorLog();
        await using var broken = service.WithWebHostBuilder(host => host.UseEnvironment(environment).ConfigureServices(services => services
            .AddSingleton<IStartupFilter>(new Breaks(() => new InvalidOperationException("secret"))).AddSingleton<ILoggerProvider>(log)));
        using var caller = broken.CreateClient();

        var fault = await caller.Get("/break").Fault(500);

        Assert.DoesNotContain("secret", fault.GetRawText(), StringComparison.Ordinal);
        Assert.DoesNotContain(" at ", fault.GetRawText(), StringComparison.Ordinal);
        var trace = fault.GetProperty("detail").GetString()!.Split(' ')[^1].TrimEnd('.');
        var logged = Assert.Single(log.Errors);
        Assert.Contains(trace, logged, StringComparison.Ordinal);
        Assert.Contains("secret", logged, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("Development")]
    [InlineData("Production")]
    public async Task Request_that_the_server_finds_bad_is_told_so_and_not_logged(string environment)
    {
        var log = new ErrorLog();
        await using var broken = service.WithWebHostBuilder(host => host.UseEnvironment(environment).ConfigureServices(services => services
            .AddSingleton<IStartupFilter>(new Breaks(() => new BadHttpRequestException("The headers are odd.", 400))).AddSingleton<ILoggerProvider>(log)));
        using var caller = broken.CreateClient();

        var fault = await caller.Get("/break").Fault(400);

        Assert.Contains("odd", fault.GetProperty("detail").GetString()!, StringComparison.Ordinal);
        Assert.Empty(log.Errors);
    }

    /// <summary>Throws at the end of the pipeline, where only an unknown path gets to.</summary>
    sealed class Breaks(Func<Exception> thrown) : IStartupFilter
    {
        public Action<IApplicationBuilder> Configure(Action<IApplicationBuilder> next) => app =>
        {
            next(app);
            app.Map("/break", broken => broken.Run(_ => throw thrown()));
        };
    }
}
