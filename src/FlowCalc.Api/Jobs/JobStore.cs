using System.Security.Cryptography;
using FlowCalc.Api.Faults;
using FlowCalc.Api.Hosting;

namespace FlowCalc.Api.Jobs;

/// <summary>The jobs of this service: so many run, so many wait, and so many that have ended are kept for so long.</summary>
internal sealed class JobStore : IHostedLifecycleService, IDisposable
{
    const int IdBytes = 16;

    readonly ServiceLimits limits;
    readonly TimeProvider clock;
    readonly JobRunner runner;
    readonly ITimer sweep;
    readonly Lock gate = new();
    readonly Dictionary<string, Job> known = new(StringComparer.Ordinal);
    readonly List<Job> waiting = [];
    readonly List<Job> over = [];
    readonly HashSet<Task> running = [];
    bool isStopping;

    /// <summary>An empty store.</summary>
    public JobStore(ServiceLimits limits, TimeProvider clock, ILogger<JobStore> log)
    {
        (this.limits, this.clock) = (limits, clock);
        runner = new JobRunner(limits, log);
        sweep = clock.CreateTimer(_ => Sweep(), null, limits.JobKept, limits.JobKept);
    }

    /// <summary>Takes work.</summary>
    /// <param name="work">The work.</param>
    /// <param name="refusal">Why it is not taken; null where it is.</param>
    /// <returns>Its job; null where it is not taken.</returns>
    public Job? Submit(IJobWork work, out Problem? refusal)
    {
        lock (gate)
        {
            Forget();
            refusal = isStopping ? Problems.ShuttingDown() : running.Count >= limits.JobsRunning && waiting.Count >= limits.JobsWaiting ? Problems.TooManyJobs(limits) : null;
            if (refusal is not null) return null;
            var job = new Job(Convert.ToHexStringLower(RandomNumberGenerator.GetBytes(IdBytes)), work);
            known.Add(job.Id, job);
            if (running.Count < limits.JobsRunning) Start(job);
            else waiting.Add(job);
            return job;
        }
    }

    /// <summary>How many jobs run and wait.</summary>
    public (int Running, int Waiting) Counts()
    {
        lock (gate) return (running.Count, waiting.Count);
    }

    /// <summary>A job by its id; null where there is none, or none any more.</summary>
    public Job? Find(string id)
    {
        lock (gate)
        {
            Forget();
            return known.GetValueOrDefault(id);
        }
    }

    /// <summary>Stops a job that has not ended, and forgets one that has.</summary>
    /// <returns>False where there is no such job.</returns>
    public bool Remove(string id)
    {
        lock (gate)
        {
            Forget();
            if (!known.TryGetValue(id, out var job)) return false;
            if (!job.Outcome.IsOver) Stop(job);
            else if (known.Remove(id)) over.Remove(job);
            return true;
        }
    }

    public Task StartingAsync(CancellationToken cancellationToken) => Task.CompletedTask;

    public Task StartAsync(CancellationToken cancellationToken) => Task.CompletedTask;

    public Task StartedAsync(CancellationToken cancellationToken) => Task.CompletedTask;

    /// <summary>Stops every job, before the server waits for its requests: those that listen to a job hear of it.</summary>
    public Task StoppingAsync(CancellationToken cancellationToken)
    {
        StopAll();
        return Task.CompletedTask;
    }

    /// <summary>Stops every job, and waits until those that run have noticed.</summary>
    public async Task StopAsync(CancellationToken cancellationToken) =>
        await Task.WhenAll(StopAll()).WaitAsync(cancellationToken).ConfigureAwait(ConfigureAwaitOptions.SuppressThrowing);

    public Task StoppedAsync(CancellationToken cancellationToken) => Task.CompletedTask;

    public void Dispose() => sweep.Dispose();

    Task[] StopAll()
    {
        lock (gate)
        {
            isStopping = true;
            foreach (var job in known.Values.Where(job => !job.Outcome.IsOver).ToArray()) Stop(job);
            return [.. running];
        }
    }

    void Start(Job job)
    {
        var work = job.Begin();
        // A thread of its own: the pool's are for requests.
        var task = Task.Factory.StartNew(() => runner.Run(job, work), CancellationToken.None, TaskCreationOptions.LongRunning, TaskScheduler.Default);
        running.Add(task);
        task.ContinueWith(Ended, job, CancellationToken.None, TaskContinuationOptions.ExecuteSynchronously, TaskScheduler.Default);
    }

    void Ended(Task<JobOutcome> task, object? state)
    {
        var job = (Job)state!;
        lock (gate)
        {
            running.Remove(task);
            // The caller may have stopped it while it came to its end.
            if (!job.Outcome.IsOver) End(job, task.Result);
            job.Dispose();
            while (running.Count < limits.JobsRunning && waiting.Count > 0)
            {
                var next = waiting[0];
                waiting.RemoveAt(0);
                Start(next);
            }
        }
    }

    // What waits ends at once. What runs says so at once too, and stops as soon as it looks at its token.
    void Stop(Job job)
    {
        job.Cancel();
        if (waiting.Remove(job)) job.Dispose();
        End(job, new(JobState.Cancelled, null, null, null));
    }

    void End(Job job, JobOutcome outcome)
    {
        job.End(outcome.State, outcome.Answer, outcome.Problem, clock.GetUtcNow() + limits.JobKept);
        over.Add(job);
        Forget();
    }

    void Sweep()
    {
        lock (gate) Forget();
    }

    // In the order in which they ended, which is that in which their time is up.
    void Forget()
    {
        var now = clock.GetUtcNow();
        var bytes = over.Sum(job => (long)(job.Outcome.Answer?.Length ?? 0));
        while (over.Count > 0 && (over[0].Outcome.KeptUntil <= now || over.Count > limits.JobsKept || (bytes > limits.JobBytes && over.Count > 1)))
        {
            bytes -= over[0].Outcome.Answer?.Length ?? 0;
            known.Remove(over[0].Id);
            over.RemoveAt(0);
        }
    }
}
