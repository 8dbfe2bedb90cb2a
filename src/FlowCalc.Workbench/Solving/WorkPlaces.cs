namespace FlowCalc.Workbench.Solving;

/// <summary>Places at which open pages work: no more at once than the machine has processors, so that many pages cannot take it over.</summary>
public sealed class WorkPlaces : IDisposable
{
    readonly SemaphoreSlim free = new(Environment.ProcessorCount);

    /// <summary>Works on a thread of the pool as soon as a place is free.</summary>
    /// <typeparam name="T">What comes of it.</typeparam>
    /// <param name="work">The work.</param>
    /// <param name="cancel">Ends the wait and the work.</param>
    /// <exception cref="OperationCanceledException">The token was cancelled.</exception>
    public async Task<T> DoAsync<T>(Func<T> work, CancellationToken cancel)
    {
        await free.WaitAsync(cancel);
        try
        {
            return await Task.Run(work, cancel);
        }
        finally
        {
            free.Release();
        }
    }

    /// <inheritdoc />
    public void Dispose() => free.Dispose();
}
