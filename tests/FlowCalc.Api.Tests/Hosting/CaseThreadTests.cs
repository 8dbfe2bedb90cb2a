using FlowCalc.Api.Hosting;
using FlowCalc.Api.Tests.Flow;
using FlowCalc.Api.Tests.Requests;
using Microsoft.Extensions.DependencyInjection;

namespace FlowCalc.Api.Tests.Hosting;

public sealed class CaseThreadTests
{
    // Whoever waits for a place among these threads would wait for ever.
    [Fact]
    public async Task Discharge_is_answered_while_every_case_thread_is_held()
    {
        await using var service = new Service();
        using var caller = service.Caller();
        var free = await caller.PostDischarge(Documents.Demo).Json(200);
        var threads = service.Services.GetRequiredService<CaseThreads>();
        using var release = new ManualResetEventSlim();
        using var held = new CountdownEvent(threads.MaximumConcurrencyLevel);
        var tasks = Enumerable.Range(0, threads.MaximumConcurrencyLevel).Select(_ => Task.Factory.StartNew(
            () =>
            {
                held.Signal();
                release.Wait(TestContext.Current.CancellationToken);
            },
            TestContext.Current.CancellationToken, TaskCreationOptions.None, threads)).ToList();
        held.Wait(TestContext.Current.CancellationToken);

        var answer = await caller.PostDischarge(Documents.Demo).Json(200);
        release.Set();
        await Task.WhenAll(tasks);

        Assert.Equal(free.GetRawText(), answer.GetRawText());
    }

    [Fact]
    public async Task Cases_run_on_no_more_threads_than_the_scheduler_has_and_the_callers_own()
    {
        using var threads = new CaseThreads();
        var names = new System.Collections.Concurrent.ConcurrentDictionary<string, bool>();

        await Task.Run(() => Parallel.For(0, 200, new ParallelOptions { TaskScheduler = threads, CancellationToken = TestContext.Current.CancellationToken }, _ =>
        {
            names[Thread.CurrentThread.IsThreadPoolThread ? "caller " + Environment.CurrentManagedThreadId : Thread.CurrentThread.Name!] = true;
            Thread.Sleep(1);
        }), TestContext.Current.CancellationToken);

        Assert.Single(names, name => name.Key.StartsWith("caller", StringComparison.Ordinal));
        Assert.InRange(names.Count, 1, 1 + threads.MaximumConcurrencyLevel);
    }
}
