using FlowCalc.Workbench.Solving;
using Microsoft.Extensions.Logging;

namespace FlowCalc.Workbench.Asking;

/// <summary>One study of an open page: running beside it, with progress and an end at any time.</summary>
/// <typeparam name="T">What comes of it.</typeparam>
/// <param name="places">Where it works.</param>
/// <param name="log">Where unforeseen errors go.</param>
/// <param name="changed">Told on the page's dispatcher of every change.</param>
sealed partial class StudyRun<T>(WorkPlaces places, ILogger log, Action changed) : IProgress<int>, IDisposable
    where T : class
{
    static readonly TimeSpan Longest = TimeSpan.FromMinutes(5);

    // The one that runs, and the last that was started: one that a newer replaced may end later than it, and has nothing to say then.
    CancellationTokenSource? running, last;
    int done;

    /// <summary>What came of the last one; null for nothing yet.</summary>
    public T? Result { get; private set; }

    /// <summary>Why there is nothing; null where there is, or nothing was asked.</summary>
    public string? Failure { get; private set; }

    /// <summary>Whether one is running.</summary>
    public bool IsRunning => running is not null;

    /// <summary>How far it is, in whatever it counts.</summary>
    public int Done => Volatile.Read(ref done);

    /// <inheritdoc />
    public void Report(int value) => Volatile.Write(ref done, value);

    /// <summary>Runs one; the last one is dropped.</summary>
    /// <param name="work">The work; what it cannot answer it says with an <see cref="ArgumentException"/>.</param>
    public async Task StartAsync(Func<IProgress<int>, CancellationToken, T> work)
    {
        Cancel();
        using var mine = new CancellationTokenSource(Longest);
        (running, last, Result, Failure, done) = (mine, mine, null, null, 0);
        changed();
        var (result, failure) = await EndOfAsync(() => work(this, mine.Token), mine);
        if (last != mine) return;
        (Result, Failure) = (result, failure);
        if (running == mine) running = null;
        changed();
    }

    async Task<(T? Result, string? Failure)> EndOfAsync(Func<T> work, CancellationTokenSource mine)
    {
        try
        {
            return (await places.DoAsync(work, mine.Token), null);
        }
        catch (OperationCanceledException)
        {
            return (null, running == mine ? $"It was not done within {Longest.TotalMinutes:0} min. The service has jobs for longer ones." : "It was cancelled.");
        }
        catch (ArgumentException cannot)
        {
            return (null, cannot.Message);
        }
        catch (Exception unforeseen)
        {
            Unforeseen(log, unforeseen);
            return (null, "It ended with an unforeseen error, which the service has logged.");
        }
    }

    /// <summary>Ends the one that is running.</summary>
    public void Cancel()
    {
        running?.Cancel();
        running = null;
    }

    /// <summary>Says what a reader found wrong with a request.</summary>
    public void Refuse(IEnumerable<Layouts.LayoutFault> faults) => (Result, Failure) = (null, string.Join(' ', faults.Select(fault => $"{fault.Pointer}: {fault.Message}.")));

    /// <inheritdoc />
    public void Dispose() => Cancel();

    [LoggerMessage(Level = LogLevel.Error, Message = "A study of an open page ended with an unforeseen error.")]
    static partial void Unforeseen(ILogger log, Exception unforeseen);
}
