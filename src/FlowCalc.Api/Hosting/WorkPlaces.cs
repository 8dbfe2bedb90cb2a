using System.Threading.RateLimiting;

namespace FlowCalc.Api.Hosting;

/// <summary>The places of whatever computes, and the queue before them. A place is taken once the body is there and left before the answer is sent, so that no caller holds one by sending or reading slowly.</summary>
internal sealed class WorkPlaces(ServiceLimits limits) : IDisposable
{
    readonly ConcurrencyLimiter limiter = new(new ConcurrencyLimiterOptions
    {
        PermitLimit = limits.Workers,
        QueueLimit = limits.Waiting,
        QueueProcessingOrder = QueueProcessingOrder.OldestFirst,
    });

    /// <summary>Waits for a place.</summary>
    /// <param name="cancel">The caller has gone.</param>
    /// <returns>The place, left on disposal; not acquired where as many wait already as may.</returns>
    /// <exception cref="OperationCanceledException">The caller has gone.</exception>
    public ValueTask<RateLimitLease> TakeAsync(CancellationToken cancel) => limiter.AcquireAsync(1, cancel);

    /// <summary>How many places are taken, and how many requests wait for one.</summary>
    public (long Taken, long Waiting) Counts() =>
        limiter.GetStatistics() is { } now ? (limits.Workers - now.CurrentAvailablePermits, now.CurrentQueuedCount) : (0, 0);

    public void Dispose() => limiter.Dispose();
}
