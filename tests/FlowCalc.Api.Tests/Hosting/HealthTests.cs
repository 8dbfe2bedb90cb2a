using FlowCalc.Api.Startup;
using FlowCalc.Api.Tests.Requests;

namespace FlowCalc.Api.Tests.Hosting;

public sealed class HealthTests(Service service)
{
    [Theory]
    [InlineData("/health/live", "live")]
    [InlineData("/health/ready", "ready")]
    public async Task Service_that_has_solved_its_demo_is_live_and_ready(string path, string status)
    {
        using var caller = service.Caller();

        var health = await caller.Get(path).Json(200);

        Assert.Equal(status, health.GetProperty("status").GetString());
    }

    [Fact]
    public async Task Service_that_has_not_solved_its_demo_is_live_but_not_ready()
    {
        await using var unready = service.WithWebHostBuilder(host => host.ConfigureServices(services =>
            services.Remove(services.Single(known => known.ImplementationType == typeof(DemoAtStart)))));
        using var caller = unready.CreateClient();

        Assert.Equal("live", (await caller.Get("/health/live").Json(200)).GetProperty("status").GetString());
        Assert.Equal("starting", (await caller.Get("/health/ready").Json(503)).GetProperty("status").GetString());
    }
}
