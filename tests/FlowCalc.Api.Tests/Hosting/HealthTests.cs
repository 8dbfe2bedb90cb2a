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
}
