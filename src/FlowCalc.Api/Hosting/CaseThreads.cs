using System.Collections.Concurrent;

namespace FlowCalc.Api.Hosting;

/// <summary>Threads that the cases of a discharge share beside the request's own, one a processor: cases side by side never take the pool's threads, which time limits and all other requests need.</summary>
/// <remarks>A request waits for nobody here: what has not begun when its own thread is done with the rest, that thread does itself.</remarks>
internal sealed class CaseThreads : TaskScheduler, IDisposable
{
    readonly BlockingCollection<Task> queue = [];

    /// <summary>Starts the threads.</summary>
    public CaseThreads()
    {
        for (var at = 0; at < MaximumConcurrencyLevel; at++)
            new Thread(Work) { IsBackground = true, Name = $"Cases {at}" }.Start();
    }

    public override int MaximumConcurrencyLevel { get; } = Environment.ProcessorCount;

    /// <summary>Lets the threads end.</summary>
    public void Dispose() => queue.CompleteAdding();

    protected override void QueueTask(Task task) => queue.Add(task);

    protected override bool TryExecuteTaskInline(Task task, bool taskWasPreviouslyQueued) => TryExecuteTask(task);

    protected override IEnumerable<Task> GetScheduledTasks() => [.. queue];

    void Work()
    {
        foreach (var task in queue.GetConsumingEnumerable())
            TryExecuteTask(task);
    }
}
