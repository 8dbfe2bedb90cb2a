using FlowCalc.Api.Faults;

namespace FlowCalc.Api.Jobs;

/// <summary>One piece of work on its way, and what came of it. Its store changes it; anybody may look.</summary>
internal sealed class Job(string id, IJobWork work) : IProgress<int>, IDisposable
{
    readonly CancellationTokenSource stop = new();
    readonly TaskCompletionSource ended = new(TaskCreationOptions.RunContinuationsAsynchronously);
    IJobWork? waitingFor = work;
    int done, listeners;

    /// <summary>Its name: 128 random bits, so that nobody guesses another's.</summary>
    public string Id => id;

    /// <summary>The call that it is of.</summary>
    public string Call { get; } = work.Call;

    /// <summary>Steps in all.</summary>
    public int Steps { get; } = work.Steps;

    /// <summary>Steps done.</summary>
    public int Done => Volatile.Read(ref done);

    /// <summary>How far it has come, and with what.</summary>
    public JobOutcome Outcome { get; private set; } = new(JobState.Queued, null, null, null);

    /// <summary>Stops the work.</summary>
    public CancellationToken Stopped => stop.Token;

    /// <summary>Comes when it has ended.</summary>
    public Task Ended => ended.Task;

    /// <summary>Tells how many steps are done; a number below an earlier one, told late by another thread, counts for nothing.</summary>
    public void Report(int value)
    {
        for (var known = Done; value > known;)
        {
            var now = Interlocked.CompareExchange(ref done, value, known);
            if (now == known) return;
            known = now;
        }
    }

    /// <summary>Begins it.</summary>
    /// <returns>Its work, which the job itself lets go when it ends.</returns>
    public IJobWork Begin()
    {
        Outcome = new(JobState.Running, null, null, null);
        return waitingFor!;
    }

    /// <summary>Ends it.</summary>
    /// <param name="state">How.</param>
    /// <param name="answer">Its answer; null without one.</param>
    /// <param name="problem">Why there is none; null where there is one.</param>
    /// <param name="keptUntil">When it is forgotten.</param>
    public void End(JobState state, byte[]? answer, Problem? problem, DateTimeOffset keptUntil)
    {
        Outcome = new(state, answer, problem, keptUntil);
        waitingFor = null;
        ended.TrySetResult();
    }

    /// <summary>Asks the work to stop.</summary>
    public void Cancel() => stop.Cancel();

    /// <summary>Takes a listener more, where there is room for one.</summary>
    /// <param name="most">Most listeners.</param>
    public bool TryListen(int most)
    {
        if (Interlocked.Increment(ref listeners) <= most) return true;
        Leave();
        return false;
    }

    /// <summary>A listener goes.</summary>
    public void Leave() => Interlocked.Decrement(ref listeners);

    public void Dispose() => stop.Dispose();
}
