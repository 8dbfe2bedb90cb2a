using FlowCalc.Api.Tests.Flow;
using FlowCalc.Api.Tests.Requests;

namespace FlowCalc.Api.Tests.Hosting;

public sealed class PoolThreadTests
{
    [Fact]
    public async Task Pool_has_threads_to_spare_beside_those_at_work()
    {
        await using var service = Service.With(("Limits:Concurrent", "11"));
        using var caller = service.Caller();
        await caller.PostFlow(Documents.Small).Json(200);

        ThreadPool.GetMinThreads(out var workers, out _);

        Assert.True(workers >= 11 + Environment.ProcessorCount, $"{workers} threads");
    }
}
