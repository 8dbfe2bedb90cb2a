namespace FlowCalc.Workbench.Solving;

/// <summary>Places at which open pages work: no more at once than the machine has processors, so that many pages cannot take it over.</summary>
/// <param name="cases">Where the parts of one piece of work run beside each other.</param>
public sealed class WorkPlaces(TaskScheduler cases) : IDisposable
{
    readonly SemaphoreSlim free = new(Environment.ProcessorCount);

    /// <summary>Where the parts of one piece of work run beside each other: the cases of a discharge, the samples of a study.</summary>
    public TaskScheduler Cases { get; } = cases;

    /// <summary>Works on a thread of the pool as soon as a place is free.</summary>
    /// <typeparam name="T">What comes of it.</typeparam>
    /// <param name="work">The work.</param>
    /// <param name="cancel">Ends the wait and the work.</param>
    /// <exception cref="OperationCanceledException">The token was cancelled.</exception>
    public async Task<T> DoAsync<T>(Func<T> work, CancellationToken cancel)
    {
        try
        {
            await free.WaitAsync(cancel);
        }
        catch (ObjectDisposedException closed)
        {
            // The service is shutting down; a page that still asks gets nothing, which is no error.
            throw new OperationCanceledException("The service is shutting down.", closed);
        }
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
